package clenchbook.tax.lines;

import clenchbook.tax.page.Bases;
import clenchbook.tax.page.Wording;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** Puts the lines of a summary together; mutable while one summary is made. */
public final class SummaryBuilder {
  private final LineScheme scheme;
  private final MinorUnit unit;
  private final LocalDate day;
  private final List<SummaryLine> lines = new ArrayList<>();
  private final TreeMap<String, Wording> bases = new TreeMap<>();
  private final TreeMap<String, String> sources = new TreeMap<>();

  public SummaryBuilder(LineScheme scheme, MinorUnit unit, LocalDate day) {
    this.scheme = scheme;
    this.unit = unit;
    this.day = day;
  }

  /**
   * From now on a line with rows of this code says so of its basis, and names these sources of its
   * rates too.
   */
  public void explain(String code, Wording basis, String source) {
    bases.put(code, basis);
    sources.put(code, source);
  }

  public LineScheme scheme() {
    return scheme;
  }

  /** A line made of rows that is no cost; it stands also when it has none. */
  public SummaryLine rows(String code, List<LineItem> items, Wording basis) {
    return add(scheme.head(code), items, basis, SummaryLine.Kind.ROWS);
  }

  /**
   * One cost line for each line number that the items' codes lead to, in the form's order; those of
   * nothing left out.
   */
  public List<SummaryLine> costs(List<LineItem> items, Wording basis) {
    TreeMap<String, List<LineItem>> byLine = new TreeMap<>(BY_NUMBER);
    items.forEach(
        item ->
            byLine
                .computeIfAbsent(scheme.order(item.code()), unused -> new ArrayList<>())
                .add(item));
    List<SummaryLine> added = new ArrayList<>();
    byLine.values().forEach(ofLine -> added.add(cost(ofLine, basis)));
    return added;
  }

  private SummaryLine cost(List<LineItem> ofLine, Wording basis) {
    String code = ofLine.stream().map(LineItem::code).min(Comparator.naturalOrder()).orElseThrow();
    return add(
        explained(scheme.head(code), ofLine),
        ofLine,
        basisOf(ofLine, basis),
        SummaryLine.Kind.COST);
  }

  private Wording basisOf(List<LineItem> ofLine, Wording basis) {
    return ofLine.stream()
        .flatMap(item -> Optional.ofNullable(bases.get(item.code())).stream())
        .findFirst()
        .orElse(basis);
  }

  private LineHead explained(LineHead head, List<LineItem> ofLine) {
    List<String> named = new ArrayList<>(List.of(head.source()));
    ofLine.stream()
        .map(LineItem::code)
        .distinct()
        .sorted()
        .flatMap(code -> Optional.ofNullable(sources.get(code)).stream())
        .filter(source -> !source.isEmpty())
        .forEach(named::add);
    return head.from(String.join("; ", named));
  }

  public SummaryLine beside(LineHead head, List<LineItem> items, Wording basis) {
    return add(head, items, basis, SummaryLine.Kind.BESIDE);
  }

  private SummaryLine add(
      LineHead head, List<LineItem> items, Wording basis, SummaryLine.Kind kind) {
    BigDecimal amount = unit.zero().add(LineItem.sum(items));
    SummaryLine line = new SummaryLine(head, amount, basis, items, kind);
    lines.add(line);
    return line;
  }

  /** A total that adds some lines and takes others away. */
  public SummaryLine total(String code, List<SummaryLine> plus, List<SummaryLine> minus) {
    List<LineItem> items = new ArrayList<>();
    plus.forEach(line -> items.add(from(line, line.amount())));
    minus.forEach(line -> items.add(from(line, line.amount().negate())));
    return add(scheme.head(code), items, Bases.COMPUTED, SummaryLine.Kind.TOTAL);
  }

  /** A figure made from others by a rate, with the rule in words as its one row. */
  public SummaryLine figure(LineHead head, BigDecimal amount, String how) {
    LineItem item = new LineItem("", "tax-summary", 0, day, how, amount, unit.zero(), amount);
    return add(head, List.of(item), Bases.COMPUTED, SummaryLine.Kind.BESIDE);
  }

  /** An estimate made from other lines by a rate, with the rule in words as its one row. */
  public SummaryLine estimate(LineHead head, BigDecimal amount, String how) {
    LineItem item = new LineItem("", "tax-summary", 0, day, how, amount, unit.zero(), amount);
    return add(head, List.of(item), Bases.ESTIMATE, SummaryLine.Kind.ESTIMATE);
  }

  /** A line that a table of its own prints, such as a box of a tax return. */
  public SummaryLine tabled(LineHead head, List<LineItem> items, Wording basis) {
    return add(head, items, basis, SummaryLine.Kind.TABLED);
  }

  /** A figure from other lines that a table of its own prints. */
  public SummaryLine tabled(LineHead head, BigDecimal amount, String how) {
    LineItem item = new LineItem("", "tax-summary", 0, day, how, amount, unit.zero(), amount);
    return add(head, List.of(item), Bases.COMPUTED, SummaryLine.Kind.TABLED);
  }

  private LineItem from(SummaryLine line, BigDecimal amount) {
    String who = "line " + line.head().line() + ", " + line.head().name();
    return new LineItem("", "tax-summary", 0, day, who, amount, unit.zero(), amount);
  }

  /** Every line so far. */
  public List<SummaryLine> lines() {
    return List.copyOf(lines);
  }

  /** The line on which a code stands; empty where none was built. */
  public Optional<SummaryLine> find(String code) {
    String number = scheme.head(code).line();
    return SummaryLine.find(lines, number);
  }

  /** Numbers before words, {@code 9} before {@code 10}, {@code 24a} before {@code 24b}. */
  public static final Comparator<String> BY_NUMBER =
      Comparator.comparingInt(SummaryBuilder::number).thenComparing(Comparator.naturalOrder());

  private static int number(String line) {
    int digits = 0;
    while (digits < line.length() && Character.isDigit(line.charAt(digits))) {
      digits++;
    }
    return digits == 0 ? Integer.MAX_VALUE : Integer.parseInt(line.substring(0, digits));
  }
}
