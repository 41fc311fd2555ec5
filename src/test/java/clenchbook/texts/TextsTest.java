package clenchbook.texts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * How a key and what fills its gaps become a sentence. Plural forms by CLDR's plural rules (Unicode
 * CLDR 44, cardinal: French counts 0 and 1 as one, the other four languages only 1); from memory.
 */
class TextsTest {
  private static final Map<String, String> ENGLISH =
      Map.of(
          "t.sent", "{0,choice,0#0 invoices are|1#1 invoice is|1<{0} invoices are} sent to {1}",
          "t.only", "it's the farrier's, isn't it: {0}",
          "t.two", "{0} before {1}",
          "t.missing", "only in English",
          "t.names", "a [Visits/Charge] here or a price in [Work], {0}",
          "t.braces", "{0}");
  private static final Map<String, String> FRENCH =
      Map.of(
          "t.sent", "{0,choice,0#{0} facture envoyée|2#{0} factures envoyées} à {1}",
          "t.only", "c'est l'outil d'aujourd'hui : {0}",
          "t.names", "un [Visits/Charge] ici ou un prix dans [Work], {0}",
          "t.two", "{1} après {0}");
  private static final TextSource SOURCE =
      (language, key) ->
          Optional.ofNullable((language.equals("fr") ? FRENCH : ENGLISH).get(key))
              .filter(text -> language.equals("en") || language.equals("fr"));

  private static final Texts EN = Texts.of("en", "GB", SOURCE);
  private static final Texts FR = Texts.of("fr", "FR", SOURCE);

  @Test
  void one_and_many_are_told_apart_as_each_language_does() {
    assertEquals(
        List.of("0 invoices are sent to Ann", "1 invoice is sent to Ann"),
        Stream.of(0, 1).map(count -> EN.say("t.sent", count, "Ann")).toList());
    assertEquals("1,234 invoices are sent to Ann", EN.say("t.sent", 1234, "Ann"));
    assertEquals(
        List.of("0 facture envoyée à Ann", "1 facture envoyée à Ann", "2 factures envoyées à Ann"),
        Stream.of(0, 1, 2).map(count -> FR.say("t.sent", count, "Ann")).toList());
  }

  @Test
  void an_apostrophe_is_an_apostrophe_in_texts_and_in_what_fills_them() {
    assertEquals("it's the farrier's, isn't it: O'Neill's", EN.say("t.only", "O'Neill's"));
    assertEquals("c'est l'outil d'aujourd'hui : {0}", FR.say("t.only", "{0}"));
  }

  @Test
  void words_of_the_book_are_never_taken_for_gaps() {
    assertEquals("{1} {0,choice,x} ' {", EN.say("t.braces", "{1} {0,choice,x} ' {"));
  }

  @Test
  void sheets_and_headings_are_named_as_the_book_calls_them_but_in_english() {
    Texts named = FR.naming(name -> name.equals("Work") ? "Tarifs {0}" : "'" + name + "'");
    BookName horse = BookName.of("Visits", "Horse");
    assertEquals(
        "un 'Visits/Charge' ici ou un prix dans Tarifs {0}, 'Visits/Horse'",
        named.say("t.names", horse));
    assertEquals(
        "un Charge ici ou un prix dans Work, [Work]", FR.say("t.names", "[Work]"), "of the book");
    assertEquals(
        "a Charge here or a price in Work, Horse",
        EN.naming(name -> "other").say("t.names", horse));
  }

  @Test
  void a_language_may_turn_the_gaps_round() {
    assertEquals("a before b", EN.say("t.two", "a", "b"));
    assertEquals("b après a", FR.say("t.two", "a", "b"));
  }

  @Test
  void a_message_fills_the_gap_of_another_in_the_same_language() {
    Message inner = Message.of("t.two", "x", "y");
    assertEquals("c'est l'outil d'aujourd'hui : y après x", FR.say("t.only", inner));
    assertEquals(
        "y après x, z before", FR.say("t.braces", List.of(inner, "z before")), "a list as well");
  }

