package clenchbook.reading.formats.csv;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How a CSV file is written.
 *
 * @param file the file
 * @param charset UTF-8 where all its bytes are, else the code page of Windows; UTF-16 by its mark
 * @param delimiter what parts its fields
 * @param linesAbove lines above the first record that only say how the file is written
 */
public record CsvForm(Path file, Charset charset, char delimiter, int linesAbove) {
  private static final char MARK = '\uFEFF';
  private static final int SAMPLE_LINES = 40;
  private static final int SAMPLE_BYTES = 8_192;
  private static final int SAMPLE_CHARACTERS = 1 << 18;
  private static final char[] DELIMITERS = {'\t', ';', ','};

  static CsvForm of(Path file) throws IOException {
    Charset charset = charset(file);
    try (BufferedReader reader = reader(file, charset)) {
      char[] start = new char[SAMPLE_CHARACTERS];
      int length = reader.read(start);
      String sample = new String(start, 0, Math.max(0, length));
      String first = sample.lines().findFirst().orElse("");
      if (first.matches("(?i)\"?sep=.\"?")) {
        return new CsvForm(file, charset, first.replace("\"", "").charAt(4), 1);
      }
      return new CsvForm(file, charset, delimiter(sample), 0);
    }
  }

  /** Opens the file behind its mark and the lines above its first record. */
  BufferedReader open() throws IOException {
    BufferedReader reader = reader(file, charset);
    for (int line = 0; line < linesAbove; line++) {
      reader.readLine();
    }
    return reader;
  }

  private static BufferedReader reader(Path file, Charset charset) throws IOException {
    InputStreamReader decoder = new InputStreamReader(Files.newInputStream(file), charset);
    BufferedReader reader = new BufferedReader(decoder, 1 << 16);
    reader.mark(1);
    if (reader.read() != MARK) {
      reader.reset();
    }
    return reader;
  }

  private static Charset charset(Path file) throws IOException {
    byte[] start = new byte[4];
    try (InputStream stream = Files.newInputStream(file)) {
      stream.readNBytes(start, 0, start.length);
    }
    if (start[0] == (byte) 0xFF && start[1] == (byte) 0xFE) {
      return StandardCharsets.UTF_16LE;
    }
    if (start[0] == (byte) 0xFE && start[1] == (byte) 0xFF) {
      return StandardCharsets.UTF_16BE;
    }
    return isUtf8(file) ? StandardCharsets.UTF_8 : Charset.forName("windows-1252");
  }

  /** Whether the first bytes of a file can be a text's: no zero among them but in UTF-16. */
  static boolean isText(Path file) throws IOException {
    byte[] start = new byte[SAMPLE_BYTES];
    int length;
    try (InputStream stream = Files.newInputStream(file)) {
      length = stream.readNBytes(start, 0, start.length);
    }
    Charset charset = charset(file);
    if (charset.equals(StandardCharsets.UTF_16LE) || charset.equals(StandardCharsets.UTF_16BE)) {
      return true;
    }
    for (int at = 0; at < length; at++) {
      if (start[at] == 0) {
        return false;
      }
    }
    return length > 0;
  }

  private static boolean isUtf8(Path file) throws IOException {
    var strict =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    char[] buffer = new char[1 << 16];
    try (InputStreamReader reader = new InputStreamReader(Files.newInputStream(file), strict)) {
      while (reader.read(buffer) >= 0) {
        // Only whether it decodes matters.
      }
      return true;
    } catch (CharacterCodingException otherCodePage) {
      return false;
    }
  }

  /**
   * What parts the fields: the mark that stands in most lines equally often. A comma also stands in
   * decimals and sentences, a semicolon in lists, but not equally often in every line.
   */
  public static char delimiter(String sample) {
    List<String> lines = bareLines(sample);
    char best = ',';
    long bestScore = 0;
    for (char delimiter : DELIMITERS) {
      Map<Long, Long> linesByCount = new HashMap<>();
      for (String line : lines) {
        long count = line.chars().filter(c -> c == delimiter).count();
        linesByCount.merge(count, 1L, Long::sum);
      }
      long score =
          linesByCount.entrySet().stream()
              .mapToLong(entry -> entry.getKey() * entry.getValue())
              .max()
              .orElse(0);
      if (score > bestScore) {
        best = delimiter;
        bestScore = score;
      }
    }
    return best;
  }

  /** The first lines without what stands in quotes. */
  private static List<String> bareLines(String sample) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < sample.length() && lines.size() < SAMPLE_LINES; i++) {
      char c = sample.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && (c == '\n' || c == '\r')) {
        addUnlessBlank(lines, line);
      } else if (!quoted) {
        line.append(c);
      }
    }
    addUnlessBlank(lines, line);
    return lines;
  }

  private static void addUnlessBlank(List<String> lines, StringBuilder line) {
    if (!line.isEmpty() && !line.toString().trim().isEmpty()) {
      lines.add(line.toString());
    }
    line.setLength(0);
  }
}
