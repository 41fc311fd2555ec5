package clenchbook.billing.corrections;

import clenchbook.billing.corrections.BilledVisits.Bearing;
import clenchbook.billing.corrections.Difference.Changed;
import clenchbook.billing.corrections.Difference.What;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.billing.documents.LineMaker;
import clenchbook.billing.documents.VisitKey;
import clenchbook.book.Names;
import clenchbook.jobs.Job;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * How a visit that is billed differs from its row.
 *
 * @param visit the visit as billed
 * @param bearings the invoices that bill it, one for each payer
 * @param row its row now; empty when it has none
 * @param own what changed in the row itself: it is taken back and billed anew
 * @param others what else changed: it touches drafts only
 */
record VisitChange(
    VisitKey visit,
    List<Bearing> bearings,
    Optional<Job> row,
    List<Changed> own,
    List<Changed> others) {
  private static final BigDecimal ALL = new BigDecimal("99.99");

  VisitChange {
    bearings = List.copyOf(bearings);
    own = List.copyOf(own);
    others = List.copyOf(others);
  }

  /** The rules by which visits are compared. */
  record Rules(LineMaker maker, UnaryOperator<String> ownerName) {
    VisitChange of(VisitKey visit, List<Bearing> bearings, Optional<Job> row, boolean cancelled) {
      if (row.isEmpty()) {
        What what = cancelled ? What.CANCELLED : What.GONE;
        return new VisitChange(visit, bearings, row, List.of(new Changed(what, "", "")), List.of());
      }
      List<Changed> own = new ArrayList<>(moved(visit, bearings, row.get()));
      List<Changed> others = new ArrayList<>();
      BigDecimal billed = amount(bearings);
      BigDecimal now = maker.charged(row.get());
      boolean whole = share(bearings).compareTo(ALL) >= 0;
      boolean ownCharge = !own(bearings).equals(LineMaker.own(row.get()));
      boolean changed = whole ? billed.compareTo(now) != 0 : ownCharge;
      if (changed && ownCharge) {
        own.add(new Changed(What.CHARGE, billed.toPlainString(), now.toPlainString()));
      } else if (changed && whole) {
        others.add(new Changed(What.PRICE, billed.toPlainString(), now.toPlainString()));
      }
      if (whole) {
        others.addAll(payers(bearings, row.get()));
      }
      return new VisitChange(visit, bearings, row, own, others);
    }

    private static List<Changed> moved(VisitKey visit, List<Bearing> bearings, Job row) {
      DocumentLine line = bearings.get(0).lines().get(0);
      List<Changed> moved = new ArrayList<>();
      if (!visit.date().equals(row.date())) {
        moved.add(new Changed(What.DATE, visit.date().toString(), row.date().toString()));
      }
      if (!visit.horse().equals(Names.key(row.visit().horse()))) {
        moved.add(new Changed(What.HORSE, line.horse(), row.horse().name()));
      }
      if (!visit.work().equals(Names.key(row.visit().work()))) {
        moved.add(new Changed(What.WORK, line.work(), row.workName()));
      }
      return moved;
    }

    private List<Changed> payers(List<Bearing> bearings, Job row) {
      Map<String, BigDecimal> then = new TreeMap<>(Names.ORDER);
      bearings.forEach(
          bearing ->
              then.merge(
                  ownerName.apply(bearing.invoice().owner()),
                  bearing.lines().get(0).sharePercent(),
                  BigDecimal::add));
      Map<String, BigDecimal> now = new TreeMap<>(Names.ORDER);
      row.payers().forEach(payer -> now.merge(payer.name(), payer.sharePercent(), BigDecimal::add));
      if (!then.keySet().equals(now.keySet())) {
        return List.of(
            new Changed(
                What.OWNER, String.join(", ", then.keySet()), String.join(", ", now.keySet())));
      }
      String before = shares(then);
      String after = shares(now);
      return before.equals(after) ? List.of() : List.of(new Changed(What.SHARE, before, after));
    }

    private static String shares(Map<String, BigDecimal> shares) {
      return shares.values().stream()
          .map(share -> share.setScale(2, RoundingMode.HALF_UP).stripTrailingZeros())
          .map(BigDecimal::toPlainString)
          .collect(Collectors.joining(", "));
    }
  }

  private static String own(List<Bearing> bearings) {
    return bearings.get(0).lines().get(0).own();
  }

  /** What documents charge for a visit. */
  static BigDecimal amount(List<Bearing> bearings) {
    return bearings.stream()
        .flatMap(bearing -> bearing.lines().stream())
        .map(DocumentLine::amount)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** How much of a visit is billed, in per cent. */
  static BigDecimal share(List<Bearing> bearings) {
    return bearings.stream()
        .map(bearing -> bearing.lines().get(0).sharePercent())
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** Whether a share in per cent is no more than the whole, rounding of thirds allowed. */
  static boolean withinWhole(BigDecimal share) {
    return share.compareTo(new BigDecimal("100.01")) <= 0;
  }
}
