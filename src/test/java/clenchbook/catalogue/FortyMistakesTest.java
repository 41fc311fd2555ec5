package clenchbook.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.OpenBook;
import clenchbook.commands.opening.Terminal;
import clenchbook.problem.Problem;
import clenchbook.reading.SmallBook;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One book with forty different mistakes, each of which is told of at its own cell, and no other.
 */
class FortyMistakesTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 14);

  @TempDir Path folder;

  private final List<String> planted = new ArrayList<>();
  private final SmallBook book = new SmallBook();
  private int visits = 1;
  private int days;

  private void plant(String severityAndKind, String cell) {
    planted.add(severityAndKind + " " + cell);
  }

  /** A sound visit with one cell changed; each visit has a day of its own. */
  private void visit(String severityAndKind, String column, Object cell) {
    Object[] cells = {
      DAY.plusDays(days++),
      "Mill Lane",
      "Ann",
      "Bramble",
      "Full set",
      "Keg",
      "0",
      4,
      4,
      "hot",
      "Slim nail",
      28,
      "",
      60,
      "",
      "",
      "routine",
      ""
    };
    cells[column.charAt(0) - 'A'] = cell;
    book.visit(cells);
    visits++;
    plant(severityAndKind, "Visits!" + column + visits);
  }

  private void plantVisits() {
    book.rows(
        "Visits",
        "Date|Place|Owner|Horse|Work|Shoe|Size|Shoes|New shoes|Shaping|Nail|Nails|Extras|Total min|Charge|Paid|Reason|Notes"
            .split("\\|"));
    visit("held DATE_MISSING", "A", "");
    visit("held DATE_UNREADABLE", "A", "next wk");
    visit("held DATE_AMBIGUOUS", "A", "05/06/2026");
    visit("warning DATE_WITHOUT_FORMAT", "A", 46200);
    visit("warning PLACE_UNKNOWN", "B", "Mil Lane");
    visit("warning OWNER_UNKNOWN", "C", "Anne");
    visit("warning OWNER_NOT_THE_HORSES", "C", "Bob");
    visit("warning HORSE_UNKNOWN", "D", "Brambel");
    visit("warning NAME_MISSING", "D", "");
    visit("held NO_PRICE", "E", "Unpriced");
    planted.set(planted.size() - 1, "held NO_PRICE Visits!O" + visits);
    visit("warning MATERIAL_UNKNOWN", "F", "Kegg");
    visit("warning SIZE_RECOVERED", "G", new SmallBook.Styled("46158", "d-mmm"));
    visit("warning SIZE_LOST", "G", true);
    visit("warning NUMBER_IN_WORDS", "H", "four");
    visit("warning NEW_SHOES_ABOVE_SHOES", "I", 5);
    visit("warning CHOICE_UNKNOWN", "J", "tepid");
    visit("warning NAILS_PER_SHOE_ODD", "L", 7);
    visit("warning SHOES_WITHOUT_NAILS", "L", 0);
    visit("warning MINUTES_UNREADABLE", "N", "ages");
    visit("warning MINUTES_IMPOSSIBLE", "N", 1_500);
    visit("warning NUMBER_OUT_OF_RANGE", "N", -5);
    visit("held MONEY_UNREADABLE", "O", "lots");
    visit("held ERROR_CELL", "O", SmallBook.error("#REF!"));
    visit("held FORMULA_WITHOUT_VALUE", "O", SmallBook.noResult());
    visit("held MONEY_NEGATIVE", "O", -85);
    visit("warning NUMBER_OTHER_MARK", "O", "85,50");
    visit("warning TEXT_CUT", "R", "long ".repeat(8_000));
    plantTwin();
    visit("warning PARTS_DIFFER_FROM_SHOES", "G", "0: 2; 00: 1");
    visit("warning ALUMINIUM_HOT", "F", "Light");
    planted.set(planted.size() - 1, "warning ALUMINIUM_HOT Visits!J" + visits);
    visit("warning TRIM_WITH_SHOES", "E", "Trim");
    planted.set(planted.size() - 1, "warning TRIM_WITH_SHOES Visits!H" + visits);
  }

  private void plantTwin() {
    days--;
    visit("warning DUPLICATE_VISIT", "E", "Full set");
    planted.set(planted.size() - 1, "warning DUPLICATE_VISIT Visits!D" + visits);
  }

  private void plantLists() {
    book.sheet("Work", "Work|Price|Shoes|Trim min|Tax")
        .row("Work", "Full set", 100, 4, 20)
        .row("Work", "Trim", 45, 0, 20)
        .row("Work", "Unpriced", "", 4, 20)
        .row("Work", "Reset", 80, 4, 20, "X")
        .row("Work", "Trim", 45, 0, 20);
    plant("warning TAX_CODE_UNKNOWN", "Work!E5");
    plant("warning PRICE_TWICE", "Work!A6");
    book.sheet("Tax", "Code|Rate %").row("Tax", "S", 20);
    book.sheet("Materials", "Item|Kind|Unit cost|Section")
        .row("Materials", "Keg", "keg", 5)
        .row("Materials", "Light", "aluminium", 9)
        .row("Materials", "Slim nail", "nail", 0.12)
        .row("Materials", "Flat bar", "bar", 10, "thick");
    plant("warning SECTION_UNREADABLE", "Materials!D5");
    book.sheet("Owners", "Owner|Email|Tax exempt")
        .row("Owners", "Ann", "ann@example.org", "maybe")
        .row("Owners", "Bob", "bob at example", "no");
    plant("warning YES_NO_UNREADABLE", "Owners!C2");
    plant("warning ADDRESS_UNUSABLE", "Owners!B3");
    book.sheet("Horses", "Horse|Owner|Share %")
        .row("Horses", "Bramble", "Ann")
        .row("Horses", "Rosie", "Ann", 50)
        .row("Horses", "Rosie", "Bob", 40);
    plant("warning SHARES_OFF_100", "Horses!C4");
    book.sheet("Places", "Place|Distance").row("Places", "Mill Lane", 14);
    book.sheet("Settings", "Setting|Value")
        .row("Settings", "Hourly wgae", 30)
        .row("Settings", "Currency", "Thalers")
        .row("Settings", "Payment link", "http://pay.example")
        .row("Settings", "Business name", "Thornfield Farriery")
        .row("Settings", "Payment text", "Within 14 days");
    plant("warning SETTING_UNKNOWN", "Settings!A2");
    plant("warning SETTING_UNUSABLE", "Settings!B3");
    plant("warning PAYMENT_LINK_UNUSABLE", "Settings!B4");
  }

  private List<String> told() {
    PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream());
    Machine machine = new Machine(LocalDate.of(2027, 12, 31), Locale.UK, Optional.empty());
    List<String> told = new ArrayList<>();
    OpenBook open =
        OpenBook.read(book.write(folder), machine, new Terminal(nowhere, nowhere, false));
    for (Problem problem : open.problems()) {
      told.add(problem.severity().word() + " " + problem.kind() + " " + problem.at());
    }
    return told;
  }

  @Test
  void forty_planted_mistakes_are_told_of_at_their_cells_and_nothing_else() {
    plantVisits();
    plantLists();
    assertEquals(40, planted.size());
    List<String> told = told();
    assertEquals(String.join("\n", new TreeSet<>(planted)), String.join("\n", new TreeSet<>(told)));
    assertEquals(planted.size(), told.size());
    long kinds = planted.stream().map(line -> line.split(" ")[1]).distinct().count();
    assertTrue(kinds == 40, kinds + " kinds");
  }
}
