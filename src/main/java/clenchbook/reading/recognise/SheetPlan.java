package clenchbook.reading.recognise;

import clenchbook.book.SheetKind;
import clenchbook.problem.CellRef;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.texts.BookName;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;

/**
 * Decides which tables of which sheets are read as what. Sheets of dated rows may be several and
 * are read as one; of lists there is one each.
 */
public final class SheetPlan {
  private static final Set<SheetKind> SEVERAL =
      EnumSet.of(
          SheetKind.VISITS,
          SheetKind.TRIPS,
          SheetKind.PURCHASES,
          SheetKind.PAYMENTS,
          SheetKind.ASSETS,
          SheetKind.COUNTS);

  /** Beside days, horses or work these make a sheet one that somebody may be billed from. */
  private static final Set<String> OF_BILLS = Set.of("Owner", "Charge", "Paid", "Total min");

  private static final int FEWEST_KNOWN = 3;

  private final SheetRecognizer recognizer;
  private final TableFinder finder;
  private final Consumer<Problem> problems;

  public SheetPlan(SheetRecognizer recognizer, Consumer<Problem> problems) {
    this.recognizer = recognizer;
    this.finder = new TableFinder(recognizer);
    this.problems = problems;
  }

  /**
   * Whether tables of a kind may stand in several sheets.
   *
   * @return false for lists
   */
  public static boolean maybeSeveral(SheetKind kind) {
    return SEVERAL.contains(kind);
  }

  /** The tables to read, in workbook order; what can't be told apart is said. */
  public List<SheetLayout> layouts(List<SheetHead> heads) {
    List<SheetLayout> chosen = new ArrayList<>();
    for (SheetHead head : heads) {
      List<SheetRecognizer.Candidate> candidates = recognizer.candidates(head);
      if (candidates.size() == 1) {
        chosen.addAll(finder.tables(head, candidates.get(0).layout()));
      } else {
        List<SheetLayout> apart = finder.apart(head);
        chosen.addAll(apart);
        if (apart.isEmpty()) {
          sayUnread(head, candidates);
        }
      }
    }
    List<SheetLayout> kept = new ArrayList<>();
    for (SheetKind kind : SheetKind.values()) {
      List<SheetLayout> ofKind = chosen.stream().filter(l -> l.kind() == kind).toList();
      kept.addAll(SEVERAL.contains(kind) ? ofKind : one(ofKind));
    }
    kept.sort(
        Comparator.comparingInt(SheetLayout::index)
            .thenComparing(SheetLayout::headingRow)
            .thenComparing(layout -> layout.block().first()));
    kept.forEach(this::sayHeadings);
    if (kept.stream().noneMatch(layout -> layout.kind() == SheetKind.VISITS)) {
      sayNoVisits(heads);
    }
    return kept;
  }

  /** Says what is odd about the headings of a table that is read. */
  public void sayHeadings(SheetLayout layout) {
    new HeadingRules(layout, recognizer.words(layout.kind()), problems).say();
  }

  /** Of several sheets of one list: the one whose name says so, else the left one. */
  private List<SheetLayout> one(List<SheetLayout> ofKind) {
    if (ofKind.stream().map(SheetLayout::index).distinct().count() < 2) {
      return ofKind;
    }
    Predicate<SheetLayout> named = layout -> recognizer.kindByName(layout.name()).isPresent();
    Predicate<SheetLayout> called = layout -> recognizer.isCalled(layout.name(), layout.kind());
    Optional<SheetLayout> byName = onlyOne(ofKind, named).or(() -> onlyOne(ofKind, called));
    SheetLayout counts = byName.orElse(ofKind.get(0));
    for (SheetLayout other : ofKind) {
      if (other.index() != counts.index()) {
        sayOther(counts, other, byName.isPresent());
      }
    }
    return ofKind.stream().filter(layout -> layout.index() == counts.index()).toList();
  }

