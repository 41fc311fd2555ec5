package clenchbook.tax.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.reading.texts.TextFiles;
import clenchbook.texts.Texts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What files and English pages say of one thing is the same, wherever the code says both. */
class WordingTest {
  private static final Path CODE = Path.of("src/main/java/clenchbook/tax");

  /** The first two arguments of a wording: words of the file with or without gaps, and a key. */
  private static final Pattern WORDING =
      Pattern.compile(
          "Wording\\.of\\(\\s*((?:\"[^\"]*\"|[\\w.()]+)(?:\\s*\\+\\s*(?:\"[^\"]*\"|[\\w.()]+))*)"
              + ",\\s*\"([a-zA-Z.]+)\"");

  /** One and many, of which a file says many. */
  private static final Pattern CHOICE =
      Pattern.compile("\\{\\d,choice,0#((?:[^{}|]|\\{\\d})*)\\|(?:[^{}]|\\{\\d})*}");

  private static final String WAY = "Vehicle by ";
  private static final Pattern LITERAL = Pattern.compile("\"([^\"]*)\"");

  @Test
  void a_wording_says_in_english_what_its_file_says() throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> code = Files.walk(CODE)) {
      for (Path file : code.filter(each -> each.toString().endsWith(".java")).toList()) {
        Matcher wording = WORDING.matcher(Files.readString(file));
        while (wording.find()) {
          String words = skeleton(wording.group(1));
          if (!words.equals("{}")) {
            files.put(wording.group(2), words);
          }
        }
      }
    }
    assertTrue(files.size() > 50, files.toString());
    files.forEach(
        (key, file) -> {
          String english = english(key);
          // A way of counting a vehicle is the end of its line's name.
          boolean way = key.contains(".way.") || key.endsWith(".vehicle.byKilometre");
          assertEquals(way ? WAY + file : file, english, key);
        });
  }

  private static String english(String key) {
    String text = TextFiles.OWN.find(Texts.ENGLISH, key).orElse("no text");
    return CHOICE.matcher(text).replaceAll("$1").replaceAll("\\{\\d}", "{}");
  }

  /** Literals as they are, and {@code {}} for all that stands between them. */
  private static String skeleton(String expression) {
    StringBuilder words = new StringBuilder();
    Matcher literal = LITERAL.matcher(expression);
    int from = 0;
    while (literal.find()) {
      words.append(gap(expression.substring(from, literal.start()))).append(literal.group(1));
      from = literal.end();
    }
    return words.append(gap(expression.substring(from))).toString();
  }

  private static String gap(String between) {
    return between.matches("[\\s+]*") ? "" : "{}";
  }

  @Test
  void a_gap_of_a_wording_is_where_the_text_has_one() {
    assertEquals("line {}, {}", skeleton("\"line \" + row.value() + \", \"\n + row.name()"));
    assertEquals("one two", skeleton("\"one \"\n   + \"two\""));
  }
}
