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

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Prix TTC | WITH_TAX",
        "Prix HT en € | WITHOUT_TAX",
        "Preis inkl. 19 % MwSt. | WITH_TAX",
        "Preis (inkl. 8,1 % MwSt.) je Pferd | WITH_TAX",
        "Bruttopreis | WITH_TAX",
        "Nettopreis in Euro | WITHOUT_TAX",
        "TTC | WITH_TAX",
        "Preis inkl. Anfahrt, ohne MwSt. | WITHOUT_TAX",
        "Precio (IVA no incluido) | WITHOUT_TAX",
        "Prijs excl. btw | WITHOUT_TAX",
        "Price inc 20% VAT | WITH_TAX",
        "Price + VAT | WITHOUT_TAX",
        "Price incl. travel | ",
        "Preis | ",
        "Betrag in EUR | ",
        "% | ",
      })
  void a_heading_says_whether_the_tax_is_in_it(String written, End tax) {
    assertEquals(Optional.ofNullable(tax), HeadingEnds.tax(written));
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