  private static Optional<SheetLayout> onlyOne(List<SheetLayout> all, Predicate<SheetLayout> test) {
    List<SheetLayout> found = all.stream().filter(test).toList();
    long sheets = found.stream().map(SheetLayout::index).distinct().count();
    return sheets == 1 ? Optional.of(found.get(0)) : Optional.empty();
  }

  private void sayOther(SheetLayout counts, SheetLayout other, boolean byName) {
    BookName kind = new BookName(other.kind().title());
    problems.accept(
        Problem.note(
            byName ? ProblemKind.SHEET_IGNORED : ProblemKind.SHEET_AMBIGUOUS,
            CellRef.ofSheet(other.name()),
            Message.of("sheets.both", counts.name(), other.name(), kind),
            Message.of("sheets.oneSheet", kind)));
  }

  private void sayUnread(SheetHead head, List<SheetRecognizer.Candidate> candidates) {
    if (candidates.isEmpty()) {
      sayMissing(head);
      return;
    }
    List<BookName> titles =
        candidates.stream().map(c -> new BookName(c.layout().kind().title())).toList();
    Message several = Message.inTurn("sheets.or", titles);
    problems.accept(
        Problem.note(
            ProblemKind.SHEET_AMBIGUOUS,
            CellRef.ofSheet(head.name()),
            Message.of("sheets.mayBe", head.name(), several),
            Message.of("sheets.oneOfNames")));
  }

  /**
   * A sheet that bears one of the program's names and lacks its headings, an empty one being fine;
   * or one that lacks a single heading of visits, which nobody would bill from without a word.
   */
  private void sayMissing(SheetHead head) {
    Optional<SheetKind> kind = recognizer.kindByName(head.name());
    if (kind.isEmpty()) {
      recognizer
          .nearMiss(head, SheetKind.VISITS)
          .filter(SheetPlan::isNearlyVisits)
          .ifPresent(this::sayMiss);
    } else if (!head.rows().isEmpty()) {
      recognizer.nearMiss(head, kind.get()).ifPresent(this::sayMiss);
    }
  }

  private static boolean isNearlyVisits(SheetRecognizer.NearMiss miss) {
    return miss.missing().size() == 1
        && miss.known().size() >= FEWEST_KNOWN
        && miss.known().stream().anyMatch(OF_BILLS::contains);
  }

  private void sayMiss(SheetRecognizer.NearMiss miss) {
    miss.misspelt().forEach(misspelt -> problems.accept(misspelt.problem()));
    List<Message> questions = miss.misspelt().stream().map(Misspelt::question).toList();
    Message missing = Message.inTurn("sheets.and", miss.missing());
    List<Object> found = List.copyOf(miss.found());
    problems.accept(
        Problem.note(
            ProblemKind.HEADING_MISSING,
            CellRef.ofSheet(miss.sheet()),
            questions.isEmpty()
                ? Message.of("sheets.heading.missing", missing, found)
                : Message.of(
                    "sheets.heading.missingMisspelt",
                    missing,
                    found,
                    Message.joined("; ", questions)),
            Message.of("sheets.heading.oneForEach")));
  }

  private void sayNoVisits(List<SheetHead> heads) {
    Optional<SheetRecognizer.NearMiss> nearest =
        heads.stream()
            .filter(head -> recognizer.kindByName(head.name()).isEmpty())
            .map(head -> recognizer.nearMiss(head, SheetKind.VISITS))
            .flatMap(Optional::stream)
            .filter(miss -> miss.known().size() > 1)
            .max(Comparator.comparingInt(miss -> miss.known().size()));
    nearest.filter(miss -> !isNearlyVisits(miss)).ifPresent(this::sayMiss);
    problems.accept(
        Problem.note(
            ProblemKind.SHEET_MISSING,
            CellRef.ofSheet(""),
            Message.of("sheets.noVisits"),
            Message.of("sheets.oneOfVisits")));
  }
}
