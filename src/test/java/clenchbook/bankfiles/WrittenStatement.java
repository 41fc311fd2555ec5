package clenchbook.bankfiles;

import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.bank.BankEntry.Standing;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** Writes entries as banks do, in each of the formats that are read. */
public enum WrittenStatement {
  /** camt.053, version 2. */
  CAMT_053_V2(month -> camt(month, "camt.053.001.02", false)),
  /** camt.053, version 8, where parties and states are one level deeper. */
  CAMT_053_V8(month -> camt(month, "camt.053.001.08", true)),
  /** MT940 with numbered subfields. */
  MT940_NUMBERED(month -> mt940(month, WrittenStatement::numbered)),
  /** MT940 with code words between slashes. */
  MT940_SLASHES(month -> mt940(month, WrittenStatement::slashes)),
  /** MT940 with a text. */
  MT940_TEXT(month -> mt940(month, WrittenStatement::plain)),
  /** OFX 1. */
  OFX_1(month -> ofx(month, true)),
  /** OFX 2. */
  OFX_2(month -> ofx(month, false)),
  /** CSV in English, day first, debit and credit apart. */
  CSV_EN(WrittenStatement::csvEn),
  /** CSV in German, semicolons and decimal commas, windows-1252, title lines above. */
  CSV_DE(WrittenStatement::csvDe),
  /** CSV in French, debit and credit apart, tabs. */
  CSV_FR(WrittenStatement::csvFr),
  /** CSV in Spanish, with running balance, newest first, UTF-16. */
  CSV_ES(WrittenStatement::csvEs),
  /** CSV in Dutch, with a column Af Bij and compact days. */
  CSV_NL(WrittenStatement::csvNl);

  /**
   * What is written.
   *
   * @param account the farrier's account
   * @param first the first day
   * @param last the last day
   * @param opening the opening balance
   * @param entries in the order of days
   */
  public record Month(
      String account,
      LocalDate first,
      LocalDate last,
      BigDecimal opening,
      List<BankEntry> entries) {
    BigDecimal closing() {
      return entries.stream().map(BankEntry::amount).reduce(opening, BigDecimal::add);
    }
  }

  private static final DateTimeFormatter COMPACT = DateTimeFormatter.ofPattern("yyyyMMdd");
  private final Function<Month, byte[]> writer;

  WrittenStatement(Function<Month, byte[]> writer) {
    this.writer = writer;
  }

  /** The bytes of the file. */
  public byte[] bytes(Month month) {
    return writer.apply(month);
  }

  private static String comma(BigDecimal amount) {
    return amount.setScale(2, RoundingMode.UNNECESSARY).toPlainString().replace('.', ',');
  }

