package clenchbook.reports.month;

import clenchbook.billing.BillingDecision;
import clenchbook.billing.accounts.Account;
import clenchbook.billing.accounts.Account.Movement;
import clenchbook.billing.accounts.Account.Source;
import clenchbook.billing.accounts.EnteredPayments;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.billing.documents.TaxTotal;
import clenchbook.billing.numbering.PaymentReferences;
import clenchbook.book.Payment;
import clenchbook.book.PaymentKind;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.book.TaxCategory;
import clenchbook.jobs.BookIndex;
import clenchbook.jobs.charge.ChargeLine;
import clenchbook.reports.letters.Ageing;
import clenchbook.reports.letters.CreditNoteDocument;
import clenchbook.reports.letters.InvoiceDocument;
import clenchbook.reports.letters.NextVisit;
import clenchbook.reports.letters.PrintedLine;
import clenchbook.reports.letters.PrintedLine.Note;
import clenchbook.reports.letters.PrintedTax;
import clenchbook.reports.letters.PrintedTotals;
import clenchbook.reports.letters.Settlement;
import clenchbook.reports.letters.StatementDocument;
import clenchbook.reports.letters.StatementEntry;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Puts documents and accounts into letters, ready to print. */
public final class Letters {
  private final LetterHeads heads;
  private final Settings settings;
  private final List<Payment> payments;
  private final Function<String, List<NextVisit>> nextVisits;

  /**
   * Writes the letters of one book.
   *
   * @param index the book by name
   * @param nextVisits when the horses that an owner pays for are next due, by owner
   * @param references what transfers shall say
   */
  public Letters(
      BookIndex index, Function<String, List<NextVisit>> nextVisits, PaymentReferences references) {
    heads = new LetterHeads(index, references);
    this.settings = index.book().settings();
    this.payments = index.book().payments();
    this.nextVisits = nextVisits;
  }

  /**
   * An invoice.
   *
   * @param document the invoice
   * @param account its owner's account as at its date
   * @param billing the month it stands in
   * @return the letter
   */
  public InvoiceDocument invoice(
      BilledDocument document, Account account, BillingDecision billing) {
    List<Settlement> settlements = settlements(document, account);
    return new InvoiceDocument(
        heads.of(document.owner(), document.number(), document.date()),
        document.month(),
        document.due(),
        document.lines().stream().map(this::line).toList(),
        totals(document),
        settlements,
        settlements.stream().map(Settlement::amount).reduce(document.gross(), BigDecimal::add),
        heads.howToPay(document.number()),
        nextVisits.apply(document.owner()),
        billing.beside(document),
        billing.replacedBy(document).stream()
            .map(note -> new InvoiceDocument.Replaced(note.number(), note.corrects()))
            .toList(),
        List.of());
  }

  /**
   * A credit note.
   *
   * @param document the credit note
   * @param invoiceDate the date of the invoice it takes back from
   * @param billing the month it stands in
   * @return the letter
   */
  public CreditNoteDocument creditNote(
      BilledDocument document, LocalDate invoiceDate, BillingDecision billing) {
    return new CreditNoteDocument(
        heads.of(document.owner(), document.number(), document.date()),
        document.corrects(),
        invoiceDate,
        document.lines().stream().map(this::line).toList(),
        totals(document),
        billing.replacing(document),
        List.of());
  }

  /**
   * A statement.
   *
   * @param account the account
   * @param first first day of the month
   * @param last its last day
   * @return the letter
   */
  public StatementDocument statement(Account account, LocalDate first, LocalDate last) {
    Optional<BigDecimal> fee =
        settings.findNumber(Setting.LATE_FEE).filter(percent -> percent.signum() > 0);
    return new StatementDocument(
        heads.of(account.owner(), "", last),
        first,
        account.broughtForward(),
        entries(account),
        account.balance(),
        ageing(account.ageing()),
        ageing(account.asked()),
        EnteredPayments.upTo(payments, last),
        fee,
        heads.howToPay(""));
  }

  private static Ageing ageing(Account.Ages ages) {
    return new Ageing(
        ages.current(), ages.pastDue1To30(), ages.pastDue31To60(), ages.pastDueOver60());
  }

  private static List<StatementEntry> entries(Account account) {
    List<StatementEntry> entries = new ArrayList<>();
    BigDecimal balance = account.broughtForward();
    for (Movement movement : account.movements()) {
      balance = balance.add(movement.amount());
      entries.add(
          new StatementEntry(
              movement.date(), kind(movement), movement.reference(), movement.amount(), balance));
    }
    return entries;
  }

