package clenchbook.reading.rows;

import clenchbook.book.Asset;
import clenchbook.book.Book;
import clenchbook.book.HorseRow;
import clenchbook.book.Material;
import clenchbook.book.Owner;
import clenchbook.book.Payment;
import clenchbook.book.Place;
import clenchbook.book.Purchase;
import clenchbook.book.Settings;
import clenchbook.book.SheetControl;
import clenchbook.book.SheetKind;
import clenchbook.book.StockCount;
import clenchbook.book.StrainRating;
import clenchbook.book.TaxRate;
import clenchbook.book.Trip;
import clenchbook.book.Visit;
import clenchbook.book.WorkItem;
import clenchbook.problem.CellRef;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.reading.cells.RowCells;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;

/** The book while it is read. */
public final class BookDraft {
  private static final Set<SheetKind> LISTS =
      EnumSet.of(
          SheetKind.WORK,
          SheetKind.MATERIALS,
          SheetKind.OWNERS,
          SheetKind.HORSES,
          SheetKind.PLACES,
          SheetKind.TAX);

  private final List<String> sheets;
  private final List<Problem> problems = new ArrayList<>();
  private final TreeMap<Integer, SheetControl> controls = new TreeMap<>();
  private final List<Message> examples = new ArrayList<>();
  private final Set<SheetKind> present = EnumSet.noneOf(SheetKind.class);
  private final List<Visit> visits = new ArrayList<>();
  private final List<WorkItem> work = new ArrayList<>();
  private final List<Material> materials = new ArrayList<>();
  private final List<Owner> owners = new ArrayList<>();
  private final List<HorseRow> horses = new ArrayList<>();
  private final List<Place> places = new ArrayList<>();
  private final List<Trip> trips = new ArrayList<>();
  private final List<Purchase> purchases = new ArrayList<>();
  private final List<Payment> payments = new ArrayList<>();
  private final List<Asset> assets = new ArrayList<>();
  private final List<StockCount> counts = new ArrayList<>();
  private final List<TaxRate> taxRates = new ArrayList<>();
  private final List<StrainRating> strain = new ArrayList<>();

  public BookDraft(List<String> sheets) {
    this.sheets = sheets;
  }

  public void say(Problem problem) {
    problems.add(problem);
  }

  /**
   * Notes that a sheet was read, and what its tables are. A list of names that holds examples alone
   * is none as yet, so that no name is unknown to it.
   */
  public void add(int index, SheetControl control, List<SheetRows> tables) {
    tables.stream()
        .filter(table -> !(LISTS.contains(table.layout().kind()) && table.holdsExamplesAlone()))
        .forEach(table -> present.add(table.layout().kind()));
    controls.put(index, control);
    List<String> rows =
        tables.stream().flatMap(table -> table.examples().stream()).map(String::valueOf).toList();
    if (!rows.isEmpty()) {
      Message all = Message.inTurn("sheets.and", rows);
      examples.add(
          rows.size() == 1
              ? Message.of("rows.examples.row", control.sheet(), all)
              : Message.of("rows.examples.rows", control.sheet(), all));
    }
  }

  /** Names the starter's example rows that still stand as it wrote them. */
  public void sayExamples() {
    if (!examples.isEmpty()) {
      say(
          Problem.note(
              ProblemKind.EXAMPLE_ROWS,
              CellRef.ofSheet(""),
              Message.of("rows.examples.stand", Message.joined("; ", examples)),
              Message.of("rows.examples.ownRows")));
    }
  }

  /** Takes the rows of a kind of sheet; true when a row is used. */
  public Predicate<RowCells> reader(SheetKind kind) {
    return switch (kind) {
      case VISITS -> into(visits, VisitRows::read);
      case WORK -> into(work, PriceRows::work);
      case MATERIALS -> into(materials, PriceRows::material);
      case OWNERS -> into(owners, PeopleRows::owner);
      case HORSES -> into(horses, PeopleRows::horse);
      case PLACES -> into(places, PeopleRows::place);
      case TRIPS -> into(trips, LedgerRows::trip);
      case PURCHASES -> into(purchases, LedgerRows::purchase);
      case PAYMENTS -> into(payments, LedgerRows::payment);
      case ASSETS -> into(assets, LedgerRows::asset);
      case COUNTS -> into(counts, LedgerRows::count);
      case TAX -> into(taxRates, PriceRows::taxRate);
      case STRAIN -> into(strain, PeopleRows::strain);
      case SETTINGS, HEADINGS -> row -> false;
    };
  }

  private static <T> Predicate<RowCells> into(
      List<T> list, Function<RowCells, Optional<T>> reader) {
    return row -> {
      Optional<T> record = reader.apply(row);
      record.ifPresent(list::add);
      return record.isPresent();
    };
  }

  /** How far everything has grown, so that a sheet can be read once more. */
  public record Mark(int problems, List<Integer> sizes) {}

  public Mark mark() {
    return new Mark(problems.size(), lists().stream().map(List::size).toList());
  }

  /** Forgets what was added since the mark. */
  public void back(Mark mark) {
    cut(problems, mark.problems());
    List<List<?>> lists = lists();
    for (int i = 0; i < lists.size(); i++) {
      cut(lists.get(i), mark.sizes().get(i));
    }
  }

  private static void cut(List<?> list, int size) {
    list.subList(size, list.size()).clear();
  }

  private List<List<?>> lists() {
    return List.of(
        visits, work, materials, owners, horses, places, trips, purchases, payments, assets, counts,
        taxRates, strain);
  }

  /** The problems in the order of sheets, rows and columns. */
  public List<Problem> problems() {
    Map<String, Integer> places = new HashMap<>();
    for (String sheet : sheets) {
      places.putIfAbsent(sheet, places.size());
    }
    List<Problem> sorted = new ArrayList<>(problems);
    sorted.sort(
        Comparator.comparing((Problem p) -> places.getOrDefault(p.at().sheet(), -1))
            .thenComparing(p -> p.at().row())
            .thenComparing(p -> p.at().columnIndex()));
    return sorted;
  }

  /**
   * Everything read so far as a book, with the settings it is read under. Rows held back are not in
   * it.
   */
  public Book book(Settings settings) {
    return new Book(
        sheets,
        settings,
        visits,
        work,
        materials,
        owners,
        horses,
        places,
        trips,
        purchases,
        payments,
        assets,
        counts,
        taxRates,
        strain,
        List.copyOf(controls.values()),
        present);
  }
}
