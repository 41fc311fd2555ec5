package clenchbook.jobs;

import clenchbook.book.HorseRow;
import clenchbook.book.Material;
import clenchbook.book.Names;
import clenchbook.book.Owner;
import clenchbook.book.Payment;
import clenchbook.book.Purchase;
import clenchbook.book.SheetKind;
import clenchbook.book.SourceRow;
import clenchbook.book.WorkItem;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.texts.BookName;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Rules between the other sheets: prices from one date, shares, names that no sheet knows. */
final class SheetRules {
  private static final BigDecimal TEN = BigDecimal.TEN;
  private final BookIndex index;
  private final List<Problem> problems = new ArrayList<>();

  private SheetRules(BookIndex index) {
    this.index = index;
  }

  static List<Problem> problems(BookIndex index) {
    SheetRules rules = new SheetRules(index);
    rules.pricesFromOneDate();
    rules.namesTwice();
    rules.formerNames();
    rules.shares();
    rules.workRows();
    rules.bars();
    rules.horses();
    rules.payments();
    rules.purchases();
    rules.counts();
    return rules.problems;
  }

  private void pricesFromOneDate() {
    index.prices().overriding().forEach(row -> twice(row.source(), "Work", row.name()));
    index.materials().overriding().forEach(row -> twice(row.source(), "Item", row.item()));
    index.tax().overriding().forEach(row -> twice(row.source(), "Code", row.code()));
  }

  private void twice(SourceRow row, String heading, String name) {
    warn(
        ProblemKind.PRICE_TWICE,
        row,
        heading,
        Message.of("jobs.name.lowerRowCounts", name),
        Message.of("jobs.name.oneRowADate"),
        name);
  }

  private void namesTwice() {
    Set<String> owners = new TreeSet<>();
    index.book().owners().stream()
        .filter(owner -> !owners.add(Names.key(owner.name())))
        .forEach(owner -> nameTwice(owner.source(), "Owner", owner.name()));
    Set<String> places = new TreeSet<>();
    index.book().places().stream()
        .filter(place -> !places.add(Names.key(place.name())))
        .forEach(place -> nameTwice(place.source(), "Place", place.name()));
  }

  private void nameTwice(SourceRow row, String heading, String name) {
    warn(
        ProblemKind.NAME_TWICE,
        row,
        heading,
        Message.of("jobs.name.upperRowCounts", name),
        Message.of("jobs.name.oneRowAName"),
        name);
  }

  private void formerNames() {
    for (Owner owner : index.book().owners()) {
      for (String name : owner.formerly()) {
        Optional<Owner> other = Optional.ofNullable(index.owners().get(Names.key(name)));
        Optional<Owner> first = Optional.ofNullable(index.former().get(Names.key(name)));
        if (other.isPresent() && !Names.same(name, owner.name())) {
          notFormer(owner, name, Message.of("jobs.name.formerHasOwnRow", name));
        } else if (first.filter(each -> !each.equals(owner)).isPresent()) {
          notFormer(
              owner, name, Message.of("jobs.name.formerIsAnothers", name, first.get().name()));
        }
      }
    }
  }

  private void notFormer(Owner owner, String name, Message problem) {
    warn(
        ProblemKind.NAME_TWICE,
        owner.source(),
        "Formerly",
        problem,
        Message.of("jobs.name.formerOfNobodyElse"),
        name);
  }

  private void shares() {
    for (Horse horse : index.horses().all()) {
      Set<LocalDate> starts = new TreeSet<>();
      horse.rows().forEach(row -> starts.add(Horse.startOf(row)));
      starts.stream()
          .map(horse::on)
          .filter(SheetRules::offHundred)
          .findFirst()
          .ifPresent(this::sharesOff);
    }
  }

  private static boolean offHundred(List<HorseRow> rows) {
    boolean shared = rows.stream().anyMatch(row -> row.sharePercent().isPresent());
    return shared && sum(rows).compareTo(Payer.WHOLE) != 0;
  }

