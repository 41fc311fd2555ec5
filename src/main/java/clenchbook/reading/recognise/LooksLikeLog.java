package clenchbook.reading.recognise;

import clenchbook.book.SheetKind;
import clenchbook.reading.cells.WordCell;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.Row;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * Whether a table whose headings make it a list is a log of days nevertheless: a heading for its
 * days is not known, and its horses come back. A list names each thing once.
 */
final class LooksLikeLog {
  private static final Map<SheetKind, List<String>> KEYS =
      Map.of(
          SheetKind.HORSES, List.of("Horse", "Owner"),
          SheetKind.OWNERS, List.of("Owner"),
          SheetKind.PLACES, List.of("Place"),
          SheetKind.WORK, List.of("Work", "From"),
          SheetKind.MATERIALS, List.of("Item", "Size", "From"));

  /** Lists in which the day on the left is never one of the list's own. */
  private static final Set<SheetKind> WITHOUT_DAYS =
      Set.of(SheetKind.HORSES, SheetKind.OWNERS, SheetKind.PLACES);

  private static final Pattern DAY =
      Pattern.compile("(?:\\p{L}{2,10}\\.?,?\\s+)?\\d{1,4}[-./]\\d{1,2}(?:[-./](?:\\d{2,4})?)?");
  private static final int MOST_REPEATS = 3;

  private final SheetLayout layout;
  private final List<Row> rows;

  private LooksLikeLog(SheetHead head, SheetLayout layout) {
    this.layout = layout;
    this.rows =
        head.rows().stream()
            .filter(row -> row.number() > layout.headingRow())
            .map(layout.block()::of)
            .filter(row -> !row.cells().isEmpty())
            .toList();
  }

  /** Whether the table of a list is a log, as far as the sheet's first rows show. */
  static boolean is(SheetHead head, SheetLayout layout) {
    if (!KEYS.containsKey(layout.kind())) {
      return false;
    }
    LooksLikeLog sense = new LooksLikeLog(head, layout);
    Optional<Integer> days = sense.unreadDays();
    boolean leftmost =
        days.isPresent()
            && layout.columns().values().stream().noneMatch(column -> column < days.get())
            && WITHOUT_DAYS.contains(layout.kind());
    boolean ofHorses = layout.kind() == SheetKind.HORSES;
    return leftmost || (sense.comesBack() && (days.isPresent() || ofHorses));
  }

  /** The leftmost column that is not read and holds days in at least half of the rows. */
  private Optional<Integer> unreadDays() {
    Set<Integer> columns = new TreeSet<>();
    rows.forEach(row -> row.cells().forEach(cell -> columns.add(cell.column())));
    columns.removeAll(layout.columns().values());
    return columns.stream().filter(column -> daysIn(column) * 2 >= rows.size()).findFirst();
  }

  private long daysIn(int column) {
    return rows.stream().filter(row -> cell(row, column).filter(this::isDay).isPresent()).count();
  }

  private boolean isDay(Cell cell) {
    return cell instanceof Cell.Moment
        || (cell instanceof Cell.Text text
            && text.text().length() < 30
            && DAY.matcher(text.text().strip()).matches());
  }

  /** Whether at least a third of the rows name what a row above them names. */
  private boolean comesBack() {
    Set<List<String>> seen = new HashSet<>();
    long again = rows.stream().map(this::key).filter(key -> !seen.add(key)).count();
    return again > 0 && again * MOST_REPEATS >= rows.size();
  }

  private List<String> key(Row row) {
    List<String> key = new ArrayList<>();
    for (String heading : KEYS.getOrDefault(layout.kind(), List.of())) {
      Optional<Cell> named =
          Optional.ofNullable(layout.columns().get(heading)).flatMap(column -> cell(row, column));
      key.add(named.map(cell -> WordCell.trimmed(cell.shown())).orElse(""));
    }
    return key;
  }

  private static Optional<Cell> cell(Row row, int column) {
    return row.cells().stream().filter(cell -> cell.column() == column).findFirst();
  }
}
