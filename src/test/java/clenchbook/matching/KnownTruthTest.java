package clenchbook.matching;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.bank.BankStatement;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
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
    months(0, 100);
  }

  /** The months of which docs print the table: what stands there is what is measured here. */
  @Test
  @Tag("demand")
  void in_a_thousand_months_the_clear_ones_are_proposed_and_none_wrongly() throws IOException {
    String measured = months(0, 1_000).printed();
    String page = Files.readString(Path.of("docs/payments.md"));
    assertTrue(page.replace("\r\n", "\n").contains(measured), measured);
  }

  /** Unseen while the weights were chosen; two rules were learned from them afterwards. */
  @Test
  @Tag("demand")
  void in_four_thousand_other_months_none_is_proposed_wrongly() {
    months(100_000, 104_000);
  }

  private static TruthTable months(int first, int end) {
    TruthTable table = new TruthTable();
    List<String> wrong = new ArrayList<>();
    for (int seed = first; seed < end; seed++) {
      GeneratedMonth month = new GeneratedMonth(seed);
      List<BankEntry> entries = month.entries().stream().map(GeneratedMonth.Known::entry).toList();
      MatchResult result = Matching.of(month.ledger(), ONE, entries);
      int of = seed;
      table.add(month, result).forEach(each -> wrong.add("seed " + of + ": " + each));
    }
    assertEquals(List.of(), wrong, table.printed());
    assertTrue(
        table.clearAndRight() >= 0.98 * table.clear(),
        table.clearAndRight() + " of " + table.clear() + "\n" + table.printed());
    return table;
  }
}