  private static String xml(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  private static String words(BankEntry entry) {
    return entry.reference().isEmpty() ? entry.text() : entry.reference() + " " + entry.text();
  }

  // --- camt

  private static byte[] camt(Month month, String version, boolean deep) {
    StringBuilder text = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    text.append("<Document xmlns=\"urn:iso:std:iso:20022:tech:xsd:")
        .append(version)
        .append("\">")
        .append(
            "<BkToCstmrStmt><GrpHdr><MsgId>M1</MsgId><CreDtTm>2026-12-01T06:00:00</CreDtTm></GrpHdr>")
        .append(
            "<Stmt><Id>S11</Id><ElctrncSeqNb>11</ElctrncSeqNb><CreDtTm>2026-12-01T06:00:00</CreDtTm>")
        .append("<FrToDt><FrDtTm>")
        .append(month.first())
        .append("T00:00:00</FrDtTm><ToDtTm>")
        .append(month.last())
        .append("T23:59:59</ToDtTm></FrToDt>")
        .append("<Acct><Id><IBAN>")
        .append(month.account())
        .append("</IBAN></Id><Ccy>EUR</Ccy></Acct>");
    balance(text, "OPBD", month.opening(), month.first());
    balance(text, "CLBD", month.closing(), month.last());
    month.entries().forEach(entry -> camtEntry(text, entry, deep));
    return text.append("</Stmt></BkToCstmrStmt></Document>")
        .toString()
        .getBytes(StandardCharsets.UTF_8);
  }

  private static void balance(StringBuilder text, String code, BigDecimal amount, LocalDate day) {
    text.append("<Bal><Tp><CdOrPrtry><Cd>")
        .append(code)
        .append("</Cd></CdOrPrtry></Tp><Amt Ccy=\"EUR\">")
        .append(amount.abs().toPlainString())
        .append("</Amt><CdtDbtInd>")
        .append(amount.signum() < 0 ? "DBIT" : "CRDT")
        .append("</CdtDbtInd><Dt><Dt>")
        .append(day)
        .append("</Dt></Dt></Bal>");
  }

  private static void camtEntry(StringBuilder text, BankEntry entry, boolean deep) {
    boolean in = entry.moneyIn();
    String party = "<Nm>" + xml(entry.who()) + "</Nm>";
    text.append("<Ntry><Amt Ccy=\"EUR\">")
        .append(entry.amount().abs().toPlainString())
        .append("</Amt><CdtDbtInd>")
        .append(in ? "CRDT" : "DBIT")
        .append("</CdtDbtInd><Sts>")
        .append(deep ? "<Cd>BOOK</Cd>" : "BOOK")
        .append("</Sts><BookgDt><Dt>")
        .append(entry.date())
        .append("</Dt></BookgDt><ValDt><Dt>")
        .append(entry.date())
        .append("</Dt></ValDt><AcctSvcrRef>")
        .append(entry.bankReference())
        .append("</AcctSvcrRef><NtryDtls><TxDtls><Refs><EndToEndId>NOTPROVIDED")
        .append("</EndToEndId></Refs>");
    if (!entry.who().isEmpty()) {
      String role = in ? "Dbtr" : "Cdtr";
      text.append("<RltdPties><")
          .append(role)
          .append('>')
          .append(deep ? "<Pty>" + party + "</Pty>" : party)
          .append("</")
          .append(role)
          .append("></RltdPties>");
    }
    text.append("<RmtInf>");
    if (!entry.text().isEmpty()) {
      text.append("<Ustrd>").append(xml(entry.text())).append("</Ustrd>");
    }
    if (!entry.reference().isEmpty()) {
      text.append("<Strd><CdtrRefInf><Ref>")
          .append(entry.reference())
          .append("</Ref></CdtrRefInf></Strd>");
    }
    text.append("</RmtInf>");
    if (entry.standing() == Standing.RETURNED) {
      text.append("<RtrInf><Rsn><Cd>MS03</Cd></Rsn></RtrInf>");
    }
    text.append("</TxDtls></NtryDtls></Ntry>\n");
  }

  // --- MT940

  private static byte[] mt940(Month month, Function<BankEntry, String> details) {
    StringBuilder text =
        new StringBuilder(":20:STARTUMS\r\n:25:")
            .append(month.account())
            .append("\r\n:28C:11/1\r\n:60F:")
            .append(mtBalance(month.opening(), month.first()))
            .append("\r\n");
    for (BankEntry entry : month.entries()) {
      String day = entry.date().format(COMPACT).substring(2);
      text.append(":61:")
          .append(day)
          .append(day.substring(2))
          .append(entry.moneyIn() ? "C" : "D")
          .append(comma(entry.amount().abs()))
          .append(entry.standing() == Standing.RETURNED ? "NRTI" : "NTRF")
          .append("NONREF//")
          .append(entry.bankReference())
          .append("\r\n");
      String all = details.apply(entry);
      text.append(":86:");
      for (int from = 0; from < all.length(); from += 65) {
        text.append(all, from, Math.min(all.length(), from + 65)).append("\r\n");
      }
      text.append(all.isEmpty() ? "\r\n" : "");
    }
    return text.append(":62F:")
        .append(mtBalance(month.closing(), month.last()))
        .append("\r\n-\r\n")
        .toString()
        .getBytes(StandardCharsets.UTF_8);
  }

  private static String mtBalance(BigDecimal amount, LocalDate day) {
    return (amount.signum() < 0 ? "D" : "C")
        + day.format(COMPACT).substring(2)
        + "EUR"
        + comma(amount.abs());
  }

  private static String numbered(BankEntry entry) {
    StringBuilder text = new StringBuilder("166?00GUTSCHR. UEBERWEISUNG?109075");
    String use = "SVWZ+" + words(entry);
    int field = 20;
    for (int from = 0; from < use.length() && field < 30; from += 27) {
      text.append('?').append(field++).append(use, from, Math.min(use.length(), from + 27));
    }
    String who = entry.who();
    text.append("?30COBADEFFXXX?31DE02120300000000202051");
    text.append("?32").append(who, 0, Math.min(27, who.length()));
    return who.length() > 27
        ? text.append("?33").append(who.substring(27)).toString()
        : text.toString();
  }

  private static String slashes(BankEntry entry) {
    return "/TRTP/SEPA OVERBOEKING/IBAN/NL91ABNA0417164300/BIC/ABNANL2A/NAME/"
        + entry.who()
        + "/REMI/"
        + words(entry)
        + "/EREF/NOTPROVIDED";
  }

  private static String plain(BankEntry entry) {
    return (entry.who() + " " + words(entry)).strip();
  }

  // --- OFX

  private static byte[] ofx(Month month, boolean sgml) {
    StringBuilder text = new StringBuilder();
    text.append(
        sgml
            ? "OFXHEADER:100\r\n"
                + "DATA:OFXSGML\r\n"
                + "VERSION:102\r\n"
                + "SECURITY:NONE\r\n"
                + "ENCODING:USASCII\r\n"
                + "CHARSET:1252\r\n"
                + "COMPRESSION:NONE\r\n"
                + "OLDFILEUID:NONE\r\n"
                + "NEWFILEUID:NONE\r\n\r\n"
            : "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + "<?OFX OFXHEADER=\"200\" VERSION=\"211\"?>\n");
    text.append("<OFX><BANKMSGSRSV1><STMTTRNRS><STMTRS>");
    tag(text, "CURDEF", "EUR", sgml);
    text.append("<BANKACCTFROM>");
    tag(text, "ACCTID", month.account(), sgml);
    text.append("</BANKACCTFROM><BANKTRANLIST>");
    tag(text, "DTSTART", month.first().format(COMPACT), sgml);
    tag(text, "DTEND", month.last().format(COMPACT) + "235959[+1:CET]", sgml);
    for (BankEntry entry : month.entries()) {
      text.append("<STMTTRN>");
      tag(text, "TRNTYPE", entry.moneyIn() ? "CREDIT" : "DEBIT", sgml);
      tag(text, "DTPOSTED", entry.date().format(COMPACT) + "120000", sgml);
      tag(text, "TRNAMT", entry.amount().toPlainString(), sgml);
      tag(text, "FITID", entry.bankReference(), sgml);
      tag(text, "NAME", entry.who().substring(0, Math.min(32, entry.who().length())), sgml);
      tag(text, "MEMO", words(entry), sgml);
      text.append("</STMTTRN>\n");
    }
    text.append("</BANKTRANLIST><LEDGERBAL>");
    tag(text, "BALAMT", month.closing().toPlainString(), sgml);
    tag(text, "DTASOF", month.last().format(COMPACT), sgml);
    text.append("</LEDGERBAL></STMTRS></STMTTRNRS></BANKMSGSRSV1></OFX>\n");
    return text.toString()
        .getBytes(sgml ? Charset.forName("windows-1252") : StandardCharsets.UTF_8);
  }

  private static void tag(StringBuilder text, String name, String value, boolean sgml) {
    if (!value.isEmpty()) {
      text.append('<')
          .append(name)
          .append('>')
          .append(xml(value))
          .append(sgml ? "\r\n" : "</" + name + ">");
    }
  }

  // --- CSV

  private static String quoted(String text) {
    return '"' + text.replace("\"", "\"\"") + '"';
  }

  private static byte[] csvEn(Month month) {
    StringBuilder text = new StringBuilder("Date,Name,Description,Reference,Money out,Money in\n");
    for (BankEntry e : month.entries()) {
      String size = e.amount().abs().toPlainString();
      text.append(e.date().format(DateTimeFormatter.ofPattern("dd/MM/yyyy")))
          .append(',')
          .append(quoted(e.who()))
          .append(',')
          .append(quoted(words(e)))
          .append(',')
          .append(e.bankReference())
          .append(',')
          .append(e.moneyIn() ? "," + size : size + ",")
          .append('\n');
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] csvDe(Month month) {
    StringBuilder text =
        new StringBuilder(
            "Umsatzanzeige;Datei erstellt am 01.12.2026\r\n\r\nKonto;Girokonto\r\n\r\n");
    text.append(
        "\"Buchungstag\";\"Wertstellung\";\"Begünstigter/Zahlungspflichtiger\";\"Verwendungszweck\";\"Betrag"
            + " (EUR)\"\r\n");
    for (BankEntry e : month.entries()) {
      String amount = String.format(Locale.GERMANY, "%,.2f", e.amount());
      String day = e.date().format(DateTimeFormatter.ofPattern("dd.MM.yy"));
      text.append(day)
          .append(';')
          .append(day)
          .append(';')
          .append(quoted(e.who()))
          .append(';')
          .append(quoted(words(e)))
          .append(";\"")
          .append(amount)
          .append("\"\r\n");
    }
    return text.toString().getBytes(Charset.forName("windows-1252"));
  }

  private static byte[] csvFr(Month month) {
    StringBuilder text =
        new StringBuilder("Date de l'opération\tLibellé\tTiers\tDébit euros\tCrédit euros\n");
    for (BankEntry e : month.entries()) {
      String size =
          String.format(Locale.ROOT, "%,.2f", e.amount().abs()).replace(',', ' ').replace('.', ',');
      text.append(e.date().format(DateTimeFormatter.ofPattern("dd/MM/yyyy")))
          .append('\t')
          .append(quoted(words(e)))
          .append('\t')
          .append(quoted(e.who()))
          .append('\t')
          .append(e.moneyIn() ? "\t" + size : size + "\t")
          .append('\n');
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] csvEs(Month month) {
    StringBuilder text =
        new StringBuilder("Fecha;Fecha valor;Concepto;Ordenante/Beneficiario;Importe;Saldo\r\n");
    BigDecimal after = month.closing();
    for (int at = month.entries().size() - 1; at >= 0; at--) {
      BankEntry e = month.entries().get(at);
      String day = e.date().format(DateTimeFormatter.ofPattern("dd/MM/yyyy"));
      text.append(day)
          .append(';')
          .append(day)
          .append(';')
          .append(quoted(words(e)))
          .append(';')
          .append(quoted(e.who()))
          .append(';')
          .append(comma(e.amount()))
          .append(" €;")
          .append(comma(after))
          .append(" €\r\n");
      after = after.subtract(e.amount());
    }
    return ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE);
  }

  private static byte[] csvNl(Month month) {
    StringBuilder text =
        new StringBuilder(
            "\"Datum\",\"Naam tegenpartij\",\"Tegenrekening\",\"Af Bij\",\"Bedrag"
                + " (EUR)\",\"Mededelingen\"\n");
    for (BankEntry e : month.entries()) {
      text.append(quoted(e.date().format(COMPACT)))
          .append(',')
          .append(quoted(e.who()))
          .append(",\"\",")
          .append(quoted(e.moneyIn() ? "Bij" : "Af"))
          .append(',')
          .append(quoted(comma(e.amount().abs())))
          .append(',')
          .append(quoted(words(e)))
          .append('\n');
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }
}
