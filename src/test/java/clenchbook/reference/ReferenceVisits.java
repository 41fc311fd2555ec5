package clenchbook.reference;

import static clenchbook.reference.ReferenceLists.same;

import clenchbook.reference.ReferenceVisit.Payer;
import clenchbook.reference.ReferenceVisit.Shoes;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Reads Visits row by row; rows that the hold-back rule stops are left out. */
final class ReferenceVisits {
  private final PlainBook book;
  private final ReferenceLists lists;
  private final String order;

  ReferenceVisits(PlainBook book, ReferenceLists lists) {
    this.book = book;
    this.lists = lists;
    this.order = book.setting("Date order");
  }

  List<ReferenceVisit> all() {
    List<ReferenceVisit> visits = new ArrayList<>();
    for (PlainRow row : book.sheet("Visits")) {
      ReferenceVisit visit = read(row);
      if (visit != null) {
        visits.add(visit);
      }
    }
    return visits;
  }

  private ReferenceVisit read(PlainRow row) {
    ReferenceVisit visit = new ReferenceVisit();
    visit.row = row;
    visit.date = row.date("Date", order);
    if (visit.date == null || !row.readable("Charge") || !row.readable("Paid")) {
      return null;
    }
    if (row.figure("Charge", BigDecimal.ZERO).signum() < 0) {
      return null;
    }
    visit.horse = row.text("Horse");
    visit.workName = row.text("Work");
    visit.work = lists.work(visit.workName, visit.date);
    boolean priced = visit.work != null && visit.work.figure("Price") != null;
    visit.cancelled = same(row.text("Reason"), "cancelled");
    if (!priced && row.figure("Charge") == null && !visit.cancelled) {
      return null;
    }
    visit.fee = same(fromWork(visit, "Kind"), "fee");
    payers(visit);
    if (visit.payers.isEmpty()) {
      return null;
    }
    shoes(visit);
    extras(visit);
    return visit;
  }

  private static String fromWork(ReferenceVisit visit, String column) {
    return visit.work == null ? "" : visit.work.text(column);
  }

  private static String own(ReferenceVisit visit, String column) {
    String own = visit.row.text(column);
    return own.isEmpty() ? fromWork(visit, column) : own;
  }

  private void payers(ReferenceVisit visit) {
    visit.owner = visit.row.text("Owner");
    visit.place = visit.row.text("Place");
    List<PlainRow> known = new ArrayList<>();
    for (PlainRow horse : book.sheet("Horses")) {
      if (!visit.horse.isEmpty()
          && same(horse.text("Horse"), visit.horse)
          && inForce(horse, visit.date)) {
        known.add(horse);
      }
    }
    List<PlainRow> shares = known.stream().filter(horse -> horse.has("Share %")).toList();
    boolean sharer =
        visit.owner.isEmpty()
            || shares.stream().anyMatch(horse -> same(horse.text("Owner"), visit.owner));
    if (!shares.isEmpty() && sharer) {
      for (PlainRow share : shares) {
        visit.payers.add(new Payer(payer(share), share.figure("Share %")));
      }
      place(visit, shares.get(0));
      return;
    }
    List<PlainRow> owned =
        known.stream()
            .filter(horse -> visit.owner.isEmpty() || same(horse.text("Owner"), visit.owner))
            .toList();
    if (owned.size() == 1 || !visit.owner.isEmpty() && !owned.isEmpty()) {
      visit.owner = owned.get(0).text("Owner");
      visit.payers.add(new Payer(payer(owned.get(0)), BigDecimal.ONE));
      place(visit, owned.get(0));
    } else if (!visit.owner.isEmpty()) {
      visit.payers.add(new Payer(visit.owner, BigDecimal.ONE));
      if (known.size() == 1 || !shares.isEmpty()) {
        place(visit, known.get(0));
      }
    }
  }

  private static String payer(PlainRow horse) {
    return horse.has("Bill to") ? horse.text("Bill to") : horse.text("Owner");
  }

  private static void place(ReferenceVisit visit, PlainRow horse) {
    if (visit.place.isEmpty()) {
      visit.place = horse.text("Place");
    }
  }

  private boolean inForce(PlainRow horse, LocalDate day) {
    boolean begun = horse.text("From").isEmpty() || !horse.date("From", order).isAfter(day);
    boolean ended = !horse.text("Until").isEmpty() && horse.date("Until", order).isBefore(day);
    return begun && !ended;
  }

  private void shoes(ReferenceVisit visit) {
    String count = visit.fee ? "" : own(visit, "Shoes");
    visit.shoes = count.isEmpty() ? 0 : new BigDecimal(count).intValueExact();
    String fresh = visit.row.text("New shoes");
    visit.fresh =
        visit.fee ? 0 : fresh.isEmpty() ? visit.shoes : new BigDecimal(fresh).intValueExact();
    String shaping = own(visit, "Shaping");
    visit.shaping = shaping.isEmpty() ? "none" : shaping.toLowerCase(java.util.Locale.ROOT);
    List<String[]> shoe = listed(own(visit, "Shoe"), visit.shoes);
    List<String[]> size = listed(visit.row.text("Size"), visit.shoes);
    int left = visit.fresh;
    for (int i = 0; i < visit.fresh; i++) {
      String item = at(shoe, i);
      if (!item.isEmpty() && left > 0) {
        visit.parts.add(new Shoes(item, at(size, i), 1));
        left--;
      }
    }
    nails(visit);
  }

  private void nails(ReferenceVisit visit) {
    if (visit.fee) {
      return;
    }
    String nail = own(visit, "Nail");
    visit.nail = nail.isEmpty() ? lists.onlyNail() : nail;
    BigDecimal standard =
        visit.work == null
            ? BigDecimal.ZERO
            : visit.work.figure("Nails per shoe", BigDecimal.ZERO).multiply(Cents.of(visit.shoes));
    visit.nails = visit.row.figure("Nails", standard);
  }

  /** Reads {@code 0: 2; 00: 2}, or one name that stands for all. */
  private static List<String[]> listed(String text, int all) {
    List<String[]> parts = new ArrayList<>();
    for (String part : text.split(";")) {
      int colon = part.lastIndexOf(':');
      String name = colon < 0 ? part : part.substring(0, colon);
      String count = colon < 0 ? String.valueOf(all) : part.substring(colon + 1);
      parts.add(new String[] {name.trim(), count.trim()});
    }
    return parts;
  }

  /** Gives the name that the i-th shoe has. */
  private static String at(List<String[]> parts, int i) {
    int upTo = 0;
    for (String[] part : parts) {
      upTo += Integer.parseInt(part[1]);
      if (i < upTo) {
        return part[0];
      }
    }
    return parts.get(parts.size() - 1)[0];
  }

  private void extras(ReferenceVisit visit) {
    if (visit.row.text("Extras").isEmpty()) {
      return;
    }
    for (String part : visit.row.text("Extras").split(";")) {
      String trimmed = part.trim();
      String count = trimmed.replaceAll("^.*?(\\d+)$", "$1");
      boolean counted = count.matches("\\d+");
      String name =
          counted ? trimmed.substring(0, trimmed.length() - count.length()).trim() : trimmed;
      String item = lists.extra(name);
      if (!item.isEmpty()) {
        visit.extras.merge(item, new BigDecimal(counted ? count : "1"), BigDecimal::add);
      }
    }
  }
}
