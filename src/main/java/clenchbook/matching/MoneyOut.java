package clenchbook.matching;

import clenchbook.book.Names;
import clenchbook.book.Payment;
import clenchbook.book.PaymentKind;
import clenchbook.matching.bank.AccountMask;
import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.evidence.NameIndex;
import clenchbook.matching.evidence.NameLevel;
import clenchbook.matching.evidence.NumberHow;
import clenchbook.matching.evidence.NumberIndex;
import clenchbook.matching.evidence.PayerName;
import clenchbook.matching.known.KnownDocument;
import clenchbook.matching.known.KnownOwner;
import clenchbook.matching.known.Ledger;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Money that went out: payments that came back and refunds are proposed with Kind {@code refund};
 * all else is the farrier's own business and left alone. Not thread-safe.
 */
final class MoneyOut {
  private static final int MOST_DAYS_BACK = 70;

  private final NumberIndex numbers;
  private final NameIndex names;
  private final Map<String, KnownOwner> owners = new HashMap<>();
  private final List<Payment> payments;
  private final List<Proposal> proposed;
  private final AccountMask mask;

  /**
   * Takes what is known.
   *
   * @param proposed what was proposed for money in, in which a payment that came back is looked for
   */
  MoneyOut(
      Ledger ledger,
      NumberIndex numbers,
      NameIndex names,
      List<Proposal> proposed,
      AccountMask mask) {
    this.numbers = numbers;
    this.names = names;
    this.payments = ledger.payments();
    this.proposed = proposed;
    this.mask = mask;
    ledger.owners().forEach(owner -> owners.put(owner.name(), owner));
  }

  /** Why an entry is left alone. */
  static Message leftAlone(BankEntry entry) {
    return switch (entry.standing()) {
      case CHARGE -> Message.of("matching.aside.charge");
      case RETURNED -> Message.of("matching.aside.cameBack");
      default -> Message.of("matching.aside.moneyOut");
    };
  }

  Optional<Proposal> proposal(BankEntry entry) {
    if (entry.standing() == BankEntry.Standing.CHARGE) {
      return Optional.empty();
    }
    Map<KnownDocument, NumberHow> named = numbers.find(entry.date(), CandidateFinder.texts(entry));
    Optional<KnownDocument> plain =
        named.entrySet().stream()
            .filter(each -> each.getValue().plain())
            .map(Map.Entry::getKey)
            .findFirst();
    Map<String, NameLevel> levels = names.find(entry);
    List<String> called =
        levels.entrySet().stream()
            .filter(each -> each.getValue().named())
            .map(Map.Entry::getKey)
            .toList();
    Optional<String> owner = called.size() == 1 ? Optional.of(called.get(0)) : Optional.empty();
    boolean several = named.values().stream().filter(NumberHow::plain).count() > 1;
    return entry.standing() == BankEntry.Standing.RETURNED
        ? returned(entry, several ? Optional.empty() : plain, owner)
        : refund(entry, several ? Optional.empty() : plain, owner);
  }

  private Optional<Proposal> returned(
      BankEntry entry, Optional<KnownDocument> plain, Optional<String> owner) {
    Optional<Proposal> first = proposed.stream().filter(each -> isFirst(each, entry)).findFirst();
    if (plain.isPresent()) {
      String number = plain.get().number();
      return Optional.of(
          refund(
              entry, plain.get().owner(), number, 95, Message.of("matching.back.number", number)));
    }
    if (first.isPresent() && first.get().rows().size() == 1) {
      PaymentRow row = first.get().rows().get(0);
      BankEntry paid = first.get().entry();
      Message why = Message.of("matching.back.payment", paid.date(), paid.label());
      return Optional.of(
          refund(entry, row.owner(), row.invoice(), Math.min(95, first.get().sure()), why));
    }
    Optional<Payment> entered = entered(entry, owner);
    if (entered.isPresent()) {
      Payment row = entered.get();
      Message why =
          Message.of("matching.back.entered", Integer.toString(row.source().row()), row.date());
      return Optional.of(
          refund(entry, row.owner(), row.invoice(), owner.isPresent() ? 94 : 70, why));
    }
    return owner.map(name -> refund(entry, name, "", 75, Message.of("matching.back.name", name)));
  }

  /** A payment in these statements that the entry takes back: its reference or payer and amount. */
  private static boolean isFirst(Proposal proposal, BankEntry entry) {
    BankEntry first = proposal.entry();
    long days = entry.date().toEpochDay() - first.date().toEpochDay();
    boolean sameReference =
        !entry.endToEnd().isEmpty() && entry.endToEnd().equals(first.endToEnd());
    boolean sameAccount = !entry.account().isEmpty() && entry.account().equals(first.account());
    boolean samePayer =
        !entry.who().isEmpty() && PayerName.key(entry.who()).equals(PayerName.key(first.who()));
    return days >= 0
        && days <= MOST_DAYS_BACK
        && first.amount().negate().compareTo(entry.amount()) == 0
        && (sameReference || sameAccount || samePayer);
  }

  /** The one payment entered of this amount, by an owner where one is known. */
  private Optional<Payment> entered(BankEntry entry, Optional<String> owner) {
    BigDecimal size = entry.amount().negate();
    List<Payment> rows =
        payments.stream()
            .filter(row -> row.kind() == PaymentKind.PAYMENT || row.kind() == PaymentKind.DEPOSIT)
            .filter(row -> row.amount().abs().compareTo(size) == 0)
            .filter(row -> isBefore(row, entry))
            .filter(row -> owner.isEmpty() || Names.same(row.owner(), owner.get()))
            .toList();
    return rows.size() == 1 ? Optional.of(rows.get(0)) : Optional.empty();
  }

  private static boolean isBefore(Payment row, BankEntry entry) {
    long days = entry.date().toEpochDay() - row.date().toEpochDay();
    return days >= 0 && days <= MOST_DAYS_BACK;
  }

  private Optional<Proposal> refund(
      BankEntry entry, Optional<KnownDocument> plain, Optional<String> owner) {
    BigDecimal size = entry.amount().negate();
    if (plain.isPresent() && plain.get().creditNote()) {
      String number = plain.get().number();
      boolean whole = plain.get().gross().negate().compareTo(size) == 0;
      return Optional.of(
          refund(
              entry,
              plain.get().owner(),
              number,
              whole ? 97 : 91,
              Message.of("matching.refund.creditNote", number)));
    }
    if (owner.isEmpty()) {
      return Optional.empty();
    }
    BigDecimal credit = balance(owner.get()).negate();
    if (credit.signum() <= 0) {
      return Optional.empty();
    }
    boolean whole = credit.compareTo(size) == 0;
    String amount = credit.toPlainString();
    Message why =
        whole
            ? Message.of("matching.refund.favour", owner.get(), amount)
            : Message.of("matching.refund.favourUnsure", owner.get(), amount);
    return Optional.of(refund(entry, owner.get(), "", whole ? 95 : 75, why));
  }

  private BigDecimal balance(String owner) {
    KnownOwner known = owners.get(owner);
    return known == null ? BigDecimal.ZERO : known.balance();
  }

  private Proposal refund(BankEntry entry, String owner, String number, int sure, Message why) {
    boolean enough = sure >= Proposal.SURE_ENOUGH;
    PaymentRow row =
        new PaymentRow(owner, entry.amount().negate(), enough ? number : "", PaymentKind.REFUND);
    Message said =
        enough || number.isEmpty() ? why : Message.of("matching.refund.unsure", number, owner, why);
    return new Proposal(entry, List.of(row), EntryReference.of(entry, mask), sure, said);
  }
}
