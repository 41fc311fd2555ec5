package clenchbook.tax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.reading.rates.PageTranslations;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Report;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The preparer's page in German and French says everything that the English one says. */
class TranslatedPagesTest {
  /** Words that are the same in both languages, and names that the book gives. */
  private static final Set<String> SAME =
      Set.of("Net", "Trips", "Province", "unmapped", "EUR", "CAD", "km", "estimation");

  private static YearEndFindings findings(String country) {
    return country.equals("de")
        ? GermanYearTest.YEAR.of("cash")
        : CanadianYearTest.YEAR.of("invoiced");
  }

  @ParameterizedTest
  @CsvSource({"de", "ca"})
  void nothing_in_words_stands_in_english_on_the_other_page(String country) {
    List<Report> reports = findings(country).reports();
    assertEquals(
        List.of("en", country.equals("de") ? "de" : "fr", "en"),
        reports.stream().map(Report::language).toList(),
        "the page, the other page, and the annex, which is in English");
    Set<String> english = words(reports.get(0));
    Set<String> other = words(reports.get(1));
    Set<String> untranslated = new TreeSet<>(english);
    untranslated.retainAll(other);
    untranslated.removeAll(SAME);
    assertEquals(Set.of(), untranslated);
    assertTrue(english.size() > 60 && other.size() > 60, "both say something");
  }

  /** What a page says: headings, sentences, column heads, and cells that are words. */
  private static Set<String> words(Report report) {
    Set<String> words = new TreeSet<>();
    for (Block block : report.blocks()) {
      if (block instanceof Block.Heading heading) {
        words.add(heading.text());
      } else if (block instanceof Block.Paragraph paragraph) {
        words.add(paragraph.text());
      } else if (block instanceof Block.Caution caution) {
        words.add(caution.text());
      } else if (block instanceof Block.KeyFigures figures) {
        figures.figures().forEach(figure -> words.add(figure.label()));
      } else if (block instanceof Block.Table table) {
        table.columns().forEach(column -> words.add(column.header()));
        table.rows().forEach(row -> row.cells().forEach(cell -> words.add(cell.text())));
      }
    }
    return words.stream()
        .filter(word -> Pattern.compile("[a-z]{2}").matcher(word).find())
        .filter(word -> !isNameOfTheBook(word))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static boolean isNameOfTheBook(String word) {
    return List.of("Esse", "Bohrer", "Presse", "Regal", "Ding", "Truck", "Anvil", "Tongs")
        .contains(word);
  }

  /** A gap that gets lost, or a second one of its number, would print braces or drop a figure. */
  @Test
  void every_translation_has_the_gaps_of_its_sentence() {
    Pattern gap = Pattern.compile("\\{\\d\\}");
    PageTranslations.read()
        .byLanguage()
        .forEach(
            (language, sentences) -> {
              for (Map.Entry<String, String> one : sentences.entrySet()) {
                assertEquals(gaps(gap, one.getKey()), gaps(gap, one.getValue()), one.getValue());
              }
            });
  }

  private static List<String> gaps(Pattern gap, String text) {
    return gap.matcher(text).results().map(found -> found.group()).sorted().toList();
  }
}