  private static StatementEntry.Kind kind(Movement movement) {
    return switch (movement.source()) {
      case TRUCK -> StatementEntry.Kind.PAID_AT_TRUCK;
      case DOCUMENT ->
          movement.amount().signum() < 0
              ? StatementEntry.Kind.CREDIT_NOTE
              : StatementEntry.Kind.INVOICE;
      case PAYMENT ->
          switch (movement.kind()) {
            case DEPOSIT -> StatementEntry.Kind.DEPOSIT;
            case REFUND -> StatementEntry.Kind.REFUND;
            case WRITTEN_OFF -> StatementEntry.Kind.WRITTEN_OFF;
            case PAYMENT, TIP -> StatementEntry.Kind.PAYMENT;
          };
    };
  }

  private List<Settlement> settlements(BilledDocument document, Account account) {
    List<Settlement> settlements = new ArrayList<>();
    add(settlements, Settlement.Kind.PAID_AT_TRUCK, sum(account, Letters::truck));
    add(settlements, Settlement.Kind.DEPOSIT, sum(account, Letters::deposit));
    add(settlements, Settlement.Kind.PAYMENT, sum(account, Letters::otherPayment));
    BigDecimal others =
        account.movements().stream()
            .filter(movement -> movement.source() == Source.DOCUMENT)
            .filter(movement -> !movement.reference().equals(document.number()))
            .map(Movement::amount)
            .reduce(account.broughtForward(), BigDecimal::add);
    add(settlements, Settlement.Kind.BROUGHT_FORWARD, others);
    return settlements;
  }

  private static boolean truck(Movement movement) {
    return movement.source() == Source.TRUCK;
  }

  private static boolean deposit(Movement movement) {
    return movement.source() == Source.PAYMENT && movement.kind() == PaymentKind.DEPOSIT;
  }

  private static boolean otherPayment(Movement movement) {
    return movement.source() == Source.PAYMENT && movement.kind() != PaymentKind.DEPOSIT;
  }

  private static BigDecimal sum(Account account, Predicate<Movement> which) {
    return account.movements().stream()
        .filter(which)
        .map(Movement::amount)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static void add(List<Settlement> settlements, Settlement.Kind kind, BigDecimal amount) {
    if (amount.signum() != 0) {
      settlements.add(new Settlement(kind, amount));
    }
  }

  private PrintedLine line(DocumentLine line) {
    boolean extra = line.kind() == ChargeLine.Kind.EXTRA;
    List<String> details = extra || line.shoeing().isEmpty() ? List.of() : List.of(line.shoeing());
    boolean free = line.amount().signum() == 0 && line.part() == ChargeLine.Part.WHOLE && !extra;
    return new PrintedLine(
        line.visit().date(),
        line.horse(),
        extra ? line.count() + " × " + line.item() : line.work(),
        details,
        Optional.of(line.discountPercent()).filter(percent -> percent.signum() > 0),
        Optional.of(line.sharePercent())
            .filter(percent -> percent.compareTo(new BigDecimal(100)) < 0),
        line.tax().exempt() ? line.net() : line.amount(),
        line.tax().code(),
        free,
        notes(line, extra));
  }

  private static List<Note> notes(DocumentLine line, boolean extra) {
    List<Note> notes = new ArrayList<>();
    if (line.part() == ChargeLine.Part.GOODS) {
      notes.add(Note.GOODS);
    }
    if (line.part() == ChargeLine.Part.REST) {
      notes.add(Note.WORK_PART);
    }
    if (!extra) {
      Stream.of(Note.LOST_SHOE, Note.LAMENESS, Note.NEW_HORSE)
          .filter(
              note -> note.name().equals(line.reason().toUpperCase(Locale.ROOT).replace(' ', '_')))
          .forEach(notes::add);
    }
    return notes;
  }

  private PrintedTotals totals(BilledDocument document) {
    boolean exempt = document.lines().stream().anyMatch(line -> line.tax().exempt());
    boolean included =
        document.lines().stream()
            .anyMatch(line -> line.tax().included() && line.tax().category() == TaxCategory.S);
    List<PrintedTax> taxes =
        document.taxes().stream()
            .filter(total -> !total.code().isEmpty())
            .map(Letters::printed)
            .toList();
    return new PrintedTotals(
        included && !exempt, exempt, document.net(), taxes, document.tax(), document.gross());
  }

  private static PrintedTax printed(TaxTotal total) {
    return new PrintedTax(
        total.code(),
        total.name(),
        total.ratePercent(),
        total.net(),
        total.tax(),
        total.category(),
        total.reason());
  }
}
