package clenchbook.bankfiles;

import clenchbook.matching.bank.BankStatement;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;

/**
 * Reads ISO 20022 camt.052, camt.053 and camt.054, as a stream of entries, in every version: what
 * changed between versions .001.01 and .001.13 are wrappers around the same names (a status became
 * a choice, a party got one more level), and each place is looked for in either form. Source: ISO
 * 20022 message definition reports "Bank-to-Customer Cash Management", versions 1 to 13.
 */
final class CamtReader {
  private static final Set<String> STATEMENTS = Set.of("Stmt", "Rpt", "Ntfctn");

  private final XmlPass xml;
  private final String file;
  private final Intake intake;
  private int place;
  private int entries;

  CamtReader(XmlPass xml, String file, Intake intake) {
    this.xml = xml;
    this.file = file;
    this.intake = intake;
  }

  /** Whether an element begins one of the three messages; version 1 bears its number. */
  static boolean isMessage(String name) {
    return name.startsWith("BkToCstmrStmt")
        || name.startsWith("BkToCstmrAcctRpt")
        || name.startsWith("BkToCstmrDbtCdtNtfctn");
  }

  /** Reads from the message's start to its end. */
  void read() {
    int outer = xml.depth() - 1;
    boolean lastPage = true;
    while (xml.next() && xml.depth() > outer) {
      if (xml.starts("GrpHdr")) {
        lastPage = isOnePage(xml.node().at("MsgPgntn"));
      } else if (xml.starts() && STATEMENTS.contains(xml.name())) {
        statement(lastPage);
      } else if (xml.starts()) {
        xml.skip();
      }
    }
    if (place == 0) {
      throw new UnreadableStatement(Message.of("bankfiles.noStatement"));
    }
  }

  private static boolean isOnePage(XmlNode pages) {
    String page = pages.text("PgNb");
    return (page.isEmpty() || page.equals("1")) && !pages.text("LastPgInd").equals("false");
  }

  private void statement(boolean wholeMessage) {
    place++;
    Head head = new Head();
    String kind = xml.name();
    int outer = xml.depth() - 1;
    while (xml.next() && xml.depth() > outer) {
      if (xml.starts("Ntry")) {
        entries++;
        entry(head);
      } else if (xml.starts() && XmlNode.wanted(xml.name())) {
        head.take(xml.node());
      } else if (xml.starts()) {
        xml.skip();
      }
    }
    intake.statement(head.statement(file, place, wholeMessage && head.isWhole(kind)));
  }

  /** Reads one entry; what stands in its details is a transaction each. */
  private void entry(Head head) {
    CamtEntry entry = new CamtEntry(intake.nextStatement(), Integer.toString(entries), head.day());
    int outer = xml.depth() - 1;
    while (xml.next() && xml.depth() > outer) {
      if (xml.starts("NtryDtls")) {
        details(entry);
      } else if (xml.starts("TxDtls")) {
        entry.transaction(xml.node());
      } else if (xml.starts() && XmlNode.wanted(xml.name())) {
        entry.take(xml.node());
      } else if (xml.starts()) {
        xml.skip();
      }
    }
    entry.give(intake::entry);
    head.seen(entry.date());
  }

  private void details(CamtEntry entry) {
    int outer = xml.depth() - 1;
    while (xml.next() && xml.depth() > outer) {
      if (xml.starts("TxDtls")) {
        entry.transaction(xml.node());
      } else if (xml.starts("Btch")) {
        entry.batch(xml.node());
      } else if (xml.starts()) {
        xml.skip();
      }
    }
  }

  /** What a statement says of itself. */
  private static final class Head {
    private String number = "";
    private String account = "";
    private String currency = "";
    private Optional<LocalDate> from = Optional.empty();
    private Optional<LocalDate> to = Optional.empty();
    private Optional<LocalDate> made = Optional.empty();
    private Optional<LocalDate> first = Optional.empty();
    private Optional<LocalDate> last = Optional.empty();
    private Optional<BigDecimal> opening = Optional.empty();
    private Optional<BigDecimal> closing = Optional.empty();
    private boolean wholePages = true;
    private boolean interim;

    void take(XmlNode node) {
      switch (node.name()) {
        case "ElctrncSeqNb", "LglSeqNb" -> number = number.isEmpty() ? node.text() : number;
        case "StmtPgntn", "RptPgntn", "NtfctnPgntn" -> wholePages = isOnePage(node);
        case "FrToDt" -> period(node);
        case "CreDtTm" -> made = Texts.isoDay(node.text());
        case "Acct" -> account(node);
        case "Bal" -> balance(node);
        default -> {
          // Nothing that matching needs.
        }
      }
    }

    /** A statement is; a report only with both balances of its day; a notification never. */
    boolean isWhole(String kind) {
      boolean balances = opening.isPresent() && closing.isPresent() && !interim;
      return wholePages && (kind.equals("Stmt") || (kind.equals("Rpt") && balances));
    }

    /** The day of an entry that bears none: the period's last, else the day it was written. */
    Optional<LocalDate> day() {
      return to.or(() -> last).or(() -> made);
    }

    private void period(XmlNode node) {
      from = Texts.isoDay(node.text("FrDtTm")).or(() -> Texts.isoDay(node.text("FrDt")));
      to = Texts.isoDay(node.text("ToDtTm")).or(() -> Texts.isoDay(node.text("ToDt")));
    }

    private void account(XmlNode node) {
      XmlNode id = node.at("Id");
      account =
          first(
              id.text("IBAN"), id.text("Othr", "Id"), id.text("PrtryAcct", "Id"), id.text("BBAN"));
      currency = node.text("Ccy");
    }

    private void balance(XmlNode node) {
      String kind = first(node.text("Tp", "CdOrPrtry", "Cd"), node.text("Tp", "Cd"));
      Optional<BigDecimal> amount = CamtEntry.signed(node);
      Optional<LocalDate> day = CamtEntry.day(node.at("Dt"));
      switch (kind) {
        case "OPBD", "PRCD" -> {
          opening = opening.or(() -> amount);
          first = first.or(() -> day);
        }
        case "CLBD" -> {
          closing = amount;
          last = day;
        }
        case "ITBD" -> interim = true;
        default -> {
          // Available and forward balances prove nothing about what was booked.
        }
      }
      currency = currency.isEmpty() ? node.at("Amt").currency() : currency;
    }

    void seen(LocalDate day) {
      first = first.filter(known -> known.isBefore(day)).or(() -> Optional.of(day));
      last = last.filter(known -> known.isAfter(day)).or(() -> Optional.of(day));
    }

    BankStatement statement(String file, int place, boolean whole) {
      return new BankStatement(
          file,
          place,
          number,
          account.replace(" ", ""),
          currency,
          from.or(() -> first),
          to.or(() -> last),
          opening,
          closing,
          from.isPresent() || opening.isPresent(),
          whole);
    }
  }

  /** The first text that is not empty. */
  static String first(String... texts) {
    for (String text : texts) {
      if (!text.isEmpty()) {
        return text;
      }
    }
    return "";
  }
}
