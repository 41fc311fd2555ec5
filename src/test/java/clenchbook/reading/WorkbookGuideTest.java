package clenchbook.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Setting;
import clenchbook.book.SheetKind;
import clenchbook.reading.words.SameWords;
import clenchbook.reading.words.Vocabulary;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The guide names every sheet, heading and setting, and no word means two headings of a sheet. */
class WorkbookGuideTest {
  private final Vocabulary vocabulary = Vocabulary.load();

  @Test
  void the_guide_names_every_sheet_heading_and_setting() throws IOException {
    List<String> guide = Files.readAllLines(Path.of("docs", "workbook-guide.md"));
    for (SheetKind kind : SheetKind.values()) {
      Vocabulary.SheetWords words = vocabulary.of(kind);
      int start = guide.indexOf("### " + words.title());
      assertTrue(start >= 0, words.title());
      for (String heading : words.canonicalHeadings()) {
        boolean named =
            guide.subList(start, guide.size()).stream()
                .anyMatch(l -> l.startsWith("| " + heading + " |"));
        assertTrue(named, words.title() + ": " + heading);
      }
    }
    for (Setting setting : Setting.values()) {
      assertTrue(
          guide.stream().anyMatch(l -> l.startsWith("| " + setting.title() + " |")),
          setting.title());
    }
  }

  @Test
  void no_word_of_a_sheet_means_two_headings() throws IOException {
    Map<String, String> seen = new HashMap<>();
    String sheet = "";
    String list =
        new String(
            Vocabulary.class.getResourceAsStream("words.txt").readAllBytes(),
            java.nio.charset.StandardCharsets.UTF_8);
    for (String line : list.lines().toList()) {
      if (line.isBlank() || line.startsWith("#") || line.matches(" +(needs|never) .*")) {
        continue;
      }
      if (!line.startsWith(" ")) {
        sheet = line.split(" = ")[0];
        continue;
      }
      String[] sides = line.strip().split(" = ");
      for (String word : (sides[0] + (sides.length > 1 ? "," + sides[1] : "")).split(",")) {
        String earlier = seen.putIfAbsent(sheet + ":" + SameWords.bare(word), sides[0]);
        assertTrue(
            earlier == null || earlier.equals(sides[0]), sheet + ": " + word + " is " + earlier);
      }
    }
  }

  @Test
  void every_canonical_heading_means_itself() {
    for (SheetKind kind : SheetKind.values()) {
      for (String heading : vocabulary.of(kind).canonicalHeadings()) {
        assertEquals(
            heading, vocabulary.of(kind).heading(heading).orElse(""), kind + " " + heading);
      }
    }
  }
}
