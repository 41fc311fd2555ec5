package clenchbook.reading.cells;

import clenchbook.book.Counted;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.CellFormat;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** How texts of one book are read: its decimal mark, its order of dates, its currency. */
public final class ReadingRules {
  private static final int MOST_KEPT = 100_000;

  private final NumberText numbers;
  private final MoneyText money;
  private final MinutesText minutes;
  private final MeasureText measures;
  private final Measure distance;
  private final Optional<DateText.Order> dateOrder;
  private final boolean from1904;
  private final Map<String, Measure> distances;
  private final Map<String, String> kept;
  private final Map<String, List<Counted>> keptParts;
  private final Map<String, SizeCell.Reading> keptSizes;
  private final Map<CellFormat, Optional<String>> keptUnits;
  private final Map<CellFormat, Optional<String>> keptSigns;

  /**
   * The rules for one book: its locale, its currency and the order of its dates, each empty where
   * nobody says, and its unit of distance.
   */
  public ReadingRules(
      Locale locale,
      Optional<String> currency,
      Optional<DateText.Order> dateOrder,
      Measure distance,
      boolean from1904) {
    this.numbers = new NumberText(locale);
    this.money = new MoneyText(numbers, currency);
    this.minutes = new MinutesText(numbers);
    this.measures = new MeasureText(numbers);
    this.distance = distance;
    this.dateOrder = dateOrder;
    this.from1904 = from1904;
    this.distances = Map.of();
    this.kept = new HashMap<>();
    this.keptParts = new HashMap<>();
    this.keptSizes = new HashMap<>();
    this.keptUnits = new HashMap<>();
    this.keptSigns = new HashMap<>();
  }

  private ReadingRules(ReadingRules of, Map<String, Measure> distances) {
    this.numbers = of.numbers;
    this.money = of.money;
    this.minutes = of.minutes;
    this.measures = of.measures;
    this.distance = of.distance;
    this.dateOrder = of.dateOrder;
    this.from1904 = of.from1904;
    this.distances = distances;
    this.kept = of.kept;
    this.keptParts = of.keptParts;
    this.keptSizes = of.keptSizes;
    this.keptUnits = of.keptUnits;
    this.keptSigns = of.keptSigns;
  }

  /**
   * The rules of one table, whose headings may name a unit of distance that is not the book's.
   *
   * @param headings what is written over the columns, by their canonical headings
   */
  public ReadingRules under(Map<String, String> headings) {
    Map<String, Measure> units = new HashMap<>();
    headings.forEach(
        (heading, written) ->
            Measure.distanceIn(written)
                .filter(unit -> unit != distance)
                .ifPresent(unit -> units.put(heading, unit)));
    return units.isEmpty() ? this : new ReadingRules(this, units);
  }

  NumberText numbers() {
    return numbers;
  }

  MoneyText money() {
    return money;
  }

  MinutesText minutes() {
    return minutes;
  }

  MeasureText measures() {
    return measures;
  }

  Measure distance() {
    return distance;
  }

  /** The unit that numbers under a heading of distances have. */
  Measure distanceUnder(String heading) {
    return distances.getOrDefault(heading, distance);
  }

  /** The unit that a format shows behind its number. */
  Optional<String> unit(CellFormat format) {
    return keptUnits.computeIfAbsent(format, CellFormat::unit);
  }

  /** The sign that a format shows, where it is another currency's. */
  Optional<String> foreign(CellFormat format) {
    return keptSigns.computeIfAbsent(
        format, shown -> shown.currencySign().filter(money::isForeign));
  }

  /** The sign, code or name of another currency than the book's that a heading holds. */
  public Optional<String> foreignIn(String heading) {
    return money.foreignAmong(heading);
  }

  /** The book's currency as its code; empty where nobody says. */
  public String currency() {
    return money.currency().orElse("");
  }

  Optional<DateText.Order> dateOrder() {
    return dateOrder;
  }

  boolean from1904() {
    return from1904;
  }

  /** One copy of equal texts: a book names the same few horses and owners thousands of times. */
  String once(String text) {
    String first = kept.size() < MOST_KEPT ? kept.putIfAbsent(text, text) : kept.get(text);
    return first == null ? text : first;
  }

  /** The parts of a list, read once for equal texts. */
  List<Counted> parts(String what, String text, Function<String, List<Counted>> reader) {
    if (text.isEmpty()) {
      return List.of();
    }
    String key = what + '\n' + text;
    List<Counted> known = keptParts.get(key);
    if (known == null) {
      known = List.copyOf(reader.apply(text));
      if (keptParts.size() < MOST_KEPT) {
        keptParts.put(key, known);
      }
    }
    return known;
  }

  /** A size, read once for equal texts. */
  SizeCell.Reading size(Cell cell) {
    if (!(cell instanceof Cell.Text text)) {
      return SizeCell.read(cell, from1904);
    }
    SizeCell.Reading known = keptSizes.get(text.text());
    if (known == null) {
      known = SizeCell.read(cell, from1904);
      if (keptSizes.size() < MOST_KEPT) {
        keptSizes.put(text.text(), known);
      }
    }
    return known;
  }
}
