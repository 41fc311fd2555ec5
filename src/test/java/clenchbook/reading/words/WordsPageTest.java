package clenchbook.reading.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * The page of words in other languages is made of the program's own lists. To make it anew, run
 * this class with {@code -Dwords.write=true}.
 */
class WordsPageTest {
  private static final Path PAGE = Path.of("docs", "words.md");

  private static String page() {
    StringBuilder page = new StringBuilder();
    page.append("# Words in other languages\n\n");
    page.append(
        """
        What sheets, headings, settings and cells may be called in German, French, Spanish and Dutch, beside the English
        words of [your workbook](workbook-guide.md). Made from the program's own lists; the first word of a line is the usual
        one. Case, accents, spaces and punctuation don't matter. A word behind ~ counts only where no other column of the sheet
        has its meaning. Your own words go into the sheet Headings.
        """);
    for (String language : WordLists.FOREIGN) {
      Locale locale = Locale.forLanguageTag(language);
      page.append("\n## ").append(locale.getDisplayLanguage(Locale.ENGLISH)).append('\n');
      sheets(page, language);
      list(page, "Settings", "settings", language);
      cells(page, language);
      list(page, "Values of settings", "setting values", language);
    }
    return page.toString();
  }

  private static void sheets(StringBuilder page, String language) {
    for (WordLists.Line line : WordLists.section("sheets", List.of(language))) {
      if (line.indented()) {
        row(page, line);
      } else {
        page.append("\n### ").append(line.key()).append("\n\n");
        page.append(String.join(", ", line.words())).append(".\n\n");
        page.append("| heading | words |\n| --- | --- |\n");
      }
    }
  }

  private static void cells(StringBuilder page, String language) {
    page.append("\n### In cells\n\n| list | word | words |\n| --- | --- | --- |\n");
    String list = "";
    for (WordLists.Line line : WordLists.section("cells", List.of(language))) {
      if (line.indented()) {
        page.append("| ").append(list).append(" | ").append(line.key()).append(" | ");
        page.append(String.join(", ", line.words())).append(" |\n");
      } else if (line.words().isEmpty()) {
        list = line.key();
      } else {
        page.append("| ").append(line.key()).append(" | | ");
        page.append(String.join(", ", line.words())).append(" |\n");
      }
    }
  }

  private static void list(StringBuilder page, String title, String section, String language) {
    page.append("\n### ").append(title).append("\n\n| English | words |\n| --- | --- |\n");
    WordLists.section(section, List.of(language)).forEach(line -> row(page, line));
  }

  private static void row(StringBuilder page, WordLists.Line line) {
    page.append("| ").append(line.key()).append(" | ");
    page.append(String.join(", ", line.words())).append(" |\n");
  }

  @Test
  void the_page_of_words_is_what_the_program_knows() throws IOException {
    if (Boolean.getBoolean("words.write")) {
      Files.writeString(PAGE, page());
    }
    assertEquals(page(), Files.readString(PAGE).replace("\r\n", "\n"));
  }
}
