package clenchbook.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Setting;
import clenchbook.book.SheetKind;
import clenchbook.reading.words.SheetWords;
import clenchbook.reading.words.Vocabulary;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The guide names every sheet, heading and setting. */
class WorkbookGuideTest {
  private final Vocabulary vocabulary = Vocabulary.load();

  @Test
  void the_guide_names_every_sheet_heading_and_setting() throws IOException {
    List<String> guide = Files.readAllLines(Path.of("docs", "workbook-guide.md"));
    for (SheetKind kind : SheetKind.values()) {
      SheetWords words = vocabulary.of(kind);
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
  void every_canonical_heading_means_itself() {
    for (SheetKind kind : SheetKind.values()) {
      for (String heading : vocabulary.of(kind).canonicalHeadings()) {
        assertEquals(
            heading, vocabulary.of(kind).heading(heading).orElse(""), kind + " " + heading);
      }
    }
  }
}