  private static BigDecimal sum(List<HorseRow> rows) {
    return rows.stream()
        .map(row -> row.sharePercent().orElse(BigDecimal.ZERO))
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private void sharesOff(List<HorseRow> rows) {
    HorseRow last = rows.get(rows.size() - 1);
    warn(
        ProblemKind.SHARES_OFF_100,
        last.source(),
        "Share %",
        Message.of("jobs.sheet.sharesOff", last.horse(), sum(rows).stripTrailingZeros()),
        Message.of("jobs.sheet.sharesOfHundred"),
        last.sharePercent().map(BigDecimal::toPlainString).orElse(""));
  }

  private void workRows() {
    for (WorkItem row : index.book().work()) {
      boolean unknown = !row.taxCode().isEmpty() && !index.tax().knows(row.taxCode());
      if (unknown && present(SheetKind.TAX)) {
        warn(
            ProblemKind.TAX_CODE_UNKNOWN,
            row.source(),
            "Tax",
            Message.of("jobs.name.taxCodeNotIn", row.taxCode()),
            VisitNames.offer(
                Message.of("jobs.name.codeFromThere"), row.taxCode(), index.tax().codes()),
            row.taxCode());
      }
      row.shoe().forEach(part -> material(row.source(), "Shoe", part.name()));
      if (!row.nail().isEmpty()) {
        material(row.source(), "Nail", row.nail());
      }
    }
  }

  private void bars() {
    for (Material row : index.book().materials()) {
      if (!row.bar().isEmpty()) {
        material(row.source(), "Bar", row.bar());
      }
    }
  }

  private void horses() {
    for (HorseRow row : index.book().horses()) {
      owner(row.source(), "Owner", row.owner());
      owner(row.source(), "Bill to", row.billTo());
      boolean place = row.place().isEmpty() || index.place(row.place()).isPresent();
      if (!place && present(SheetKind.PLACES)) {
        unknown(
            ProblemKind.PLACE_UNKNOWN,
            row.source(),
            "Place",
            row.place(),
            "Places",
            index.placeSheetNames());
      }
    }
  }

  private void owner(SourceRow row, String heading, String name) {
    boolean known = name.isEmpty() || index.owner(name).isPresent();
    if (!known && present(SheetKind.OWNERS)) {
      unknown(ProblemKind.OWNER_UNKNOWN, row, heading, name, "Owners", index.ownerSheetNames());
    }
  }

  private void payments() {
    Set<String> billed = new TreeSet<>();
    index.book().visits().forEach(visit -> billed.add(Names.key(visit.owner())));
    for (HorseRow row : index.book().horses()) {
      billed.add(Names.key(row.owner()));
      billed.add(Names.key(row.billTo()));
    }
    for (Payment payment : index.book().payments()) {
      boolean known =
          present(SheetKind.OWNERS)
              ? index.owner(payment.owner()).isPresent()
              : billed.contains(Names.key(payment.owner()));
      if (!known) {
        warn(
            ProblemKind.OWNER_UNKNOWN,
            payment.source(),
            "Owner",
            payment.owner().isEmpty()
                ? Message.of("jobs.sheet.paymentWithoutOwner")
                : Message.of("jobs.sheet.paymentOfUnknown", payment.owner()),
            VisitNames.offer(
                Message.of("jobs.sheet.anOwner"), payment.owner(), index.ownerSheetNames()),
            payment.owner());
      }
    }
  }

  private void purchases() {
    for (Purchase purchase : index.book().purchases()) {
      if (!purchase.item().isEmpty()) {
        material(purchase.source(), "Item", purchase.item());
        oddPrice(purchase);
      }
    }
  }

  private void oddPrice(Purchase purchase) {
    Optional<StockKey> key = index.materials().findKey(purchase.item(), purchase.size());
    Optional<Material> row = key.flatMap(found -> index.materials().find(found, purchase.date()));
    Optional<BigDecimal> list = row.flatMap(PieceCost::list);
    Optional<BigDecimal> pieces = row.flatMap(found -> PieceCost.pieces(purchase, found));
    if (list.isEmpty() || pieces.isEmpty() || pieces.get().signum() <= 0) {
      return;
    }
    BigDecimal each = purchase.netAmount().divide(pieces.get(), MathContext.DECIMAL64);
    if (list.get().signum() > 0 && each.compareTo(list.get().multiply(TEN)) >= 0) {
      warn(
          ProblemKind.PURCHASE_PRICE_ODD,
          purchase.source(),
          "Quantity",
          Message.of("jobs.sheet.oddPrice", each.setScale(2, RoundingMode.HALF_UP)),
          Message.of("jobs.sheet.quantityInUnit"),
          purchase.quantity().map(BigDecimal::toPlainString).orElse(""));
    }
  }

  private void counts() {
    index.book().counts().forEach(count -> material(count.source(), "Item", count.item()));
  }

  private void material(SourceRow row, String heading, String name) {
    boolean known =
        index.materials().findKey(name, "").isPresent()
            || (heading.equals("Shoe") && ShoeParts.kindWord(name).isPresent());
    if (!known && present(SheetKind.MATERIALS)) {
      unknown(
          ProblemKind.MATERIAL_UNKNOWN, row, heading, name, "Materials", index.materials().names());
    }
  }

  private void unknown(
      ProblemKind kind,
      SourceRow row,
      String heading,
      String name,
      String sheet,
      Collection<String> names) {
    warn(
        kind,
        row,
        heading,
        Message.of("jobs.name.notIn", name, new BookName(sheet)),
        VisitNames.offer(Message.of("jobs.name.fromThere"), name, names),
        name);
  }

  private boolean present(SheetKind sheet) {
    return index.book().present().contains(sheet);
  }

  private void warn(
      ProblemKind kind,
      SourceRow row,
      String heading,
      Message what,
      Message expected,
      String value) {
    problems.add(Problem.warning(kind, row.at(heading), what, expected, value));
  }
}
