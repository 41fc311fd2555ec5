package clenchbook.image;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * The folder {@code licences}: the program's own text, what each library brings in its jar, and for
 * those that bring none the common text of the licence that the bill of materials names. Java's own
 * lie in {@code runtime/legal}.
 */
final class Licences {
  private static final Pattern TEXT =
      Pattern.compile("(.*/)?([^/]*(licen[sc]e|notice|copying)[^/]*)(?<!\\.class|\\.xsb)");

  private static final String BEGINNING =
      """
      The parts of this program and their licences. A folder with a part's name holds what the part
      itself brings; where there is none, the common text of its licence lies in this folder. Java's
      own licences lie in runtime/legal. The fonts' lie in the folder fonts.

      Tables for debuggers were taken out of all libraries. Of some (codec, collections4, compress,
      io, lang3, math3, numbers, rng, statistics and text of Apache Commons; ZXing; the validator in
      Woodstox) classes that this program cannot reach were left out. Otherwise they are what the
      central repository of Maven holds under the names and versions below, and the program's
      sources build with others in their place.

      """;

  private final Place place;
  private final Path folder;

  Licences(Place place) {
    this.place = place;
    this.folder = place.image().resolve("licences");
  }

  void write() throws IOException {
    Files.createDirectories(folder);
    Place.copy(place.sources().resolve("licences"), folder);
    Files.copy(place.project().resolve("LICENSE"), folder.resolve("Clenchbook.txt"));
    Files.copy(place.project().resolve("LICENSE"), folder.resolve("Apache-2.0.txt"));
    fonts();
    List<String> lines = new ArrayList<>();
    JsonNode bom = new ObjectMapper().readTree(place.target().resolve("bom.json").toFile());
    for (JsonNode part : bom.path("components")) {
      lines.add(line(part));
    }
    Files.writeString(folder.resolve("parts.txt"), BEGINNING + String.join("\n", lines) + "\n");
  }

  private void fonts() throws IOException {
    Path resources = place.project().resolve("src/main/resources");
    try (Stream<Path> all = Files.walk(resources)) {
      for (Path text : all.filter(each -> isText(each.getFileName().toString())).toList()) {
        Path there = folder.resolve(resources.relativize(text).toString());
        Files.createDirectories(there.getParent());
        Files.copy(text, there);
      }
    }
  }

  private static boolean isText(String name) {
    return name.endsWith(".txt") && TEXT.matcher(name.toLowerCase(Locale.ROOT)).matches()
        || name.startsWith("OFL");
  }

  private String line(JsonNode part) throws IOException {
    String name = part.path("name").asText() + "-" + part.path("version").asText();
    String names =
        part.findParents("license").stream()
            .map(each -> each.path("license"))
            .map(each -> each.path("id").asText(each.path("name").asText()))
            .distinct()
            .collect(Collectors.joining(" or "));
    if (names.isEmpty()) {
      throw new IOException(name + " names no licence");
    }
    int texts = copyFrom(jar(name + ".jar"), folder.resolve(name));
    if (texts == 0 && !common(names)) {
      throw new IOException(name + ": no text of its licence, " + names);
    }
    return name + ": " + names;
  }

  private static Path jar(String name) throws IOException {
    return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
        .map(Path::of)
        .filter(path -> path.endsWith(name))
        .findFirst()
        .orElseThrow(() -> new IOException(name + " is not on the class path of the build"));
  }

  private static int copyFrom(Path jar, Path to) throws IOException {
    int texts = 0;
    try (ZipFile zip = new ZipFile(jar.toFile())) {
      Enumeration<? extends ZipEntry> entries = zip.entries();
      while (entries.hasMoreElements()) {
        ZipEntry entry = entries.nextElement();
        String name = entry.getName();
        if (!entry.isDirectory() && TEXT.matcher(name.toLowerCase(Locale.ROOT)).matches()) {
          Files.createDirectories(to);
          // Only the last name counts, so that no jar writes elsewhere.
          Files.write(
              to.resolve(name.substring(name.lastIndexOf('/') + 1)),
              zip.getInputStream(entry).readAllBytes());
          texts++;
        }
      }
    }
    return texts;
  }

  /** Whether the folder holds the common text of each of these licences. */
  private boolean common(String names) {
    return Stream.of(names.split(" or "))
        .map(name -> name.startsWith("GNU Lesser") ? "LGPL-2.1" : name)
        .allMatch(name -> Files.isRegularFile(folder.resolve(name + ".txt")));
  }
}
