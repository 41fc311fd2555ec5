package clenchbook.reference;

import static clenchbook.reference.ReferenceLists.same;

import clenchbook.reference.ReferenceVisit.Shoes;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;

/**
 * Walks through the days: purchases, visits, counts; keeps the moving average; prices materials.
 */
final class ReferenceStock {
  private static final class Shelf {
    BigDecimal quantity = BigDecimal.ZERO;
    BigDecimal average = BigDecimal.ZERO;
    boolean bought;
  }

  private final PlainBook book;
  private final ReferenceLists lists;
  private final String order;
  private final Map<String, Shelf> shelves = new HashMap<>();

  ReferenceStock(PlainBook book, ReferenceLists lists) {
    this.book = book;
    this.lists = lists;
    this.order = book.setting("Date order");
  }

  static boolean recovered(PlainBook book) {
    String set = book.setting("Input tax recovered");
    return set.isEmpty()
        ? !book.setting("Tax number").isEmpty() && !same(book.setting("Tax regime"), "us")
        : same(set, "yes");
  }

  static BigDecimal cost(PlainBook book, PlainRow purchase) {
    BigDecimal net = purchase.figure("Net", BigDecimal.ZERO);
    BigDecimal tax = purchase.figure("Tax", BigDecimal.ZERO);
    return recovered(book) ? net : purchase.figure("Gross", net.add(tax));
  }

  void walk(List<ReferenceVisit> visits) {
    TreeSet<LocalDate> days = new TreeSet<>();
    visits.forEach(visit -> days.add(visit.date));
    book.sheet("Purchases").forEach(row -> add(days, row));
    book.sheet("Counts").forEach(row -> add(days, row));
    for (LocalDate day : days) {
      book.sheet("Purchases").stream()
          .filter(row -> day.equals(row.date("Date", order)))
          .forEach(row -> buy(row, day));
      visits.stream()
          .filter(visit -> visit.date.equals(day) && !visit.cancelled)
          .forEach(this::price);
      Map<Shelf, Map<String, BigDecimal>> counted = new LinkedHashMap<>();
      book.sheet("Counts").stream()
          .filter(row -> day.equals(row.date("Date", order)))
          .forEach(row -> count(row, day, counted));
      // Sizes that share a shelf are counted apart and add up to it.
      counted.forEach((shelf, sizes) -> shelf.quantity = Cents.sum(List.copyOf(sizes.values())));
    }
  }

  private void add(TreeSet<LocalDate> days, PlainRow row) {
    LocalDate day = row.date("Date", order);
    if (day != null) {
      days.add(day);
    }
  }

  private Shelf shelf(String item, String size) {
    String key =
        item.toLowerCase(Locale.ROOT) + "|" + lists.shelf(item, size).toLowerCase(Locale.ROOT);
    return shelves.computeIfAbsent(key, k -> new Shelf());
  }

  private void buy(PlainRow row, LocalDate day) {
    PlainRow material =
        row.has("Item") ? lists.material(row.text("Item"), row.text("Size"), day) : null;
    if (material == null) {
      return;
    }
    Shelf shelf = shelf(row.text("Item"), row.text("Size"));
    BigDecimal pieces =
        row.figure("Quantity", BigDecimal.ZERO).multiply(lists.pieces(row.text("Unit"), material));
    if (pieces.signum() <= 0) {
      return;
    }
    BigDecimal worth = shelf.quantity.multiply(shelf.average).add(cost(book, row));
    shelf.quantity = shelf.quantity.add(pieces);
    shelf.average = Cents.over(worth, shelf.quantity);
    shelf.bought = true;
  }

  private void count(PlainRow row, LocalDate day, Map<Shelf, Map<String, BigDecimal>> counted) {
    Shelf shelf = shelf(row.text("Item"), row.text("Size"));
    PlainRow material = lists.material(row.text("Item"), row.text("Size"), day);
    if (!shelf.bought && material != null) {
      shelf.average = lists.listCost(material);
    }
    counted
        .computeIfAbsent(shelf, unused -> new LinkedHashMap<>())
        .put(row.text("Size"), row.figure("Quantity", BigDecimal.ZERO));
  }

  private BigDecimal unitCost(String item, String size, LocalDate day) {
    Shelf shelf = shelf(item, size);
    PlainRow material = lists.material(item, size, day);
    if (shelf.bought) {
      return shelf.average;
    }
    return material == null ? BigDecimal.ZERO : lists.listCost(material);
  }

  private void use(String item, String size, BigDecimal quantity) {
    Shelf shelf = shelf(item, size);
    shelf.quantity = shelf.quantity.subtract(quantity).max(BigDecimal.ZERO);
  }

  private void price(ReferenceVisit visit) {
    BigDecimal sum = BigDecimal.ZERO;
    List<Runnable> uses = new ArrayList<>();
    for (Shoes part : visit.parts) {
      PlainRow material = lists.material(part.item(), part.size(), visit.date);
      BigDecimal count = Cents.of(part.count());
      if (material != null && material.has("Bar")) {
        PlainRow bar = lists.material(material.text("Bar"), "", visit.date);
        BigDecimal taken = lists.barTaken(material, bar).multiply(count);
        sum = sum.add(taken.multiply(unitCost(material.text("Bar"), "", visit.date)));
        uses.add(() -> use(material.text("Bar"), "", taken));
        visit.making =
            visit.making.add(count.multiply(material.figure("Making min", BigDecimal.ZERO)));
        visit.makingForge =
            visit.makingForge.add(
                count.multiply(material.figure("Making forge min", BigDecimal.ZERO)));
      } else {
        sum = sum.add(count.multiply(unitCost(part.item(), part.size(), visit.date)));
        uses.add(() -> use(part.item(), part.size(), count));
      }
    }
    sum = sum.add(visit.nails.multiply(unitCost(visit.nail, "", visit.date)));
    uses.add(() -> use(visit.nail, "", visit.nails));
    for (Map.Entry<String, BigDecimal> extra : visit.extras.entrySet()) {
      sum = sum.add(extra.getValue().multiply(unitCost(extra.getKey(), "", visit.date)));
      uses.add(() -> use(extra.getKey(), "", extra.getValue()));
    }
    uses.forEach(Runnable::run);
    visit.materials = Cents.round(sum);
  }
}
