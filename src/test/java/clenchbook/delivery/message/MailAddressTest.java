package clenchbook.delivery.message;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sources: RFC 5321 section 4.5.3.1, RFC 5322 section 3.2.3, RFC 6532; from memory. */
class MailAddressTest {
  @ParameterizedTest
  @CsvSource({
    "anna@example.org, anna@example.org",
    "' Anna.Berg+horses@Stall.Example ', Anna.Berg+horses@stall.example",
    "mailto:anna@example.org, anna@example.org",
    "o'neill@example.ie, o'neill@example.ie",
    "anna@bücher.example, anna@xn--bcher-kva.example",
    "jörg@stall.example, jörg@stall.example"
  })
  void an_address_is_read_as_it_stands_in_a_cell(String cell, String address) {
    assertEquals(
        Optional.of(address.toLowerCase(java.util.Locale.ROOT)),
        MailAddress.parse(cell).map(read -> read.text().toLowerCase(java.util.Locale.ROOT)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "anna",
        "@example.org",
        "anna@",
        "anna@localhost",
        "anna@example..org",
        "anna@-example.org",
        "anna@example.org, ben@example.org",
        "anna@example.org; ben@example.org",
        "anna berg@example.org",
        ".anna@example.org",
        "anna..b@example.org",
        "\"anna\"@example.org",
        "Anna <anna@example.org>",
        "anna@example.org>\r\nRCPT TO:<thief@evil.example",
        "anna@example.org\r\nBcc: thief@evil.example",
        "an\u202Ena@example.org",
        "anna@[127.0.0.1]",
        "anna@10.0.0.1",
        "an\u0000na@example.org"
      })
  void what_is_no_address_is_not_taken_for_one(String cell) {
    assertEquals(Optional.empty(), MailAddress.parse(cell));
  }

  @Test
  void a_couple_may_have_an_address_each() {
    assertEquals(
        List.of("anna@example.org", "ben@example.org"),
        MailAddress.parseAll("anna@example.org; ben@example.org ;\nanna@example.org").stream()
            .map(MailAddress::text)
            .toList());
    assertEquals(List.of(), MailAddress.parseAll("anna@example.org; ben"));
    assertEquals(List.of(), MailAddress.parseAll(" "));
    assertEquals(
        List.of(), MailAddress.parseAll("a@b.org,c@b.org,d@b.org,e@b.org,f@b.org,g@b.org"));
  }

  @Test
  void the_lengths_of_the_standard_hold() {
    String longest = "a".repeat(64) + "@" + ("b".repeat(61) + ".").repeat(3) + "exa";

    assertEquals(254, longest.length());
    assertEquals(Optional.of(longest), MailAddress.parse(longest).map(MailAddress::text));
    assertEquals(Optional.empty(), MailAddress.parse("a" + longest));
    assertEquals(Optional.empty(), MailAddress.parse(longest + "m"));
    assertEquals(Optional.empty(), MailAddress.parse("a@" + "b".repeat(64) + ".org"));
  }

  @Test
  void an_address_cannot_be_made_past_the_check() {
    assertThrows(IllegalArgumentException.class, () -> new MailAddress("a b", "example.org"));
  }
}
