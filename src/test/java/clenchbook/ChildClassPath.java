package clenchbook;

import java.io.File;
import java.net.URI;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Collectors;

/** The class path of this test, for a process of its own. */
public final class ChildClassPath {
  private ChildClassPath() {}

  /** What to give to {@code -cp}, whoever launched the tests. */
  public static String text() {
    if (ChildClassPath.class.getClassLoader() instanceof URLClassLoader loader) {
      return Arrays.stream(loader.getURLs())
          .map(url -> Path.of(URI.create(url.toString())).toString())
          .collect(Collectors.joining(File.pathSeparator));
    }
    return System.getProperty("java.class.path");
  }
}
