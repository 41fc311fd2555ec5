package clenchbook.bankfiles;

import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.bank.BankEntry.Standing;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** One entry of a camt message while it is read, with the transactions in it. */
final class CamtEntry {
  /** Sub-families of bank transaction codes for charges and interest (ISO 20022 code sets). */
  private static final Set<String> CHARGES =
      Set.of("CHRG", "COMM", "COMT", "CCHR", "COME", "FEES", "INTR", "TAXE", "ADJT");

  private static final String WITHOUT_REFERENCE = "NOTPROVIDED";

  private final int statement;
  private final String label;
  private final XmlNode own = new XmlNode("Ntry", "");
  private final List<Transaction> transactions = new ArrayList<>(1);
  private int announced;
  private final Optional<LocalDate> otherwise;

  /** What a transaction says, its amount signed where it gives one in the entry's currency. */
  private record Transaction(
      Optional<BigDecimal> amount,
      String who,
      String account,
      String text,
      String reference,
      String endToEnd,
      String bankReference,
      boolean returned) {}

  /**
   * Begins one.
   *
   * @param otherwise the day of an entry that bears none, which the schemas allow
   */
  CamtEntry(int statement, String label, Optional<LocalDate> otherwise) {
    this.statement = statement;
    this.label = label;
    this.otherwise = otherwise;
  }

  void take(XmlNode node) {
    own.add(node);
  }

  void batch(XmlNode node) {
    String count = node.text("NbOfTxs");
    if (count.matches("\\d{1,9}")) {
      announced += Integer.parseInt(count);
    }
  }

  void transaction(XmlNode node) {
    boolean in = isCredit(node.has("CdtDbtInd") ? node : own);
    boolean returned = node.has("RtrInf");
    XmlNode parties = node.at("RltdPties");
    // A movement taken back still names the parties of the first one.
    boolean fromDebtor = in != (isReversal() && !returned);
    String who = party(parties, fromDebtor ? "Dbtr" : "Cdtr");
    String ultimate = party(parties, fromDebtor ? "UltmtDbtr" : "UltmtCdtr");
    XmlNode account = parties.at(fromDebtor ? "DbtrAcct" : "CdtrAcct", "Id");
    if (who.isEmpty()) {
      who = party(parties, fromDebtor ? "Cdtr" : "Dbtr");
      account = parties.at(fromDebtor ? "CdtrAcct" : "DbtrAcct", "Id");
    }
    Remittance remittance = new Remittance(node.at("RmtInf"));
    String text = Texts.joined(remittance.text.toString(), ultimate);
    if (text.isEmpty()) {
      text = node.text("AddtlTxInf");
    }
    if (returned) {
      text = Texts.joined(text, returnReason(node.at("RtrInf")));
    }
    String endToEnd = node.text("Refs", "EndToEndId");
    transactions.add(
        new Transaction(
            amount(node, in),
            who,
            accountOf(account),
            Texts.line(text),
            remittance.reference,
            endToEnd.equals(WITHOUT_REFERENCE) ? "" : endToEnd,
            node.text("Refs", "AcctSvcrRef"),
            returned));
  }

  private static String returnReason(XmlNode info) {
    String code = CamtReader.first(info.text("Rsn", "Cd"), info.text("Rsn", "Prtry"));
    return Texts.joined("returned " + code, info.text("AddtlInf")).strip();
  }

  private static String party(XmlNode parties, String role) {
    XmlNode party = parties.at(role);
    return CamtReader.first(
        party.text("Nm"), party.text("Pty", "Nm"), party.text("Agt", "FinInstnId", "Nm"));
  }

  private static String accountOf(XmlNode id) {
    return CamtReader.first(
            id.text("IBAN"), id.text("Othr", "Id"), id.text("PrtryAcct", "Id"), id.text("BBAN"))
        .replace(" ", "");
  }

  /** What the payer wrote, in sentences and in structured places. */
  private static final class Remittance {
    private final StringBuilder text = new StringBuilder();
    private String reference = "";

    Remittance(XmlNode node) {
      node.each("Ustrd", each -> add(each.text()));
      node.each("Strd", this::structured);
    }

    private void structured(XmlNode node) {
      XmlNode of = node.at("CdtrRefInf");
      reference = CamtReader.first(reference, of.text("Ref"), of.text("CdtrRef"));
      node.each("RfrdDocInf", document -> add(document.text("Nb")));
      node.each("AddtlRmtInf", each -> add(each.text()));
    }

    private void add(String part) {
      if (!part.isEmpty() && text.length() < Texts.MOST) {
        text.append(text.isEmpty() ? "" : " ").append(part);
      }
    }
  }

