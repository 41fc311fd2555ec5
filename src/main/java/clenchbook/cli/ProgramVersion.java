package clenchbook.cli;

import picocli.CommandLine.IVersionProvider;

/** The program's version, from its jar. */
final class ProgramVersion implements IVersionProvider {
  @Override
  public String[] getVersion() {
    String version = ProgramVersion.class.getPackage().getImplementationVersion();
    return new String[] {"clenchbook " + (version == null ? "(not packaged)" : version)};
  }
}
