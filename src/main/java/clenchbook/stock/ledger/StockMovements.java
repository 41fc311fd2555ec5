package clenchbook.stock.ledger;

import clenchbook.book.Material;
import clenchbook.book.Purchase;
import clenchbook.jobs.BookIndex;
import clenchbook.jobs.FittedPart;
import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.MaterialList;
import clenchbook.jobs.PieceCost;
import clenchbook.jobs.StockKey;
import clenchbook.jobs.UsedItem;
import clenchbook.stock.ledger.StockMovement.Bought;
import clenchbook.stock.ledger.StockMovement.Used;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Every movement of stock that the book tells of, in the order the ledgers want: by day, and within
 * a day purchases, uses, counts, each in sheet and row order.
 *
 * <p>A handmade shoe moves two shelves: its own, by one piece, and its Bar's, by the Length and Cut
 * it takes. Shoes that were reset move nothing. A blank Quantity of a purchase is one; one whose
 * Unit can't be turned into pieces counts as written. Gas burned is a use only where the book keeps
 * its one gas item as stock, that is, ever bought or counted it by the kilogram.
 */
public final class StockMovements {

  private final BookIndex index;
  private final MaterialList materials;
  private final LocalDate last;
  private final List<StockMovement> movements = new ArrayList<>();
  private final Map<Material, BigDecimal> lists = new IdentityHashMap<>();

  private StockMovements(BookIndex index, LocalDate last) {
    this.index = index;
    this.materials = index.materials();
    this.last = last;
  }

  /** Gives the movements up to a day, inclusive, in order. */
  public static List<StockMovement> upTo(Jobs jobs, LocalDate last) {
    StockMovements all = new StockMovements(jobs.index(), last);
    all.index.book().purchases().stream()
        .sorted(Comparator.comparing(Purchase::date).thenComparing(Purchase::source))
        .forEach(all::bought);
    jobs.all().stream().sorted(Job.ORDER).forEach(all::used);
    List<Used> burned = GasBurn.of(jobs, LocalDate.MIN, last).uses();
    ShelfCounts.of(all.index).stream()
        .filter(count -> !count.date().isAfter(last))
        .forEach(all.movements::add);
    if (burned.stream().limit(1).anyMatch(use -> all.keeps(use.shelf()))) { // all of one shelf
      all.movements.addAll(burned);
    }
    all.movements.sort(StockMovement.ORDER); // stable: rows of a kind stay in order
    return List.copyOf(all.movements);
  }

  private boolean keeps(StockKey shelf) {
    return movements.stream()
        .anyMatch(movement -> !(movement instanceof Used) && movement.shelf().equals(shelf));
  }

  private void bought(Purchase purchase) {
    if (purchase.item().isEmpty() || purchase.date().isAfter(last)) {
      return;
    }
    StockKey key = key(purchase.item(), purchase.size());
    Optional<Material> row = row(key, purchase.date());
    BigDecimal pieces =
        row.flatMap(found -> PieceCost.pieces(purchase, found))
            .orElseGet(() -> purchase.quantity().orElse(BigDecimal.ONE));
    boolean net = index.book().settings().inputTaxRecovered();
    BigDecimal cost = net ? purchase.netAmount() : purchase.grossAmount();
    boolean stock = pieces.signum() < 0 || (pieces.signum() > 0 && cost.signum() >= 0);
    if (stock) {
      StockKey shelf = shelf(key);
      movements.add(new Bought(purchase.date(), shelf, pieces, cost, purchase.supplier()));
    }
  }

  private void used(Job job) {
    if (job.cancelled() || job.date().isAfter(last)) {
      return;
    }
    job.parts().forEach(part -> shoes(job.date(), part));
    job.nails().ifPresent(nails -> item(job.date(), nails));
    job.extras().forEach(extra -> item(job.date(), extra));
  }

  private void shoes(LocalDate day, FittedPart part) {
    if (part.newCount() == 0 || part.item().isEmpty()) {
      return;
    }
    BigDecimal count = BigDecimal.valueOf(part.newCount());
    StockKey shelf = shelf(new StockKey(part.item(), part.size()));
    Optional<Material> bar = part.material().flatMap(shoe -> bar(materials, shoe, day));
    movements.add(
        new Used(day, shelf, count, bar.isPresent() ? BigDecimal.ZERO : list(part.material())));
    bar.flatMap(row -> part.material().flatMap(shoe -> PieceCost.barPerShoe(shoe, row)))
        .ifPresent(
            perShoe ->
                movements.add(
                    new Used(day, shelf(bar.orElseThrow()), perShoe.multiply(count), list(bar))));
  }

  private void item(LocalDate day, UsedItem used) {
    StockKey shelf = shelf(new StockKey(used.item(), used.size()));
    BigDecimal count = BigDecimal.valueOf(used.count());
    movements.add(new Used(day, shelf, count, list(used.material())));
  }

  /** The bar a handmade shoe is cut from, as in force that day. */
  public static Optional<Material> bar(MaterialList materials, Material shoe, LocalDate day) {
    return Optional.of(shoe.bar())
        .filter(name -> !name.isEmpty())
        .flatMap(name -> materials.findKey(name, ""))
        .flatMap(key -> materials.find(key, day));
  }

  private static StockKey shelf(Material row) {
    return new StockKey(row.item(), row.size());
  }

  /** An item that Materials does not know keeps the size it was written with. */
  private StockKey shelf(StockKey key) {
    return materials.any(materials.shelf(key)).isPresent() ? materials.shelf(key) : key;
  }

  private StockKey key(String item, String size) {
    return materials.findKey(item, size).orElse(new StockKey(item, size));
  }

  private Optional<Material> row(StockKey key, LocalDate day) {
    return materials.find(key, day).or(() -> materials.any(materials.shelf(key)));
  }

  /** A row's list cost is divided out once, not for each job that uses it. */
  private BigDecimal list(Optional<Material> row) {
    return row.map(
            known ->
                lists.computeIfAbsent(known, each -> PieceCost.list(each).orElse(BigDecimal.ZERO)))
        .orElse(BigDecimal.ZERO);
  }
}
