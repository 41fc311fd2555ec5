package clenchbook.reading.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Setting;
import clenchbook.book.SheetKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The lists of words: no word means two things where only one can be meant. */
class WordListsTest {
  private static final String WEAK = "~";

  /** The words of a list that mean two things, with both meanings. */
  private static List<String> twice(Map<String, Set<String>> meanings) {
    List<String> twice = new ArrayList<>();
    meanings.forEach(
        (word, all) -> {
          if (all.size() > 1) {
            twice.add(word + " means " + all);
          }
        });
    return twice.stream().sorted().toList();
  }

  private static void mean(Map<String, Set<String>> meanings, String word, String meaning) {
    meanings.computeIfAbsent(word, unused -> new HashSet<>()).add(meaning);
  }

  /** Each word with the heading it means, by sheet; weak ones give way and may mean two. */
  private static Map<String, Set<String>> headings() {
    Map<String, Set<String>> meanings = new HashMap<>();
    String sheet = "";
    for (WordLists.Line line : WordLists.section("sheets")) {
      if (!line.indented()) {
        sheet = line.key();
      } else if (!line.key().startsWith("needs ") && !line.key().startsWith("never ")) {
        for (String word : line.all()) {
          if (!word.startsWith(WEAK)) {
            for (String form : SameWords.forms(word)) {
              mean(meanings, sheet + ": " + form, line.key());
            }
          }
        }
      }
    }
    return meanings;
  }

  @Test
  void no_word_means_two_headings_of_a_sheet_in_any_of_the_languages() {
    assertEquals(List.of(), twice(headings()));
  }

  @Test
  void a_word_that_gives_way_has_no_meaning_of_its_own_beside() {
    Map<String, Set<String>> meanings = headings();
    List<String> both = new ArrayList<>();
    String sheet = "";
    for (WordLists.Line line : WordLists.section("sheets")) {
      sheet = line.indented() ? sheet : line.key();
      for (String word : line.words()) {
        String form = sheet + ": " + SameWords.writtenOut(word);
        if (word.startsWith(WEAK) && meanings.containsKey(form)) {
          both.add(form);
        }
      }
    }
    assertEquals(List.of(), both);
  }

  @Test
  void words_that_differ_in_an_umlaut_alone_are_told_apart() {
    SheetWords visits = Vocabulary.load().of(SheetKind.VISITS);
    assertEquals(Optional.of("Nails"), visits.heading("Nägel"));
    assertEquals(Optional.of("Nails"), visits.heading("NAEGEL"));
    assertEquals(Optional.of("Nail"), visits.heading("Nagel"));
    assertEquals(Optional.of("Size"), visits.heading("Groesse"));
    assertEquals(Optional.of("Size"), visits.heading("Grösse"));
  }

  @Test
  void a_word_of_two_meanings_would_be_seen() {
    Map<String, Set<String>> planted = headings();
    mean(planted, "Visits: preis", "Paid");
    assertEquals(1, twice(planted).size());
  }

  @Test
  void no_column_that_is_left_out_is_a_heading_of_visits() {
    List<String> both = new ArrayList<>();
    for (WordLists.Line line : WordLists.section("left out")) {
      for (String word : line.words()) {
        boolean heading = Vocabulary.load().of(SheetKind.VISITS).heading(word).isPresent();
        if (heading && !SameWords.bare(word).isEmpty()) {
          both.add(line.language() + " " + word);
        }
      }
    }
    assertEquals(List.of(), both);
  }

  @Test
  void no_word_means_two_settings_or_two_choices_of_one_list() {
    Map<String, Set<String>> meanings = new HashMap<>();
    for (Setting setting : Setting.values()) {
      SameWords.forms(setting.title()).forEach(form -> mean(meanings, form, setting.title()));
    }
    for (WordLists.Line line : WordLists.section("settings")) {
      line.words().forEach(word -> mean(meanings, SameWords.bare(word), line.key()));
    }
    assertEquals(List.of(), twice(meanings));
    Map<String, Set<String>> choices = new HashMap<>();
    String list = "";
    for (WordLists.Line line : WordLists.section("cells")) {
      if (!line.indented()) {
        list = line.key();
      } else {
        for (String word : line.all()) {
          mean(choices, list + ": " + SameWords.bare(word), line.key());
        }
      }
    }
    assertEquals(List.of(), twice(choices));
  }

