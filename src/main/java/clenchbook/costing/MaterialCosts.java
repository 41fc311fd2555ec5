package clenchbook.costing;

import clenchbook.book.Book;
import clenchbook.book.Material;
import clenchbook.book.Purchase;
import clenchbook.jobs.BookIndex;
import clenchbook.jobs.FittedPart;
import clenchbook.jobs.Job;
import clenchbook.jobs.PieceCost;
import clenchbook.jobs.StockKey;
import clenchbook.jobs.UsedItem;
import clenchbook.stock.ledger.ShelfCounts;
import clenchbook.stock.ledger.StockLedger;
import clenchbook.stock.ledger.StockMovement;
import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Prices the materials of every job in one pass over the book by date: purchases of a day first,
 * then its jobs in row order, then its counts.
 */
final class MaterialCosts {
  private final BookIndex index;
  private final boolean netOfTax;
  private final StockLedger ledger = new StockLedger();
  private final Map<Job, Cost> costs = new IdentityHashMap<>();
  private final Map<Material, Optional<BigDecimal>> lists = new IdentityHashMap<>();

  /** Cost of a job's materials, unrounded, and what it rests on. */
  record Cost(BigDecimal exact, Basis basis) {
    static final Cost NOTHING = new Cost(BigDecimal.ZERO, Basis.MEASURED);

    Cost plus(Cost other) {
      return new Cost(exact.add(other.exact), basis.weaker(other.basis));
    }
  }

  private record Event(LocalDate date, int order, Runnable happens) {}

  private MaterialCosts(BookIndex index) {
    this.index = index;
    this.netOfTax = index.book().settings().inputTaxRecovered();
  }

  static Map<Job, Cost> of(BookIndex index, List<Job> jobs) {
    MaterialCosts costs = new MaterialCosts(index);
    costs.events(jobs).forEach(event -> event.happens().run());
    return costs.costs;
  }

  private List<Event> events(List<Job> jobs) {
    List<Event> events = new ArrayList<>();
    Book book = index.book();
    for (Purchase purchase : book.purchases()) {
      if (!purchase.item().isEmpty()) {
        events.add(new Event(purchase.date(), 0, () -> bought(purchase)));
      }
    }
    jobs.forEach(job -> events.add(new Event(job.date(), 1, () -> used(job))));
    for (StockMovement.CountedUp count : ShelfCounts.of(index)) {
      events.add(
          new Event(
              count.date(),
              2,
              () -> ledger.count(count.shelf(), count.pieces(), count.listCost())));
    }
    // The sort is stable: rows of one day and kind keep their order.
    events.sort(Comparator.comparing(Event::date).thenComparingInt(Event::order));
    return events;
  }

  private void bought(Purchase purchase) {
    StockKey shelf = shelf(purchase.item(), purchase.size());
    Optional<Material> row =
        index.materials().find(shelf, purchase.date()).or(() -> index.materials().any(shelf));
    BigDecimal pieces =
        row.flatMap(found -> PieceCost.pieces(purchase, found))
            .orElseGet(() -> purchase.quantity().orElse(BigDecimal.ONE));
    BigDecimal cost = netOfTax ? purchase.netAmount() : purchase.grossAmount();
    if (pieces.signum() > 0 && cost.signum() >= 0) {
      ledger.purchase(shelf, pieces, cost);
    } else if (pieces.signum() < 0) {
      ledger.issue(shelf, pieces.negate(), BigDecimal.ZERO);
    }
  }

  private StockKey shelf(String item, String size) {
    return index
        .materials()
        .findKey(item, size)
        .map(index.materials()::shelf)
        .orElse(new StockKey(item, size));
  }

  private void used(Job job) {
    if (job.cancelled()) {
      return;
    }
    Cost cost = Cost.NOTHING;
    for (FittedPart part : job.parts()) {
      if (part.newCount() > 0) {
        cost = cost.plus(shoes(part, job.date()));
      }
    }
    for (UsedItem nails : job.nails().stream().toList()) {
      cost = cost.plus(pieces(nails));
    }
    if (job.nails().isEmpty() && job.nailCount() > 0) {
      cost = cost.plus(new Cost(BigDecimal.ZERO, Basis.DEFAULT));
    }
    for (UsedItem extra : job.extras()) {
      cost = cost.plus(pieces(extra));
    }
    costs.put(job, cost);
  }

  private Cost shoes(FittedPart part, LocalDate day) {
    BigDecimal count = BigDecimal.valueOf(part.newCount());
    Optional<Material> bar = part.material().flatMap(row -> bar(row, day));
    Optional<BigDecimal> perShoe =
        bar.flatMap(found -> part.material().flatMap(row -> PieceCost.barPerShoe(row, found)));
    if (bar.isPresent() && perShoe.isPresent()) {
      return taken(shelfOf(bar.get()), perShoe.get().multiply(count), list(bar.get()));
    }
    return part.material()
        .map(row -> taken(shelfOf(row), count, list(row)))
        .orElse(new Cost(BigDecimal.ZERO, Basis.DEFAULT));
  }

  private Optional<Material> bar(Material shoe, LocalDate day) {
    return shoe.bar().isEmpty()
        ? Optional.empty()
        : index
            .materials()
            .findKey(shoe.bar(), "")
            .flatMap(key -> index.materials().find(key, day));
  }

  /** A row's list cost is divided out once, not for each job that uses it. */
  private Optional<BigDecimal> list(Material row) {
    return lists.computeIfAbsent(row, PieceCost::list);
  }

  private static StockKey shelfOf(Material row) {
    return new StockKey(row.item(), row.size());
  }

  private Cost pieces(UsedItem use) {
    return use.material()
        .map(row -> taken(shelfOf(row), BigDecimal.valueOf(use.count()), list(row)))
        .orElse(new Cost(BigDecimal.ZERO, Basis.DEFAULT));
  }

  private Cost taken(StockKey shelf, BigDecimal quantity, Optional<BigDecimal> list) {
    StockLedger.Issue issue = ledger.issue(shelf, quantity, list.orElse(BigDecimal.ZERO));
    boolean bought = ledger.bought(shelf);
    Basis basis = bought ? Basis.MEASURED : list.isPresent() ? Basis.STANDARD : Basis.DEFAULT;
    return new Cost(issue.unitCost().multiply(quantity), basis);
  }
}
