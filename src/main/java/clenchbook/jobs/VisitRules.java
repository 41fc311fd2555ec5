package clenchbook.jobs;

import clenchbook.book.Counted;
import clenchbook.book.Names;
import clenchbook.book.SheetKind;
import clenchbook.book.Visit;
import clenchbook.book.WorkItem;
import clenchbook.problem.CellRef;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.texts.BookName;
import clenchbook.texts.Message;
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
    CellRef owner = visit.source().at("Owner");
    return Problem.held(
        ProblemKind.NOBODY_TO_BILL,
        owner.column().isEmpty() ? visit.source().at("Horse") : owner,
        whyNobody(horses),
        whoInstead(horses),
        owner.column().isEmpty() ? visit.horse() : "");
  }

  private Message whyNobody(int horses) {
    if (visit.horse().isEmpty()) {
      return Message.of("jobs.bill.noNames");
    }
    return switch (horses) {
      case 0 -> Message.of("jobs.bill.unknownHorse", visit.horse());
      case 1 -> Message.of("jobs.bill.noOwnerOfHorse", visit.horse());
      default -> Message.of("jobs.bill.severalHorses", visit.horse());
    };
  }

  private Message whoInstead(int horses) {
    return horses > 0 || visit.horse().isEmpty()
        ? Message.of("jobs.bill.anOwner")
        : VisitNames.offer(
            Message.of("jobs.bill.anOwnerOrHorse"), visit.horse(), index.horses().names());
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
              Message.of("jobs.price.noneOnDay", visit.work()),
              Message.of("jobs.price.chargeOrPrice"),
              ""));
    }
    return Optional.of(
        Problem.held(
            ProblemKind.NO_PRICE,
            visit.source().at("Work"),
            visit.work().isEmpty()
                ? Message.of("jobs.price.nothingGiven")
                : Message.of("jobs.price.noWork", visit.work()),
            VisitNames.offer(
                Message.of("jobs.price.workOrCharge"), visit.work(), index.prices().names()),
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
      warn(
          ProblemKind.NAME_MISSING,
          "Horse",
          Message.of("jobs.name.noHorse"),
          Message.of("jobs.name.aHorse"),
          "");
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
          Message.of("jobs.name.notTheHorses", visit.owner(), visit.horse()),
          Message.of("jobs.name.theHorsesOwner"),
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
          Message.of("jobs.name.notIn", name, new BookName(sheet.title())),
          VisitNames.offer(Message.of("jobs.name.fromThere"), name, names.get()),
          name);
    }
  }

  private void warn(
      ProblemKind kind, String heading, Message what, Message expected, String value) {
    warnings.add(Problem.warning(kind, visit.source().at(heading), what, expected, value));
  }
}