  @Test
  void numbers_are_written_as_the_language_writes_them_with_all_their_digits() {
    assertEquals("1,234.50", EN.say("t.braces", new BigDecimal("1234.50")));
    assertEquals("1234,5000", de().say("t.braces", new BigDecimal("1234.5000")).replace(".", ""));
    assertEquals("100", EN.say("t.braces", new BigDecimal("1E+2")));
  }

  @Test
  void files_are_in_english_with_numbers_as_they_are_in_every_language() {
    assertEquals("-12345.60", FR.forFiles().say("t.braces", new BigDecimal("-12345.60")));
    assertEquals("12345 invoices are sent to Ann", FR.forFiles().say("t.sent", 12345, "Ann"));
    assertEquals("October", FR.forFiles().say("t.braces", Month.OCTOBER));
  }

  @Test
  void days_are_written_as_files_have_them_and_months_by_their_names() {
    assertEquals("2026-10-03", FR.say("t.braces", LocalDate.of(2026, 10, 3)));
    assertEquals("2026-10", FR.say("t.braces", YearMonth.of(2026, 10)));
    assertEquals("octobre", FR.say("t.braces", Month.OCTOBER));
  }

  @Test
  void what_a_language_lacks_is_said_in_english_and_what_none_has_is_a_fault() {
    assertEquals("only in English", FR.say("t.missing"));
    assertThrows(IllegalArgumentException.class, () -> FR.say("t.nothing"));
  }

  @Test
  void a_language_that_is_not_spoken_counts_as_english() {
    assertEquals("en", Texts.of("it", "IT", SOURCE).language());
    assertEquals("fr", EN.in("fr").language());
    assertEquals("FR", FR.in("en").locale().getCountry());
  }

  @Test
  void words_without_a_key_stand_as_they_are() {
    assertEquals("a {0} 'b'", FR.say(Message.literal("a {0} 'b'")));
    assertEquals(
        "y après x\u202F; b",
        FR.say(Message.joined("; ", List.of(Message.of("t.two", "x", "y"), Message.literal("b")))));
    assertTrue(Message.joined("; ", List.of()).isEmpty());
  }

  /** A narrow space before a semicolon: common practice of French typesetting, no source. */
  @Test
  void only_french_sets_a_space_before_a_semicolon() {
    Message both = Message.joined("; ", List.of(Message.literal("a"), Message.literal("b; c")));
    assertEquals("a; b; c", EN.say(both));
    assertEquals("a\u202F; b; c", FR.say(both));
  }

  @Test
  void messages_are_in_one_order_whatever_the_language() {
    List<Message> sorted =
        Stream.of(
                Message.of("t.two", "b", "a"), Message.of("t.only", "z"), Message.of("t.two", "a"))
            .sorted()
            .toList();
    assertEquals(
        List.of(Message.of("t.only", "z"), Message.of("t.two", "a"), Message.of("t.two", "b", "a")),
        sorted);
  }

  @Test
  void what_no_language_can_write_fills_no_gap() {
    assertThrows(IllegalArgumentException.class, () -> Message.of("t.braces", 1.5));
    assertThrows(IllegalArgumentException.class, () -> Message.of("t.braces", List.of('x')));
  }

  private static Texts de() {
    return EN.in("de");
  }

  @Test
  void a_language_that_is_not_whole_yet_is_said_in_english_whole() {
    TextSource unfinished =
        new TextSource() {
          @Override
          public Optional<String> find(String language, String key) {
            return SOURCE.find(language, key);
          }

          @Override
          public boolean speaks(String language) {
            return language.equals(Texts.ENGLISH);
          }
        };
    Texts french = Texts.of("fr", "FR", unfinished);
    assertEquals("en", french.spoken());
    assertEquals("fr", FR.spoken());
    assertEquals("October before x", french.say("t.two", Month.OCTOBER, "x"));
    assertEquals("x après octobre", FR.say("t.two", Month.OCTOBER, "x"));
  }
}
