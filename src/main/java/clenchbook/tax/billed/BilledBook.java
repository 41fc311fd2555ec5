package clenchbook.tax.billed;

import clenchbook.billing.corrections.UnbilledVisits;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.billing.documents.TaxAmounts;
import clenchbook.billing.documents.TaxTotal;
import clenchbook.book.SourceRow;
import clenchbook.book.TaxOn;
import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.charge.ChargeLine;
import clenchbook.jobs.charge.JobCharges;
import clenchbook.jobs.charge.LineTax;
import clenchbook.values.money.LargestRemainder;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything that was billed, whatever the year: the register's documents that are not void, and
 * each visit that none of them bears, net of credits.
 */
public final class BilledBook {
  private final Jobs jobs;
  private final List<BilledDocument> documents;
  private final MinorUnit unit;
  private final boolean perLine;
  private final JobCharges charges;
  private final UnbilledVisits unbilled;

  private BilledBook(Jobs jobs, List<BilledDocument> register) {
    this.jobs = jobs;
    this.documents = register.stream().filter(BilledDocument::counts).toList();
    this.unit = jobs.index().book().settings().minorUnit();
    this.perLine = jobs.index().book().settings().taxOn() == TaxOn.LINE;
    this.charges = new JobCharges(jobs.index());
    this.unbilled = new UnbilledVisits(jobs, documents);
  }

  /** All of it, oldest first; free visits and empty documents left out. */
  public static List<Billed> of(Jobs jobs, List<BilledDocument> register) {
    BilledBook book = new BilledBook(jobs, register);
    List<Billed> billed = new ArrayList<>();
    book.documents.stream()
        .filter(document -> !document.lines().isEmpty())
        .forEach(document -> billed.add(book.billed(document)));
    billed.addAll(book.visits());
    return billed.stream().sorted(Billed.OLDEST_FIRST).toList();
  }

  /** The first day of the register's earliest month; empty without a register. */
  static Optional<LocalDate> begins(List<BilledDocument> register) {
    return register.stream()
        .filter(BilledDocument::counts)
        .map(document -> document.month().atDay(1))
        .min(LocalDate::compareTo);
  }

  private Billed billed(BilledDocument document) {
    List<BigDecimal> taxes = taxes(document);
    List<BilledLine> lines = new ArrayList<>();
    for (int index = 0; index < document.lines().size(); index++) {
      lines.add(line(document.lines().get(index), taxes.get(index)));
    }
    Billed.Standing standing =
        document.invoice() ? Billed.Standing.INVOICE : Billed.Standing.CREDIT_NOTE;
    String owner = jobs.index().ownerName(document.owner());
    return new Billed(standing, document.number(), document.date(), owner, lines);
  }

  private BilledLine line(DocumentLine line, BigDecimal tax) {
    Optional<SourceRow> now =
        unbilled.matching().row(line.visit()).map(job -> job.visit().source());
    return new BilledLine(
        now.map(SourceRow::sheet).orElse(line.sheet()),
        now.map(SourceRow::row).orElse(line.row()),
        line.visit().date(),
        part(line.part()),
        line.tax().code(),
        line.tax().ratePercent(),
        line.net(),
        tax);
  }

  private static String part(ChargeLine.Part part) {
    return switch (part) {
      case WHOLE -> "";
      case GOODS -> "goods";
      case REST -> "services";
    };
  }

  /** Each line's part of the document's tax, in the order of its lines. */
  private List<BigDecimal> taxes(BilledDocument document) {
    List<LineTax> taxes = document.lines().stream().map(DocumentLine::tax).toList();
    List<BigDecimal> nets = document.lines().stream().map(DocumentLine::net).toList();
    return spread(document.taxes(), taxes, nets);
  }

  private List<BigDecimal> spread(
      List<TaxTotal> totals, List<LineTax> taxes, List<BigDecimal> nets) {
    List<BigDecimal> parts = new ArrayList<>(nets.stream().map(net -> unit.zero()).toList());
    for (TaxTotal total : totals) {
      List<Integer> places = new ArrayList<>();
      for (int index = 0; index < taxes.size(); index++) {
        if (isOf(taxes.get(index), total)) {
          places.add(index);
        }
      }
      List<BigDecimal> split =
          LargestRemainder.split(
              total.tax(), places.stream().map(index -> nets.get(index).abs()).toList(), unit);
      for (int i = 0; i < split.size(); i++) {
        parts.set(places.get(i), split.get(i));
      }
    }
    return parts;
  }

  private static boolean isOf(LineTax tax, TaxTotal total) {
    return tax.code().equals(total.code())
        && tax.category() == total.category()
        && tax.reason().equals(total.reason())
        && tax.chargedPercent().compareTo(total.ratePercent()) == 0;
  }

  private List<Billed> visits() {
    Optional<LocalDate> begins = begins(documents);
    List<Billed> visits = new ArrayList<>();
    jobs.all().stream()
        .filter(job -> !job.cancelled())
        .forEach(job -> visits.addAll(visit(job, begins)));
    return visits;
  }

  private List<Billed> visit(Job job, Optional<LocalDate> begins) {
    boolean waits = begins.filter(first -> !job.date().isBefore(first)).isPresent();
    Billed.Standing standing =
        waits ? Billed.Standing.ON_NO_INVOICE : Billed.Standing.BEFORE_REGISTER;
    Map<String, List<ChargeLine>> byPayer = new LinkedHashMap<>();
    charges
        .lines(job)
        .forEach(
            line ->
                byPayer
                    .computeIfAbsent(line.payer().name(), unused -> new ArrayList<>())
                    .add(line));
    List<Billed> bills = new ArrayList<>();
    byPayer.keySet().retainAll(unbilled.payers(job));
    byPayer.forEach(
        (payer, lines) ->
            bills.add(new Billed(standing, "", job.date(), payer, lines(job, lines))));
    return bills.stream().filter(bill -> bill.gross().signum() != 0).toList();
  }

  private List<BilledLine> lines(Job job, List<ChargeLine> charged) {
    TaxAmounts amounts =
        TaxAmounts.of(
            charged.stream().map(line -> new TaxAmounts.Item(line.amount(), line.tax())).toList(),
            perLine,
            unit);
    List<LineTax> taxes = charged.stream().map(ChargeLine::tax).toList();
    List<BigDecimal> parts = spread(amounts.totals(), taxes, amounts.nets());
    List<BilledLine> lines = new ArrayList<>();
    for (int index = 0; index < charged.size(); index++) {
      ChargeLine line = charged.get(index);
      lines.add(
          new BilledLine(
              job.visit().source().sheet(),
              job.visit().source().row(),
              job.date(),
              part(line.part()),
              line.tax().code(),
              line.tax().ratePercent(),
              amounts.nets().get(index),
              parts.get(index)));
    }
    return lines;
  }
}
