package clenchbook.cli;

/** The program's entry point. */
public final class Clenchbook {
  private Clenchbook() {}

  /**
   * Runs one command and ends the process with its exit code.
   *
   * @param arguments the command line
   */
  public static void main(String[] arguments) {
    System.exit(64);
  }
}
