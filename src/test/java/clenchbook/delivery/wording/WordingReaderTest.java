package clenchbook.delivery.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.delivery.SampleMail;
import clenchbook.delivery.message.MailText;
import clenchbook.texts.InEnglish;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WordingReaderTest {
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"de", "en", "es", "fr", "nl"})
  void every_language_says_everything_once(String language) {
    MailText text = WordingReader.builtIn(language).write(SampleMail.everyValue());

    assertEquals(language, text.language());
    assertEquals(WordingPart.values().length - 4, text.paragraphs().size(), "all but subjects");
    String all = text.subject() + "\n" + text.plain();
    for (MailWord word : MailWord.values()) {
      assertTrue(all.contains("<" + word.placeholder() + ">"), language + " lacks " + word);
    }
    assertFalse(all.contains("{") || all.contains("}"), all);
  }

  @Test
  void a_language_without_a_wording_gets_english() {
    assertEquals("en", WordingReader.builtIn("is").language());
    assertEquals("en", WordingReader.builtIn("").language());
    assertEquals("de", WordingReader.builtIn("de-CH").language());
  }

  @Test
  void a_paragraph_without_its_value_is_left_out() {
    Map<MailWord, String> values = new EnumMap<>(MailWord.class);
    values.put(MailWord.OWNER, "Rosa");
    values.put(MailWord.BUSINESS, "Alder Farriery");
    values.put(MailWord.MONTH, "October 2026");
    values.put(MailWord.DATE, "31 October 2026");
    values.put(MailWord.BALANCE, "$120.00");

    MailText text = WordingReader.builtIn("en").write(values);

    assertEquals("Statement from Alder Farriery, October 2026", text.subject());
    assertEquals(
        List.of(
            "Dear Rosa,",
            "The attached statement shows your account as it stood on 31 October 2026. The balance"
                + " is $120.00.",
            "Does anything look wrong? Just answer this mail and we will sort it out.",
            "Kind regards\nAlder Farriery"),
        text.paragraphs());
  }

  @Test
  void the_farriers_own_words_stand_in_place_of_the_built_in_ones() throws IOException {
    write("greeting = Hallo {owner} 🐴\nquestion =\n");

    WordingReader.Reading reading = WordingReader.read("de", folder);

    assertEquals(List.of(), reading.faults());
    MailText text = reading.wording().write(Map.of(MailWord.OWNER, "Jörg"));
    assertEquals(List.of("Hallo Jörg 🐴"), text.paragraphs());
  }

  @Test
  void an_unknown_placeholder_is_reported_and_the_built_in_words_stand() throws IOException {
    write("greeting = Hallo {ovner}\nfarewel = Tschüss\n");

    WordingReader.Reading reading = WordingReader.read("de", folder);

    assertEquals(
        List.of("farewel", "greeting"), reading.faults().stream().map(WordingFault::key).toList());
    assertTrue(
        InEnglish.said(reading.faults().get(1).line())
            .startsWith(
                "mail.de.properties greeting: '{ovner}' is no placeholder; expected one of"
                    + " {owner} "),
        InEnglish.said(reading.faults().get(1).line()));
    assertEquals(
        List.of("Guten Tag, Jörg!"),
        reading.wording().write(Map.of(MailWord.OWNER, "Jörg")).paragraphs().subList(0, 1));
  }

  @Test
  void a_file_in_another_encoding_is_reported() throws IOException {
    Path file = Files.createDirectories(folder.resolve("report-templates"));
    Files.write(
        file.resolve("mail.de.properties"), "greeting=Grüß".getBytes(StandardCharsets.ISO_8859_1));

    WordingReader.Reading reading = WordingReader.read("de", folder);

    assertEquals(
        "mail.de.properties: the file is not UTF-8; expected a text file saved as UTF-8",
        InEnglish.said(reading.faults().get(0).line()));
  }

  @Test
  void a_name_with_brackets_or_dollars_is_only_a_name() {
    MailText text =
        WordingReader.builtIn("en").write(Map.of(MailWord.OWNER, "{total} $1 \\ \r\nBcc: x"));

    assertEquals("Dear {total} $1 \\ Bcc: x,", text.paragraphs().get(0));
  }

  private void write(String entries) throws IOException {
    Path templates = Files.createDirectories(folder.resolve("report-templates"));
    Files.writeString(templates.resolve("mail.de.properties"), entries);
  }
}
