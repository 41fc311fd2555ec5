package clenchbook.bankfiles;

import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.bank.BankEntry.Standing;
import clenchbook.matching.bank.BankStatement;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Puts together what either form of OFX says. Source: Open Financial Exchange Specification 1.0.2
 * and 2.1.1, chapter 11 (statement download) and section 3.2 (amounts, dates).
 */
final class OfxStatements {
  private static final int DEEPEST = 60;

  private final String file;
  private final Intake intake;
  private final Deque<String> open = new ArrayDeque<>();
  private final Map<String, String> transaction = new HashMap<>();
  private final Map<String, String> statement = new HashMap<>();
  private int place;
  private int entries;

  OfxStatements(String file, Intake intake) {
    this.file = file;
    this.intake = intake;
  }

  /** Whether a name is that of an aggregate, which holds others and ends with a tag of its own. */
  static boolean isAggregate(String name) {
    return switch (name) {
      case "OFX",
          "BANKTRANLIST",
          "STMTTRN",
          "STMTRS",
          "CCSTMTRS",
          "STMTTRNRS",
          "CCSTMTTRNRS",
          "LEDGERBAL",
          "AVAILBAL",
          "BANKACCTFROM",
          "BANKACCTTO",
          "CCACCTFROM",
          "CCACCTTO",
          "PAYEE",
          "STATUS",
          "SONRS",
          "FI",
          "CURRENCY",
          "ORIGCURRENCY" ->
          true;
      default -> name.contains("MSGSRS");
    };
  }

  void begin(String name) {
    if (open.size() >= DEEPEST) {
      throw new UnreadableStatement(Message.of("bankfiles.refused.nested"));
    }
    open.push(name);
    if (name.equals("STMTTRN")) {
      transaction.clear();
    } else if (name.equals("STMTRS") || name.equals("CCSTMTRS")) {
      statement.clear();
      place++;
    }
  }

  void value(String name, String value) {
    String within = open.isEmpty() ? "" : open.peek();
    switch (within) {
      case "STMTTRN" -> transaction.putIfAbsent(name, Texts.line(value));
      case "PAYEE", "BANKACCTTO", "CCACCTTO", "CURRENCY" ->
          transaction.putIfAbsent(within + "." + name, Texts.line(value));
      case "STMTRS", "CCSTMTRS", "BANKTRANLIST", "BANKACCTFROM", "CCACCTFROM", "LEDGERBAL" ->
          statement.putIfAbsent(within + "." + name, Texts.line(value));
      default -> {
        // Signing on, offers, investments: not read.
      }
    }
  }

  void end(String name) {
    if (!open.contains(name)) {
      throw new UnreadableStatement(Message.of("bankfiles.damaged.notOpen", Texts.line(name)));
    }
    while (!open.pop().equals(name)) {
      // An aggregate that the file forgot to end.
    }
    if (name.equals("STMTTRN") && place > 0) {
      entry();
    } else if (name.equals("STMTRS") || name.equals("CCSTMTRS")) {
      statement();
    }
  }

  /** Says that the file is at its end. */
  void done() {
    if (!open.isEmpty()) {
      throw new UnreadableStatement(Message.of("bankfiles.cut.element", open.peek()));
    }
    if (place == 0) {
      throw new UnreadableStatement(Message.of("bankfiles.noBankStatement"));
    }
  }

  private void entry() {
    entries++;
    String label = Integer.toString(entries);
    String text = said("MEMO");
    String name = said("NAME").isEmpty() ? said("PAYEE.NAME") : said("NAME");
    String type = said("TRNTYPE").toUpperCase(Locale.ROOT);
    boolean charge = type.equals("FEE") || type.equals("SRVCHG") || type.equals("INT");
    intake.entry(
        new BankEntry(
            intake.nextStatement(),
            label,
            day(said("DTPOSTED"))
                .orElseThrow(
                    () -> new UnreadableStatement(Message.of("bankfiles.entry.date", label))),
            amount(said("TRNAMT"))
                .orElseThrow(
                    () -> new UnreadableStatement(Message.of("bankfiles.entry.amount", label))),
            said("CURRENCY.CURSYM").isEmpty() ? of("STMTRS.CURDEF") : said("CURRENCY.CURSYM"),
            name,
            said("BANKACCTTO.ACCTID"),
            text,
            "",
            said("REFNUM"),
            said("FITID"),
            charge ? Standing.CHARGE : ReturnWords.standing(name + " " + text),
            "",
            Message.NONE));
  }

  private String said(String name) {
    return transaction.getOrDefault(name, "");
  }

  private String of(String name) {
    return statement.getOrDefault(name, "");
  }

  private void statement() {
    Optional<LocalDate> to = day(of("BANKTRANLIST.DTEND"));
    Optional<LocalDate> asOf = day(of("LEDGERBAL.DTASOF"));
    // A balance of a later day than the list's end is no closing balance of the list.
    boolean closes = to.isPresent() && asOf.isPresent() && !asOf.get().isAfter(to.get());
    intake.statement(
        new BankStatement(
            file,
            place,
            "",
            CamtReader.first(of("BANKACCTFROM.ACCTID"), of("CCACCTFROM.ACCTID")),
            CamtReader.first(of("STMTRS.CURDEF"), of("CCSTMTRS.CURDEF")),
            day(of("BANKTRANLIST.DTSTART")),
            to,
            Optional.empty(),
            closes ? amount(of("LEDGERBAL.BALAMT")) : Optional.empty(),
            to.isPresent(),
            true));
  }

  /** The first eight digits: the day as the bank writes it, whatever the zone. */
  private static Optional<LocalDate> day(String text) {
    return Texts.compactDay(text);
  }

  /** A comma or a point; the standard allows both, and no grouping. */
  private static Optional<BigDecimal> amount(String text) {
    return Texts.decimal(text.replace(',', '.').replace("+", ""));
  }
}
