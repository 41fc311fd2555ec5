package clenchbook.tax;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.jobs.WrittenBook;
import clenchbook.reading.rates.RateFiles;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Report;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateTable;
import clenchbook.texts.MadeUpTexts;
import clenchbook.texts.TextSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The tax pages of each country in a language of brackets: what stands outside them is a name that
 * a form, a source or the book gives, or was never moved into the texts. Names of rate tables are
 * taken out whole, so that a word of the program is not hidden by the same word in a name.
 *
 * <p>{@code -Dmadeup.show=true} prints what is left over.
 */
class MadeUpPagesTest {
  /** Currencies, units, and what the books of these tests name. */
  private static final Pattern NAMED =
      Pattern.compile(
          "\\b(EUR|USD|GBP|AUD|CAD|km|plain|us|uk|au|de|ca|Class 4|QBI"
              + "|Trips|Visits|Purchases|Assets|Places|Settings"
              + "|January|April|June|July|December|Januar|Dezember|1er|janvier|décembre"
              + "|Ash|Birch|Cedar|Elm|Oak Farm|Oak|Sea|Home|NS|ON|Set|Trim|Anvil|Tongs|Truck|Forge"
              + "|Grinder|Press|Esse|Bohrer|Presse|Regal|Ding|Lucky charms)\\b|\\S+\\.(csv|pdf)\\b",
          Pattern.UNICODE_CHARACTER_CLASS);

  /** Every language in brackets, English too: these pages are no files. */
  private static final TextSource BRACKETS = (language, key) -> new MadeUpTexts().find("de", key);

  private static final Pattern BRACKETED = Pattern.compile("‹[^›]*›");
  private static final Pattern WORD = Pattern.compile("\\p{L}{2,}");

  /** What the program's own tables call things, longest first. */
  private static final List<String> TABLES = names();

  /** The words for costs that the tables know, which the books of these tests use. */
  private static final Set<String> CATEGORIES =
      RateFiles.bundled().tables().stream()
          .filter(table -> table.name().endsWith("/categories"))
          .flatMap(table -> table.codes().stream())
          .collect(Collectors.toSet());

  /** A country's page on one basis. */
  record Page(String country, String basis) {}

  static Stream<Page> pages() {
    return Jurisdictions.words().stream()
        .flatMap(country -> Stream.of(new Page(country, "cash"), new Page(country, "invoiced")));
  }

  @ParameterizedTest
  @MethodSource("pages")
  void no_word_of_the_program_stands_outside_the_texts(Page page) {
    Set<String> left = left(page);
    if (Boolean.getBoolean("madeup.show")) {
      left.forEach(text -> System.out.println(page.country() + ": " + text));
    }
    assertEquals(Set.of(), left);
  }

  private static Set<String> left(Page page) {
    Set<String> left = new TreeSet<>();
    for (Report report : findings(page).reports()) {
      for (String text : texts(report)) {
        boolean category = CATEGORIES.contains(text.toLowerCase(Locale.ROOT));
        if (!category && WORD.matcher(bare(text)).find()) {
          left.add(text);
        }
      }
    }
    return left;
  }

  private static String bare(String text) {
    if (NAMED.matcher(text).replaceAll("").isBlank()) {
      return "";
    }
    String bare = BRACKETED.matcher(text).replaceAll(" ");
    for (String name : TABLES) {
      bare = bare.contains(name) ? bare.replace(name, " ") : bare;
    }
    return NAMED.matcher(bare).replaceAll(" ");
  }

  private static YearEndFindings findings(Page page) {
    return switch (page.country()) {
      case "de" -> GermanYearTest.YEAR.speaking(BRACKETS, page.basis());
      case "ca" -> CanadianYearTest.YEAR.speaking(BRACKETS, page.basis());
      case "au" -> AustralianYearTest.YEAR.speaking(BRACKETS, page.basis());
      default -> {
        WrittenBook book = ScriptedYearTest.book(page.country(), page.basis(), "100");
        yield YearBook.end(
            book.speaking(BRACKETS),
            ScriptedYearTest.register(page.country(), page.basis()),
            page.country().equals("uk") ? 2025 : 2026);
      }
    };
  }

  private static List<String> names() {
    Set<String> names =
        new TreeSet<>(
            Comparator.comparingInt(String::length)
                .reversed()
                .thenComparing(Comparator.naturalOrder()));
    for (RateTable table : RateFiles.bundled().tables()) {
      for (Rate row : table.rows()) {
        String place = row.section().isBlank() ? "" : ", " + row.section();
        names.addAll(List.of(row.source() + place, row.value()));
        if (row.text().isEmpty()) {
          names.add(row.name());
        }
      }
    }
    names.removeIf(name -> !WORD.matcher(name).find());
    return List.copyOf(names);
  }

  /** What a report says: titles, sentences, heads and cells. */
  private static List<String> texts(Report report) {
    List<String> texts =
        new ArrayList<>(List.of(report.title(), report.subtitle(), report.caution()));
    for (Block block : report.blocks()) {
      if (block instanceof Block.Heading heading) {
        texts.add(heading.text());
      } else if (block instanceof Block.Paragraph paragraph) {
        texts.add(paragraph.text());
      } else if (block instanceof Block.Caution caution) {
        texts.add(caution.text());
      } else if (block instanceof Block.KeyFigures figures) {
        figures.figures().forEach(figure -> texts.add(figure.label()));
      } else if (block instanceof Block.Table table) {
        texts.add(table.caption());
        table.columns().forEach(column -> texts.add(column.header()));
        table.rows().forEach(row -> row.cells().forEach(cell -> texts.add(cell.text())));
      }
    }
    return texts;
  }

  @Test
  void a_word_outside_brackets_is_seen_and_a_name_of_a_table_is_not() {
    assertEquals(" ", bare("‹Cost·›"));
    assertEquals("  and  ", bare("‹Cost·›" + TABLES.get(0) + "and Ash"));
  }
}
