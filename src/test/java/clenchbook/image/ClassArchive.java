package clenchbook.image;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The class-data archive, made on a check and a real month-end of the sample: of the classes that
 * these loaded the first ones, as many as there is room for. What a start needs is loaded first.
 */
final class ClassArchive {
  private static final List<String> SETTINGS =
      List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xlog:disable");

  /** Tries at finding how many classes fit. */
  private static final int TRIES = 5;

  private static final double MARGIN = 0.99;

  private final Place place;
  private final Path list;

  ClassArchive(Place place) {
    this.place = place;
    this.list = place.work().resolve("classes.list");
  }

  /**
   * Writes it.
   *
   * @param room bytes that it may have
   * @return the share of the classes that it holds
   */
  double write(long room) throws IOException, InterruptedException {
    List<String> noted = noteClasses();
    double share = 1;
    for (int each = 0; each < TRIES; each++) {
      Files.write(list, first(share, noted));
      dump();
      long size = Files.size(place.archive());
      System.out.printf("class archive: %.0f %% of the classes, %,d bytes%n", 100 * share, size);
      if (size <= room) {
        return share;
      }
      share *= MARGIN * room / size;
    }
    throw new IOException("no class archive fits into " + room + " bytes");
  }

  /** The lines of both runs, each class once: Java 17 breaks off where one stands there twice. */
  private List<String> noteClasses() throws IOException, InterruptedException {
    Path book = place.work().resolve("thornfield-metric.xlsx");
    Place.copy(place.image().resolve("sample"), place.work());
    Set<String> lines = new LinkedHashSet<>();
    for (List<String> arguments :
        List.of(
            List.of("check", book.toString()),
            List.of("month-end", book.toString(), "--month", "2026-10", "--today", "2026-11-02"))) {
      List<String> command = java("-XX:DumpLoadedClassList=" + list);
      command.addAll(arguments);
      Tool.run(command);
      Files.readAllLines(list).stream().map(ClassArchive::withoutNumber).forEach(lines::add);
    }
    return List.copyOf(lines);
  }

  /** A class's number in its own list means nothing beside those of another. */
  private static String withoutNumber(String line) {
    return isClass(line) ? line.split(" ", 2)[0] : line;
  }

  private void dump() throws IOException, InterruptedException {
    Files.deleteIfExists(place.archive());
    Tool.run(
        java(
            "-Xshare:dump",
            "-XX:SharedClassListFile=" + list,
            "-XX:SharedArchiveFile=" + place.archive()));
  }

  /** The first share of the classes, and of the further lines those that speak of these. */
  private static List<String> first(double share, List<String> noted) {
    List<String> classes = noted.stream().filter(ClassArchive::isClass).toList();
    Set<String> kept = new HashSet<>();
    classes.stream().limit(Math.round(share * classes.size())).forEach(kept::add);
    return noted.stream().filter(line -> stays(line, kept)).toList();
  }

  private static boolean isClass(String line) {
    return !line.startsWith("@") && !line.startsWith("#");
  }

  private static boolean stays(String line, Set<String> kept) {
    if (isClass(line)) {
      return kept.contains(line);
    }
    String[] words = line.split(" ", 3);
    return words.length < 2 || words[0].startsWith("@lambda-form") || kept.contains(words[1]);
  }

  private List<String> java(String... more) {
    List<String> command = new ArrayList<>(Started.opening(place));
    command.add(place.java().toString());
    command.addAll(SETTINGS);
    command.add("-Dorg.sqlite.lib.path=" + place.lib());
    command.addAll(List.of(more));
    command.addAll(Started.arguments(place));
    return command;
  }
}