  @Test
  void yes_is_never_no_and_paid_never_owed() {
    Map<String, Set<String>> meanings = new HashMap<>();
    for (WordLists.Line line : WordLists.section("cells")) {
      if (!line.indented() && !line.words().isEmpty()) {
        boolean good = line.key().equals("Yes") || line.key().equals("Paid in full");
        for (String word : line.words()) {
          mean(meanings, SameWords.bare(word), good ? "yes" : "no");
        }
      }
    }
    assertEquals(List.of(), twice(meanings));
    assertFalse(meanings.isEmpty());
  }

  @Test
  void no_word_of_a_date_means_two_months_or_a_month_and_a_weekday_written_out() {
    Map<String, Set<String>> meanings = new HashMap<>();
    for (WordLists.Line line : WordLists.section("dates")) {
      for (int at = 0; at < line.words().size(); at++) {
        for (String word : line.words().get(at).split(" ")) {
          if (!line.key().equals("fillers")) {
            mean(meanings, SameWords.bare(word), line.key() + (at + 1));
          }
        }
      }
    }
    // Dutch "ma" and the like are too short for a month.
    assertEquals(List.of(), twice(meanings));
  }

  @Test
  void numbers_have_one_value() {
    Map<String, Set<String>> meanings = new HashMap<>();
    for (WordLists.Line line : WordLists.section("numbers")) {
      line.words().forEach(word -> mean(meanings, SameWords.bare(word), line.key()));
    }
    assertEquals(List.of(), twice(meanings));
    assertEquals(Optional.of(4), NumberWords.find("Vier"));
  }

  @Test
  void each_language_has_a_word_for_every_sheet_heading_and_setting() {
    List<String> missing = new ArrayList<>();
    for (String language : WordLists.LANGUAGES.subList(1, WordLists.LANGUAGES.size())) {
      Set<String> own = new HashSet<>();
      String sheet = "";
      for (WordLists.Line line : WordLists.section("sheets")) {
        if (!line.indented()) {
          sheet = line.key();
        }
        if (line.language().equals(language) && !line.words().isEmpty()) {
          own.add(line.indented() ? sheet + ": " + line.key() : sheet);
        }
      }
      for (SheetKind kind : SheetKind.values()) {
        SheetWords words = Vocabulary.load().of(kind);
        List<String> wanted = new ArrayList<>(List.of(words.title()));
        words.canonicalHeadings().forEach(each -> wanted.add(words.title() + ": " + each));
        wanted.stream()
            .filter(each -> !own.contains(each))
            .forEach(each -> missing.add(language + " " + each));
      }
      List<String> months =
          WordLists.section("dates").stream()
              .filter(line -> line.language().equals(language) && line.key().equals("months"))
              .flatMap(line -> line.words().stream())
              .toList();
      assertEquals(12, months.size(), language);
    }
    assertEquals(List.of(), missing);
  }

  @Test
  void every_line_names_a_heading_of_its_sheet() {
    for (SheetKind kind : SheetKind.values()) {
      SheetWords words = Vocabulary.load().of(kind);
      for (String heading : words.canonicalHeadings()) {
        assertEquals(Optional.of(heading), words.heading(heading), kind + " " + heading);
      }
    }
    Set<String> known = new HashSet<>();
    String sheet = "";
    for (WordLists.Line line : WordLists.section("sheets")) {
      if (!line.indented()) {
        sheet = line.key();
      } else if (line.language().equals("en")) {
        known.add(sheet + line.key());
      } else {
        assertTrue(known.contains(sheet + line.key()), line.language() + " " + line.key());
      }
    }
  }

  @Test
  void months_are_known_whole_and_cut_short_in_every_language() {
    List<String> december = List.of("December", "Dezember", "décembre", "diciembre", "Dez.", "DIC");
    december.forEach(word -> assertEquals(Optional.of(12), DateWords.month(word), word));
    List<String> none = List.of("mardi", "martes", "Dienstag", "maandag", "xyz", "ja");
    none.forEach(word -> assertEquals(Optional.empty(), DateWords.month(word), word));
    assertEquals(Optional.of(3), DateWords.month("maart"));
    assertEquals(Optional.of(8), DateWords.month("août"));
    List<String> english =
        List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");
    IntStream.range(0, 12)
        .forEach(
            at -> assertEquals(Optional.of(at + 1), DateWords.month(english.get(at)), "" + at));
  }
}
