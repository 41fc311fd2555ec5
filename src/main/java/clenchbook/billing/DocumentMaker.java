package clenchbook.billing;

import clenchbook.billing.corrections.Corrections;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.BilledDocument.Kind;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.billing.documents.DocumentState;
import clenchbook.billing.documents.LineMaker;
import clenchbook.book.Names;
import clenchbook.jobs.BookIndex;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Puts lines on documents: under the number of the month's draft or void one of the same owner
 * where there is one, else under the next number. Drafts left without lines become void.
 */
final class DocumentMaker {
  private final BookIndex index;
  private final YearMonth month;
  private final LineMaker maker;
  private final Function<String, LocalDate> due;
  private final Numbering numbering;
  private final List<BilledDocument> replaceable;
  private final List<BilledDocument> finished = new ArrayList<>();

  DocumentMaker(
      BookIndex index,
      List<BilledDocument> register,
      YearMonth month,
      LineMaker maker,
      Function<String, LocalDate> due,
      Numbering numbering) {
    this.index = index;
    this.month = month;
    this.maker = maker;
    this.due = due;
    this.numbering = numbering;
    replaceable = new ArrayList<>();
    for (BilledDocument document : register) {
      if (document.month().equals(month)) {
        (document.state().fixed() ? finished : replaceable).add(document);
      }
    }
    replaceable.sort(MonthBilling.ORDER);
  }

  /** Lines outside the scope of tax stand on an invoice of their own, after the others. */
  void invoice(String owner, List<DocumentLine> lines) {
    List<DocumentLine> outside = lines.stream().filter(line -> line.tax().outsideScope()).toList();
    List<DocumentLine> others = lines.stream().filter(line -> !line.tax().outsideScope()).toList();
    boolean split = !outside.isEmpty() && !others.isEmpty();
    if (!split) {
      add(Kind.INVOICE, owner, "", lines, unused -> true);
      return;
    }
    add(Kind.INVOICE, owner, "", others, document -> !document.outsideScope());
    add(
        Kind.INVOICE,
        owner,
        "",
        outside,
        document -> !document.counts() || document.outsideScope());
  }

  void creditNote(Corrections.Credit credit) {
    String owner = index.ownerName(credit.invoice().owner());
    add(Kind.CREDIT_NOTE, owner, credit.invoice().number(), credit.lines(), unused -> true);
  }

  private void add(
      Kind kind,
      String owner,
      String corrects,
      List<DocumentLine> lines,
      Predicate<BilledDocument> fits) {
    boolean outside = !lines.isEmpty() && lines.get(0).tax().outsideScope();
    Numbering.Given given =
        number(kind, owner, corrects, fits, document -> document.outsideScope() == outside);
    LineMaker.Priced priced = maker.price(lines);
    LocalDate date = month.atEndOfMonth();
    finished.add(
        new BilledDocument(
            given.number(),
            given.series(),
            given.sequence(),
            kind,
            owner,
            month,
            date,
            kind == Kind.INVOICE ? due.apply(owner) : date,
            corrects,
            DocumentState.DRAFT,
            priced.lines(),
            priced.taxes(),
            priced.net(),
            priced.tax(),
            priced.net().add(priced.tax())));
  }

  private Numbering.Given number(
      Kind kind,
      String owner,
      String corrects,
      Predicate<BilledDocument> fits,
      Predicate<BilledDocument> rather) {
    Optional<BilledDocument> own =
        replaceable.stream()
            .filter(document -> document.kind() == kind)
            .filter(document -> Names.same(index.ownerName(document.owner()), owner))
            .filter(document -> document.corrects().equals(corrects))
            .filter(fits)
            .min(Comparator.comparing(document -> !rather.test(document)));
    own.ifPresent(replaceable::remove);
    return own.map(
            document ->
                new Numbering.Given(document.number(), document.series(), document.sequence()))
        .orElseGet(() -> numbering.next(month.atEndOfMonth()));
  }

  List<BilledDocument> finished() {
    List<BilledDocument> all = new ArrayList<>(finished);
    replaceable.forEach(document -> all.add(document.voided()));
    all.sort(MonthBilling.ORDER);
    return all;
  }
}
