package clenchbook.matching;

import clenchbook.book.Payment;
import clenchbook.book.PaymentKind;
import clenchbook.book.SourceRow;
import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.bank.BankStatement;
import clenchbook.matching.known.KnownDocument;
import clenchbook.matching.known.KnownOwner;
import clenchbook.matching.known.Ledger;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A small ledger and a statement written by hand; one entry after the other, the days counting. */
final class HandMadeMonth {
  private static final LocalDate FIRST = LocalDate.of(2026, 11, 2);

  private final List<KnownOwner> owners = new ArrayList<>();
  private final List<KnownDocument> documents = new ArrayList<>();
  private final List<Payment> payments = new ArrayList<>();
  private final List<BankEntry> entries = new ArrayList<>();

  HandMadeMonth owner(String name, String... otherNames) {
    owners.add(new KnownOwner(name, List.of(otherNames), BigDecimal.ZERO));
    return this;
  }

  /** An invoice of a month of 2026. */
  HandMadeMonth invoice(String number, String owner, int month, String open) {
    LocalDate date = LocalDate.of(2026, month, 1).plusMonths(1).minusDays(1);
    BigDecimal amount = new BigDecimal(open);
    documents.add(new KnownDocument(number, owner, date, amount.max(BigDecimal.ONE), amount));
    return this;
  }

  /** A row of Payments. */
  HandMadeMonth entered(String date, String owner, String amount, String invoice, String ref) {
    payments.add(
        new Payment(
            new SourceRow("Payments", 3, payments.size() + 2, Map.of()),
            LocalDate.parse(date),
            owner,
            new BigDecimal(amount),
            invoice,
            PaymentKind.PAYMENT,
            "transfer",
            ref));
    return this;
  }

  HandMadeMonth entry(String who, String text, String amount) {
    return entry(who, text, amount, BankEntry.Standing.BOOKED);
  }

  HandMadeMonth entry(String who, String text, String amount, BankEntry.Standing standing) {
    int place = entries.size() + 1;
    entries.add(
        new BankEntry(
            0,
            Integer.toString(place),
            FIRST.plusDays(place),
            new BigDecimal(amount),
            "EUR",
            who,
            "",
            text,
            "",
            "",
            "B" + place,
            standing,
            "",
            Message.NONE));
    return this;
  }

  MatchResult matched() {
    BankStatement one =
        new BankStatement(
            "hand",
            1,
            "",
            "",
            "EUR",
            Optional.of(FIRST),
            Optional.of(FIRST.plusDays(28)),
            Optional.empty(),
            Optional.empty(),
            true,
            true);
    return Matching.of(
        new Ledger("EUR", owners, documents, payments, Optional.empty()), List.of(one), entries);
  }

  /** What is proposed: entry, owner, invoice, amount and how sure, a line for each row. */
  List<String> proposed() {
    return matched().toAdd().stream()
        .flatMap(
            proposal ->
                proposal.rows().stream()
                    .map(
                        row ->
                            String.join(
                                " | ",
                                proposal.entry().label(),
                                row.owner(),
                                row.invoice(),
                                row.amount().toPlainString(),
                                proposal.sure() >= Proposal.SURE_ENOUGH ? "sure" : "unsure")))
        .toList();
  }
}
