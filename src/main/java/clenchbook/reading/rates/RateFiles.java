package clenchbook.reading.rates;

import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateTable;
import clenchbook.tax.rates.RateTables;
import clenchbook.tax.rates.UnusableRate;
import clenchbook.texts.Message;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Where rate tables come from: the program's own resources, and a folder of the same form laid over
 * them.
 */
public final class RateFiles {
  private static final String ROOT = "/rates/";

  private RateFiles() {}

  /**
   * The tables that come with the program. Throws {@link RefusedRatesException} where one has a
   * gap, an overlap, an unknown unit or an empty source, which a test keeps from happening in a
   * released build.
   */
  public static RateTables bundled() {
    return new RateTables(names().stream().map(RateFiles::bundledTable).toList());
  }

  private static List<String> names() {
    return text(ROOT + "tables.txt").lines().filter(line -> !line.isBlank()).toList();
  }

  private static RateTable bundledTable(String name) {
    try (Reader reader = open(ROOT + name + ".csv")) {
      return checkedTable(name, RateFileReader.read(name, reader, false));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static RateTable checkedTable(String name, List<Rate> rows) {
    try {
      return new RateTable(name, rows);
    } catch (UnusableRate refused) {
      throw new RefusedRatesException(refused.message());
    }
  }

  private static String text(String resource) {
    try (InputStream in = stream(resource)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static Reader open(String resource) {
    return new InputStreamReader(stream(resource), StandardCharsets.UTF_8);
  }

  private static InputStream stream(String resource) {
    InputStream in = RateFiles.class.getResourceAsStream(resource);
    if (in == null) {
      throw new IllegalStateException("missing from the program: " + resource);
    }
    return in;
  }

  /**
   * The program's tables with the files of {@code folder} laid over them: {@code
   * <jurisdiction>/<subject>.csv}, in the same columns. A folder that does not exist lays nothing
   * over. Throws {@link RefusedRatesException} for a file that cannot be read, has a bad row, or
   * leaves a gap or overlap.
   */
  public static RateTables withOverlay(Path folder) {
    List<Rate> rows = new ArrayList<>();
    for (Path file : files(folder)) {
      rows.addAll(overlayRows(folder, file));
    }
    return overlaid(bundled(), rows);
  }

  /** One of the program's tables alone, as {@code au/year}. */
  public static RateTables one(String name) {
    return new RateTables(List.of(bundledTable(name)));
  }

  /**
   * One of the program's tables alone, with the file of its name in {@code folder} laid over it
   * where there is one. Throws {@link RefusedRatesException} as {@link #withOverlay} does.
   */
  public static RateTables one(String name, Path folder) {
    Path file = folder.resolve(name + ".csv");
    return overlaid(one(name), isTable(file) ? overlayRows(folder, file) : List.of());
  }

  private static RateTables overlaid(RateTables bundled, List<Rate> rows) {
    try {
      return rows.isEmpty() ? bundled : bundled.overlaidWith(rows);
    } catch (UnusableRate refused) {
      throw new RefusedRatesException(Message.of("tax.refused.yours", refused.message()));
    }
  }

  private static List<Path> files(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> all = Files.walk(folder, 2)) {
      return all.filter(RateFiles::isTable).sorted().toList();
    } catch (IOException unreadable) {
      throw new RefusedRatesException(Message.of("tax.refused.folder"));
    }
  }

  private static boolean isTable(Path file) {
    return file.getFileName().toString().endsWith(".csv") && Files.isRegularFile(file);
  }

  private static List<Rate> overlayRows(Path folder, Path file) {
    String relative = folder.relativize(file).toString().replace('\\', '/');
    String name = relative.substring(0, relative.length() - ".csv".length());
    try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      return RateFileReader.read(name, reader, true);
    } catch (IOException unreadable) {
      throw new RefusedRatesException(Message.of("tax.refused.encoding", relative));
    }
  }
}