  private Optional<BigDecimal> amount(XmlNode node, boolean in) {
    XmlNode details = node.at("AmtDtls");
    for (XmlNode each :
        List.of(node.at("Amt"), details.at("TxAmt", "Amt"), details.at("InstdAmt", "Amt"))) {
      boolean sameCurrency =
          each.currency().isEmpty() || each.currency().equals(own.at("Amt").currency());
      Optional<BigDecimal> amount = Texts.decimal(each.text()).filter(a -> a.signum() > 0);
      if (amount.isPresent() && sameCurrency) {
        return in ? amount : amount.map(BigDecimal::negate);
      }
    }
    return Optional.empty();
  }

  /** The day it was booked, else the day of its value, else its statement's. */
  LocalDate date() {
    return day(own.at("BookgDt"))
        .or(() -> day(own.at("ValDt")))
        .or(() -> otherwise)
        .orElseThrow(() -> new UnreadableStatement(Message.of("bankfiles.entry.noDate", label)));
  }

  /** Gives the entry, or each of its transactions where they add to it. */
  void give(Consumer<BankEntry> sink) {
    BigDecimal amount =
        signed(own)
            .orElseThrow(
                () -> new UnreadableStatement(Message.of("bankfiles.entry.amount", label)));
    if (transactions.size() > 1 && addsTo(amount)) {
      for (int each = 0; each < transactions.size(); each++) {
        Transaction one = transactions.get(each);
        sink.accept(
            entry(
                label + "#" + (each + 1),
                one.amount().orElse(amount),
                one,
                Message.NONE,
                each + 1));
      }
      return;
    }
    boolean several = transactions.size() > 1 || (transactions.isEmpty() && announced > 1);
    sink.accept(entry(label, amount, only(), several ? note() : Message.NONE, 0));
  }

  private boolean addsTo(BigDecimal amount) {
    BigDecimal sum = BigDecimal.ZERO;
    for (Transaction each : transactions) {
      if (each.amount().isEmpty()) {
        return false;
      }
      sum = sum.add(each.amount().get());
    }
    return sum.compareTo(amount) == 0;
  }

  private Message note() {
    return transactions.isEmpty()
        ? Message.of("bankfiles.batch.noDetails", Integer.toString(announced))
        : Message.of("bankfiles.batch.sum", Integer.toString(transactions.size()));
  }

  private Transaction only() {
    if (transactions.size() == 1) {
      return transactions.get(0);
    }
    return new Transaction(Optional.empty(), "", "", "", "", "", "", false);
  }

  private BankEntry entry(String name, BigDecimal amount, Transaction one, Message note, int part) {
    String more = own.text("AddtlNtryInf");
    String bankReference = CamtReader.first(one.bankReference(), own.text("AcctSvcrRef"));
    // The bank's one reference of a batch is made to tell its transactions apart.
    boolean shared = part > 0 && one.bankReference().isEmpty() && !bankReference.isEmpty();
    return new BankEntry(
        statement,
        name,
        date(),
        amount,
        own.at("Amt").currency(),
        one.who(),
        one.account(),
        one.text().isEmpty() ? more : one.text(),
        one.reference(),
        one.endToEnd(),
        shared ? bankReference + "#" + part : bankReference,
        standing(one, more),
        part > 0 ? batch() : "",
        note);
  }

  private String batch() {
    String banks = own.text("AcctSvcrRef");
    return banks.isEmpty() ? "" : BankEntry.batch(banks, signed(own).orElse(BigDecimal.ZERO));
  }

  private Standing standing(Transaction one, String more) {
    String status = CamtReader.first(own.text("Sts", "Cd"), own.text("Sts"));
    if (!status.isEmpty() && !status.equals("BOOK")) {
      return Standing.PENDING;
    }
    if (one.returned() || isReversal()) {
      return Standing.RETURNED;
    }
    String code = own.text("BkTxCd", "Domn", "Fmly", "SubFmlyCd");
    boolean charge = CHARGES.contains(code) && one.who().isEmpty();
    return charge ? Standing.CHARGE : ReturnWords.standing(one.text() + " " + more);
  }

  private boolean isReversal() {
    return own.text("RvslInd").equals("true") || own.text("RvslInd").equals("1");
  }

  private static boolean isCredit(XmlNode node) {
    return node.text("CdtDbtInd").equals("CRDT");
  }

  /** An amount with the sign of its credit-debit mark; empty where either is missing. */
  static Optional<BigDecimal> signed(XmlNode node) {
    String mark = node.text("CdtDbtInd");
    Optional<BigDecimal> amount = Texts.decimal(node.text("Amt")).filter(a -> a.signum() >= 0);
    if (mark.equals("CRDT")) {
      return amount;
    }
    return mark.equals("DBIT") ? amount.map(BigDecimal::negate) : Optional.empty();
  }

  /** A day given as date or as date and time, or bare. */
  static Optional<LocalDate> day(XmlNode node) {
    return Texts.isoDay(CamtReader.first(node.text("Dt"), node.text("DtTm"), node.text()));
  }
}
