package clenchbook.matching;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.bankfiles.Hints;
import clenchbook.bankfiles.Intake;
import clenchbook.bankfiles.StatementFile;
import clenchbook.bankfiles.WrittenStatement;
import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.bank.StatementCheck;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The same months through each format: nothing is lost on the way, and the proposals stay right.
 */
class FormatsKnownTruthTest {
  private static final BigDecimal OPENING = new BigDecimal("1234.56");
  private static final int MONTHS = 12;

  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource(WrittenStatement.class)
  void months_written_as_banks_write_them_are_read_back_and_matched(WrittenStatement format)
      throws IOException {
    TruthTable table = new TruthTable();
    for (int seed = 5_000; seed < 5_000 + MONTHS; seed++) {
      GeneratedMonth month = new GeneratedMonth(seed);
      List<BankEntry> entries = month.entries().stream().map(GeneratedMonth.Known::entry).toList();
      Intake intake = read(format, entries);
      assertEquals(
          entries.stream().map(e -> e.date() + " " + e.amount()).sorted().toList(),
          intake.entries().stream().map(e -> e.date() + " " + e.amount()).sorted().toList());
      StatementCheck check = StatementCheck.of(intake.statements(), intake.entries());
      assertEquals(List.of(), check.faults());
      List<BankEntry> labelled = inOrder(intake.entries(), entries);
      table.add(month, Matching.of(month.ledger(), intake.statements(), labelled));
    }
    assertEquals(0, table.wrong(), table.printed());
    assertTrue(
        table.clearAndRight() >= 0.98 * table.clear(),
        table.clearAndRight() + " of " + table.clear() + "\n" + table.printed());
  }

  private Intake read(WrittenStatement format, List<BankEntry> entries) throws IOException {
    Path file = folder.resolve("statement");
    Files.write(
        file,
        format.bytes(
            new WrittenStatement.Month(
                GeneratedMonth.OWN_ACCOUNT,
                GeneratedMonth.FIRST,
                GeneratedMonth.FIRST.plusDays(29),
                OPENING,
                entries)));
    Intake intake = new Intake();
    StatementFile.read(file, "statement", new Hints(false, "EUR"), intake);
    return intake;
  }

  /** A file that lists the newest first is turned round, so that labels are those of the truth. */
  private static List<BankEntry> inOrder(List<BankEntry> read, List<BankEntry> written) {
    boolean reversed =
        read.size() > 1
            && !read.get(0).amount().equals(written.get(0).amount())
            && read.get(0).amount().equals(written.get(written.size() - 1).amount());
    if (!reversed) {
      return read;
    }
    List<BankEntry> turned = new java.util.ArrayList<>();
    for (int at = read.size() - 1; at >= 0; at--) {
      BankEntry e = read.get(at);
      turned.add(
          new BankEntry(
              e.statement(),
              written.get(turned.size()).label(),
              e.date(),
              e.amount(),
              e.currency(),
              e.who(),
              e.account(),
              e.text(),
              e.reference(),
              e.endToEnd(),
              e.bankReference(),
              e.standing(),
              e.batch(),
              e.note()));
    }
    return turned;
  }
}
