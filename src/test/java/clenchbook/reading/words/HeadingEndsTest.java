package clenchbook.reading.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.SheetKind;
import clenchbook.reading.words.HeadingEnds.End;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What stands behind a heading and says nothing about its meaning. */
class HeadingEndsTest {
  private static Optional<HeadingEnds.Found> find(SheetKind kind, String written) {
    return HeadingEnds.find(written, left -> Vocabulary.load().of(kind).heading(left));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Price inc VAT | Charge | WITH_TAX",
        "Fee ex. GST | Charge | WITHOUT_TAX",
        "Preis in € | Charge | CURRENCY",
        "Betrag netto | Charge | WITHOUT_TAX",
        "Preis inkl. MwSt. | Charge | WITH_TAX",
        "Montant HT | Charge | WITHOUT_TAX",
        "Tarif T.T.C. | Charge | WITH_TAX",
        "Importe con IVA | Charge | WITH_TAX",
        "Importe sin IVA | Charge | WITHOUT_TAX",
        "bedrag excl. btw | Charge | WITHOUT_TAX",
        "Prijs incl. | Charge | WITH_TAX",
        "Betaald ja/nee | Paid | YES_OR_NO",
        "Payé oui/non | Paid | YES_OR_NO",
        "Paid (£) y/n | Paid | YES_OR_NO",
      })
  void an_end_is_taken_off(String written, String heading, End last) {
    HeadingEnds.Found found = find(SheetKind.VISITS, written).orElseThrow();
    assertEquals(heading, found.heading());
    assertEquals(last, found.ends().get(0));
  }

  @Test
  void several_ends_are_taken_off_one_by_one() {
    HeadingEnds.Found found = find(SheetKind.VISITS, "Prix HT en €").orElseThrow();
    assertEquals("Charge", found.heading());
    assertEquals(List.of(End.CURRENCY, End.WITHOUT_TAX), found.ends());
  }

  @ParameterizedTest
  @CsvSource({"Horse net", "Notes EUR", "Date excl", "Net", "Gross", "€", "Doodles inc VAT"})
  void no_other_heading_has_an_end(String written) {
    assertEquals(Optional.empty(), find(SheetKind.VISITS, written));
  }

  @Test
  void net_and_gross_of_a_purchase_are_never_taken_for_an_end() {
    assertEquals(Optional.empty(), find(SheetKind.PURCHASES, "Amount net"));
    assertEquals(Optional.empty(), find(SheetKind.PURCHASES, "Price gross"));
  }

  @Test
  void no_end_says_two_things() {
    Map<String, Set<String>> meanings = new HashMap<>();
    for (WordLists.Line line : WordLists.section("heading ends")) {
      for (String word : line.words()) {
        meanings.computeIfAbsent(SameWords.bare(word), unused -> new HashSet<>()).add(line.key());
      }
    }
    assertTrue(meanings.size() > 60);
    meanings.forEach((word, all) -> assertEquals(1, all.size(), word + " " + all));
  }
}
