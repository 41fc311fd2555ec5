package clenchbook.jobs.charge;

import clenchbook.book.Owner;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.book.TaxRate;
import clenchbook.book.WorkItem;
import clenchbook.jobs.BookIndex;
import clenchbook.jobs.Job;
import clenchbook.jobs.Payer;
import clenchbook.jobs.UsedItem;
import clenchbook.jobs.charge.ChargeLine.Kind;
import clenchbook.jobs.charge.ChargeLine.Part;
import clenchbook.values.money.LargestRemainder;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Charges a job: the typed Charge, which is final and includes the extras, or the list price and
 * the priced extras. Shares come first, then each payer's discount (on list prices and extras,
 * never on a typed Charge), rounded, then goods and rest.
 */
public final class JobCharges {
  private final BookIndex index;
  private final Settings settings;
  private final MinorUnit unit;
  private final LineTax uncoded;

  /**
   * Makes the rules of one book.
   *
   * @param index the book by name
   */
  public JobCharges(BookIndex index) {
    this.index = index;
    this.settings = index.book().settings();
    this.unit = settings.minorUnit();
    this.uncoded = settings.taxRegistered() ? LineTax.UNCODED : LineTax.NONE;
  }

  /**
   * The lines of a job: the Work first, then its priced extras; within each by payer, goods before
   * rest.
   *
   * @param job the job
   * @return its lines; empty for a cancelled one
   */
  public List<ChargeLine> lines(Job job) {
    if (job.cancelled()) {
      return List.of();
    }
    List<ChargeLine> lines = new ArrayList<>();
    boolean typed = job.visit().charge().isPresent();
    BigDecimal price = job.visit().charge().or(job::listPrice).orElse(BigDecimal.ZERO);
    addWork(lines, job, price, typed);
    if (!typed) {
      job.extras().forEach(extra -> addExtra(lines, job, extra));
    }
    return List.copyOf(lines);
  }

  /**
   * What a job brought without tax: all its lines over all payers, rounded once.
   *
   * @param lines the job's lines
   * @return the net, at the minor unit
   */
  public BigDecimal net(List<ChargeLine> lines) {
    return unit.round(
        lines.stream().map(ChargeLine::exactNet).reduce(BigDecimal.ZERO, BigDecimal::add));
  }

  private void addWork(List<ChargeLine> lines, Job job, BigDecimal price, boolean typed) {
    Optional<BigDecimal> goods = job.work().flatMap(WorkItem::taxedPart);
    List<BigDecimal> shares = shares(price, job);
    for (int index = 0; index < shares.size(); index++) {
      Payer payer = job.payers().get(index);
      BigDecimal discount = typed ? BigDecimal.ZERO : discount(payer);
      BigDecimal amount = discounted(shares.get(index), discount);
      LineTax tax = tax(job, payer);
      Line line = new Line(job, payer, Kind.WORK, "", 1, shares.get(index), discount);
      if (goods.isPresent() && settings.chargesTax()) {
        addParts(lines, line, amount, goods.get(), tax);
      } else {
        lines.add(line.of(Part.WHOLE, amount, tax));
      }
    }
  }

  private void addParts(
      List<ChargeLine> lines, Line line, BigDecimal amount, BigDecimal part, LineTax tax) {
    BigDecimal goods = unit.round(amount.multiply(part));
    BigDecimal rest = amount.subtract(goods);
    if (part.signum() > 0) {
      lines.add(line.of(Part.GOODS, goods, tax));
    }
    if (part.compareTo(BigDecimal.ONE) < 0) {
      lines.add(line.of(Part.REST, rest, uncoded));
    }
  }

  private void addExtra(List<ChargeLine> lines, Job job, UsedItem extra) {
    Optional<BigDecimal> price = extra.material().flatMap(row -> row.price());
    if (price.isEmpty()) {
      return;
    }
    BigDecimal whole = price.get().multiply(BigDecimal.valueOf(extra.count()));
    List<BigDecimal> shares = shares(whole, job);
    for (int index = 0; index < shares.size(); index++) {
      Payer payer = job.payers().get(index);
      BigDecimal discount = discount(payer);
      Line line =
          new Line(
              job, payer, Kind.EXTRA, extra.item(), extra.count(), shares.get(index), discount);
      lines.add(line.of(Part.WHOLE, discounted(shares.get(index), discount), tax(job, payer)));
    }
  }

  private List<BigDecimal> shares(BigDecimal whole, Job job) {
    return LargestRemainder.split(
        whole, job.payers().stream().map(Payer::sharePercent).toList(), unit);
  }

  private BigDecimal discount(Payer payer) {
    return index.owner(payer.name()).flatMap(Owner::discountPercent).orElse(BigDecimal.ZERO);
  }

  private BigDecimal discounted(BigDecimal amount, BigDecimal percent) {
    return unit.round(amount.multiply(BigDecimal.ONE.subtract(percent.movePointLeft(2))));
  }

  private LineTax tax(Job job, Payer payer) {
    String code = job.work().map(WorkItem::taxCode).orElse("");
    Optional<TaxRate> rate =
        settings.chargesTax() ? index.tax().find(code, job.date()) : Optional.empty();
    return rate.map(found -> tax(found, index.owner(payer.name()))).orElse(uncoded);
  }

  private LineTax tax(TaxRate rate, Optional<Owner> owner) {
    boolean exempt = owner.map(Owner::taxExempt).orElse(false);
    LineTax tax =
        new LineTax(
            rate.code(),
            rate.name(),
            rate.kind().charged() ? rate.ratePercent() : BigDecimal.ZERO,
            rate.kind(),
            rate.reason(),
            exempt,
            settings.yes(Setting.PRICES_INCLUDE_TAX));
    return tax.because(exempt ? owner.map(Owner::exemptReason) : Optional.empty());
  }

  /** What the parts of one payer's line have in common. */
  private record Line(
      Job job,
      Payer payer,
      Kind kind,
      String item,
      int count,
      BigDecimal listAmount,
      BigDecimal discount) {
    ChargeLine of(Part part, BigDecimal amount, LineTax tax) {
      return new ChargeLine(job, payer, kind, part, item, count, listAmount, discount, amount, tax);
    }
  }
}
