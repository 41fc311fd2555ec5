package clenchbook.billing.documents;

import clenchbook.book.Names;
import clenchbook.book.TaxOn;
import clenchbook.jobs.BookIndex;
import clenchbook.jobs.FittedPart;
import clenchbook.jobs.Job;
import clenchbook.jobs.UsedItem;
import clenchbook.jobs.charge.ChargeLine;
import clenchbook.jobs.charge.JobCharges;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import java.util.function.Function;

/** Makes document lines of jobs, by payer, and works out their tax. */
public final class LineMaker {
  private final JobCharges charges;
  private final boolean perLine;
  private final MinorUnit unit;
  private final Function<Job, VisitKey> keys;

  /** The rules of one book; {@code keys} gives the key under which a row stands on documents. */
  public LineMaker(BookIndex index, Function<Job, VisitKey> keys) {
    this.keys = keys;
    charges = new JobCharges(index);
    perLine = index.book().settings().taxOn() == TaxOn.LINE;
    unit = index.book().settings().minorUnit();
  }

  public MinorUnit unit() {
    return unit;
  }

  /** A job's lines by payer, in the order of its payers; nets not yet worked out. */
  public Map<String, List<DocumentLine>> byPayer(Job job) {
    Map<String, List<DocumentLine>> lines = new LinkedHashMap<>();
    job.payers().forEach(payer -> lines.put(payer.name(), new ArrayList<>()));
    for (ChargeLine line : charges.lines(job)) {
      lines.computeIfAbsent(line.payer().name(), unused -> new ArrayList<>()).add(line(line));
    }
    return lines;
  }

  /** What all payers together are charged for a job. */
  public BigDecimal charged(Job job) {
    return charges.lines(job).stream().map(ChargeLine::amount).reduce(unit.zero(), BigDecimal::add);
  }

  /** What in the row itself decides the charge: the typed Charge, else the extras. */
  public static String own(Job job) {
    StringJoiner own = new StringJoiner(";");
    own.add(
        job.visit()
            .charge()
            .map(charge -> "charge=" + charge.stripTrailingZeros().toPlainString())
            .orElse("list"));
    if (job.visit().charge().isEmpty()) {
      for (UsedItem extra : job.extras()) {
        own.add(Names.key(extra.item()) + " " + Names.key(extra.size()) + "=" + extra.count());
      }
    }
    return own.toString();
  }

  private DocumentLine line(ChargeLine line) {
    Job job = line.job();
    return new DocumentLine(
        keys.apply(job),
        "",
        own(job),
        job.visit().source().sheet(),
        job.visit().source().row(),
        job.horse().name(),
        job.workName(),
        line.kind(),
        line.part(),
        line.item(),
        line.count(),
        shoeing(job),
        job.visit().reason().word(),
        line.payer().sharePercent(),
        line.discountPercent(),
        line.amount(),
        line.amount(),
        line.tax());
  }

  private static String shoeing(Job job) {
    StringJoiner words = new StringJoiner("; ");
    for (FittedPart part : job.parts()) {
      StringJoiner piece = new StringJoiner(" ");
      piece.add(part.count() + " ×");
      if (!part.item().isEmpty()) {
        piece.add(part.item());
      }
      if (!part.size().isEmpty()) {
        piece.add(part.size());
      }
      words.add(piece.toString());
    }
    return words.toString();
  }

  /**
   * The lines with their nets and taxes filled in, and the totals by tax code, each rounded as the
   * settings say.
   */
  public Priced price(List<DocumentLine> lines) {
    TaxAmounts amounts =
        TaxAmounts.of(
            lines.stream().map(line -> new TaxAmounts.Item(line.amount(), line.tax())).toList(),
            perLine,
            unit);
    List<DocumentLine> priced = new ArrayList<>();
    for (int index = 0; index < lines.size(); index++) {
      priced.add(lines.get(index).withNet(amounts.nets().get(index)));
    }
    BigDecimal net = unit.zero();
    BigDecimal tax = unit.zero();
    for (TaxTotal total : amounts.totals()) {
      net = net.add(total.net());
      tax = tax.add(total.tax());
    }
    return new Priced(priced, amounts.totals(), net, tax);
  }

  /** Lines with their nets, and the document's sums. */
  public record Priced(
      List<DocumentLine> lines, List<TaxTotal> taxes, BigDecimal net, BigDecimal tax) {}
}
