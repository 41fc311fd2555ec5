package clenchbook.matching;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.bank.BankStatement;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Proposals against months of which the truth is known. */
class KnownTruthTest {
  private static final List<BankStatement> ONE =
      List.of(
          new BankStatement(
              "november",
              1,
              "11",
              GeneratedMonth.OWN_ACCOUNT,
              "EUR",
              Optional.of(GeneratedMonth.FIRST),
              Optional.of(GeneratedMonth.FIRST.plusDays(29)),
              Optional.of(BigDecimal.ZERO),
              Optional.empty(),
              true,
              true));

  @Test
  void in_a_hundred_months_the_clear_ones_are_proposed_and_none_wrongly() {
    months(100);
  }

  @Test
  @Tag("demand")
  void in_a_thousand_months_the_clear_ones_are_proposed_and_none_wrongly() {
    months(1_000);
  }

  private static void months(int count) {
    TruthTable table = new TruthTable();
    List<String> wrong = new ArrayList<>();
    for (int seed = 0; seed < count; seed++) {
      GeneratedMonth month = new GeneratedMonth(seed);
      List<BankEntry> entries = month.entries().stream().map(GeneratedMonth.Known::entry).toList();
      MatchResult result = Matching.of(month.ledger(), ONE, entries);
      int of = seed;
      table.add(month, result).forEach(each -> wrong.add("seed " + of + ": " + each));
    }
    assertEquals(0, table.wrong(), wrong.toString());
    assertTrue(
        table.clearAndRight() >= 0.98 * table.clear(),
        table.clearAndRight() + " of " + table.clear() + "\n" + table.printed());
  }
}
