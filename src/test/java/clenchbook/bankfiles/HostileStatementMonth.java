package clenchbook.bankfiles;

import clenchbook.matching.bank.BankEntry;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** A plain month to damage. */
final class HostileStatementMonth {
  private HostileStatementMonth() {}

  static WrittenStatement.Month month(int count) {
    List<BankEntry> entries = new ArrayList<>();
    for (int at = 0; at < count; at++) {
      entries.add(
          new BankEntry(
              0,
              Integer.toString(at + 1),
              LocalDate.of(2026, 11, 1 + at % 28),
              BigDecimal.valueOf(100L + at, 2),
              "EUR",
              "Payer " + at,
              "",
              "invoice 2026-" + (1000 + at),
              "",
              "",
              "B" + at,
              BankEntry.Standing.BOOKED,
              "",
              Message.NONE));
    }
    return new WrittenStatement.Month(
        "DE89370400440532013000",
        LocalDate.of(2026, 11, 1),
        LocalDate.of(2026, 11, 30),
        BigDecimal.TEN,
        entries);
  }
}
