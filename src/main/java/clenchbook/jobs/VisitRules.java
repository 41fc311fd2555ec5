package clenchbook.jobs;

import clenchbook.book.Counted;
import clenchbook.book.Names;
import clenchbook.book.SheetKind;
import clenchbook.book.Visit;
import clenchbook.book.WorkItem;
import clenchbook.problem.CellRef;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** What one row of Visits must find in other sheets: what holds it back, and what only warns. */
final class VisitRules {
  private final BookIndex index;
  private final Visit visit;
  private final Optional<WorkItem> work;
  private final Ownership ownership;
  private final List<Problem> warnings = new ArrayList<>();

  VisitRules(BookIndex index, Visit visit, Optional<WorkItem> work, Ownership ownership) {
    this.index = index;
    this.visit = visit;
    this.work = work;
    this.ownership = ownership;
  }

  /** Why the row can't be billed, if it can't; a cancelled row needs neither payer nor price. */
  Optional<Problem> held() {
    if (visit.cancelled()) {
      return Optional.empty();
    }
    return ownership.payers().isEmpty() ? Optional.of(nobodyToBill()) : withoutPrice();
  }

  private Problem nobodyToBill() {
    int horses = index.horses().named(visit.horse()).size();
    String why =
        visit.horse().isEmpty()
            ? "nobody to bill: neither an owner nor a horse is named"
            : horses == 0
                ? "nobody to bill: no owner, and no row of Horses for " + visit.horse()
                : horses == 1
                    ? "nobody to bill: Horses names no owner of " + visit.horse() + " on that day"
                    : "nobody to bill: several horses are called " + visit.horse();
    CellRef owner = visit.source().at("Owner");
    return Problem.held(
        ProblemKind.NOBODY_TO_BILL,
        owner.column().isEmpty() ? visit.source().at("Horse") : owner,
        why,
        horses > 0 || visit.horse().isEmpty()
            ? "the owner's name"
            : "the owner's name, or a horse of Horses"
                + VisitNames.offer(visit.horse(), index.horses().names()),
        owner.column().isEmpty() ? visit.horse() : "");
  }

  private Optional<Problem> withoutPrice() {
    if (visit.charge().isPresent() || work.flatMap(WorkItem::price).isPresent()) {
      return Optional.empty();
    }
    if (work.isPresent() || index.prices().knows(visit.work())) {
      return Optional.of(
          Problem.held(
              ProblemKind.NO_PRICE,
              chargeCell(),
              "no price: Work has none for " + visit.work() + " on that day",
              "a Charge here or a Price in Work",
              ""));
    }
    return Optional.of(
        Problem.held(
            ProblemKind.NO_PRICE,
            visit.source().at("Work"),
            visit.work().isEmpty()
                ? "no price: neither a Work nor a Charge is given"
                : "no price: Work has no row for " + visit.work(),
            "a name from Work, or a Charge"
                + VisitNames.offer(visit.work(), index.prices().names()),
            visit.work()));
  }

  private CellRef chargeCell() {
    CellRef charge = visit.source().at("Charge");
    return charge.column().isEmpty() ? visit.source().at("Work") : charge;
  }

  List<Problem> warnings() {
    horse();
    owner();
    unknown(
        SheetKind.PLACES,
        ProblemKind.PLACE_UNKNOWN,
        "Place",
        visit.place(),
        index.place(visit.place()).isPresent(),
        index::placeSheetNames);
    unknown(
        SheetKind.WORK,
        ProblemKind.WORK_UNKNOWN,
        "Work",
        visit.work(),
        index.prices().knows(visit.work()),
        () -> index.prices().names());
    visit.shoe().forEach(part -> material("Shoe", part));
    if (!visit.nail().isEmpty()) {
      material("Nail", new Counted(visit.nail(), Optional.empty()));
    }
    visit.extras().forEach(extra -> material("Extras", extra));
    return warnings;
  }

  private void horse() {
    boolean fee = work.map(WorkItem::fee).orElse(false);
    if (visit.horse().isEmpty() && !fee) {
      warn(ProblemKind.NAME_MISSING, "Horse", "no horse is named", "the horse's name", "");
    }
    unknown(
        SheetKind.HORSES,
        ProblemKind.HORSE_UNKNOWN,
        "Horse",
        visit.horse(),
        !index.horses().named(visit.horse()).isEmpty(),
        () -> index.horses().names());
  }

  private void owner() {
    boolean known =
        index.owner(visit.owner()).isPresent() || ownership.known().map(this::owns).orElse(false);
    unknown(
        SheetKind.OWNERS,
        ProblemKind.OWNER_UNKNOWN,
        "Owner",
        visit.owner(),
        index.owner(visit.owner()).isPresent(),
        index::ownerSheetNames);
    if (ownership.stranger() && (known || !index.book().present().contains(SheetKind.OWNERS))) {
      warn(
          ProblemKind.OWNER_NOT_THE_HORSES,
          "Owner",
          visit.owner() + " is not an owner of " + visit.horse() + " on that day, and pays all",
          "the horse's owner, or blank",
          visit.owner());
    }
  }

  private boolean owns(Horse horse) {
    return horse.rows().stream().anyMatch(row -> Names.same(row.owner(), visit.owner()));
  }

  private void material(String heading, Counted part) {
    boolean known =
        index.materials().findKey(part.name(), "").isPresent() || isKindWord(heading, part.name());
    unknown(
        SheetKind.MATERIALS,
        ProblemKind.MATERIAL_UNKNOWN,
        heading,
        part.name(),
        known,
        () -> index.materials().names());
  }

  private static boolean isKindWord(String heading, String name) {
    return heading.equals("Shoe") && ShoeParts.kindWord(name).isPresent();
  }

  private void unknown(
      SheetKind sheet,
      ProblemKind kind,
      String heading,
      String name,
      boolean known,
      Supplier<? extends Collection<String>> names) {
    if (!name.isEmpty() && !known && index.book().present().contains(sheet)) {
      warn(
          kind,
          heading,
          name + " is not in " + sheet.title(),
          "a name from there" + VisitNames.offer(name, names.get()),
          name);
    }
  }

  private void warn(ProblemKind kind, String heading, String what, String expected, String value) {
    warnings.add(Problem.warning(kind, visit.source().at(heading), what, expected, value));
  }
}
