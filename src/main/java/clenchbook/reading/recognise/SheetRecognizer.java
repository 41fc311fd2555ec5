package clenchbook.reading.recognise;

import clenchbook.book.SheetKind;
import clenchbook.problem.CellRef;
import clenchbook.problem.NearestName;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.reading.cells.SoundCells;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.Row;
import clenchbook.reading.words.OwnWords;
import clenchbook.reading.words.SheetWords;
import clenchbook.reading.words.Vocabulary;
import clenchbook.reading.words.WordForms;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Finds out what a sheet is: by its name where that is one of the program's or renamed by the sheet
 * Headings, else by its headings. The heading row is the first row that holds what the kind needs.
 */
public final class SheetRecognizer {
  private static final int LONGEST_HEADING = 80;
  private static final int SHORTEST_FOR_OFFER = 5;

  private final Vocabulary vocabulary;
  private final OwnWords own;
  private final Map<String, WordForms> forms = new HashMap<>();

  public SheetRecognizer(Vocabulary vocabulary, OwnWords own) {
    this.vocabulary = vocabulary;
    this.own = own;
  }

  /**
   * How a sheet may be read.
   *
   * @param layout as what
   * @param named whether its name says so, too
   */
  public record Candidate(SheetLayout layout, boolean named) {
    int matched() {
      return layout.columns().size();
    }
  }

  /** The kind that the sheet's name alone settles. */
  public Optional<SheetKind> kindByName(String sheet) {
    return own.kindOf(sheet).or(() -> vocabulary.canonicalSheet(sheet));
  }

  /**
   * The ways in which a sheet may be read, the likeliest alone: several only where they can't be
   * told apart, none for an extra sheet. A name counts for more than headings, unless the sheet has
   * a heading that its name rules out: a sheet called Work with dates and horses is a log.
   */
  public List<Candidate> candidates(SheetHead head) {
    Optional<SheetKind> byName = kindByName(head.name());
    Optional<SheetLayout> named = byName.flatMap(kind -> layout(head, kind));
    boolean sure =
        own.kindOf(head.name()).isPresent()
            || named.filter(found -> !refused(found.kind(), found, head)).isPresent();
    if (byName.isPresent() && (sure || named.isEmpty())) {
      return named.map(found -> new Candidate(found, true)).stream().toList();
    }
    List<Candidate> byHeadings = byHeadings(head);
    return byHeadings.isEmpty()
        ? named.map(found -> new Candidate(found, true)).stream().toList()
        : byHeadings;
  }

  private List<Candidate> byHeadings(SheetHead head) {
    List<SheetKind> called = vocabulary.sheetsCalled(head.name());
    List<Candidate> all = new ArrayList<>();
    for (SheetKind kind : SheetKind.values()) {
      layout(head, kind)
          .filter(found -> !refused(kind, found, head))
          .ifPresent(found -> all.add(new Candidate(found, called.contains(kind))));
    }
    return likeliest(all);
  }

  private static List<Candidate> likeliest(List<Candidate> all) {
    int most = all.stream().mapToInt(Candidate::matched).max().orElse(0);
    List<Candidate> best = all.stream().filter(one -> one.matched() == most).toList();
    List<Candidate> named = best.stream().filter(Candidate::named).toList();
    return named.size() == 1 ? named : best;
  }

  private boolean refused(SheetKind kind, SheetLayout layout, SheetHead head) {
    List<String> never = vocabulary.of(kind).never();
    Row headings = headingRow(head, layout.headingRow());
    for (Cell cell : headings.cells()) {
      boolean claimed = layout.columns().containsValue(cell.column());
      boolean bars = never.stream().anyMatch(word -> isWord(head.name(), word, cell));
      if (!claimed && bars) {
        return true;
      }
    }
    return false;
  }

  /** Whether a cell is this heading: as such, or by any word that a sheet of visits has for it. */
  private boolean isWord(String sheet, String word, Cell cell) {
    return forms(cell.shown()).bare().equals(forms(word).bare())
        || heading(sheet, vocabulary.of(SheetKind.VISITS), cell).filter(word::equals).isPresent();
  }

  private WordForms forms(String words) {
    return forms.computeIfAbsent(words, WordForms::of);
  }

  private static Row headingRow(SheetHead head, int number) {
    return head.rows().stream().filter(row -> row.number() == number).findFirst().orElseThrow();
  }

  /** The sheet read as a kind; empty where no row holds the headings that the kind needs. */
  Optional<SheetLayout> layout(SheetHead head, SheetKind kind) {
    SheetWords words = vocabulary.of(kind);
    for (Row row : head.rows()) {
      Map<String, Integer> columns = columns(head.name(), words, row, (cell, left) -> {});
      if (words.isMadeBy(columns.keySet())) {
        return Optional.of(SheetLayout.of(kind, head.name(), head.index(), row.number(), columns));
      }
    }
    return Optional.empty();
  }

  /** Takes a second column of one meaning. */
  private interface Twice {
    void found(Cell later, Cell left);
  }

  private Map<String, Integer> columns(String sheet, SheetWords words, Row row, Twice twice) {
    Map<String, Integer> columns = new LinkedHashMap<>();
    Map<String, Cell> first = new LinkedHashMap<>();
    for (Cell cell : row.cells()) {
      Optional<String> heading = heading(sheet, words, cell);
      if (heading.isPresent()) {
        Cell left = first.putIfAbsent(heading.get(), cell);
        if (left == null) {
          columns.put(heading.get(), cell.column());
        } else {
          twice.found(cell, left);
        }
      }
    }
    row.cells().forEach(cell -> giveWay(sheet, words, cell, columns));
    return inSheetOrder(columns);
  }

  /** A word that counts only where no other column has its meaning. */
  private void giveWay(String sheet, SheetWords words, Cell cell, Map<String, Integer> columns) {
    if (cell instanceof Cell.Text text
        && text.text().length() <= LONGEST_HEADING
        && own.meaning(sheet, words.title(), text.text()).isEmpty()
        && words.heading(forms(text.text())).isEmpty()) {
      words.weakHeadings(forms(text.text())).stream()
          .filter(heading -> !columns.containsKey(heading))
          .findFirst()
          .ifPresent(heading -> columns.put(heading, cell.column()));
    }
  }

  private static Map<String, Integer> inSheetOrder(Map<String, Integer> columns) {
    Map<String, Integer> sorted = new LinkedHashMap<>();
    columns.entrySet().stream()
        .sorted(Map.Entry.comparingByValue())
        .forEach(entry -> sorted.put(entry.getKey(), entry.getValue()));
    return sorted;
  }

  private Optional<String> heading(String sheet, SheetWords words, Cell cell) {
    if (!(cell instanceof Cell.Text text) || text.text().length() > LONGEST_HEADING) {
      return Optional.empty();
    }
    String written = text.text();
    Optional<String> mine = own.meaning(sheet, words.title(), written);
    return mine.isPresent()
        ? mine.flatMap(words::heading)
        : words.heading(forms(written)).or(() -> withoutBrackets(words, written));
  }

  /**
   * What stands in brackets behind a heading, such as a currency, says nothing about its meaning.
   */
  private Optional<String> withoutBrackets(SheetWords words, String written) {
    int open = written.indexOf('(');
    return open > 0 && written.strip().endsWith(")")
        ? words.heading(forms(written.substring(0, open)))
        : Optional.empty();
  }

  /** Says what is odd about the headings of a sheet that is read. */
  void sayHeadings(SheetHead head, SheetLayout layout, Consumer<Problem> problems) {
    SheetWords words = vocabulary.of(layout.kind());
    Row row = headingRow(head, layout.headingRow());
    columns(
        head.name(),
        words,
        row,
        (later, left) -> problems.accept(twice(head, row, words, later, left)));
    Set<String> missing = new HashSet<>(words.canonicalHeadings());
    missing.removeAll(layout.columns().keySet());
    for (Cell cell : row.cells()) {
      if (cell instanceof Cell.Text text && !layout.columns().containsValue(cell.column())) {
        offer(head.name(), words, text, missing)
            .ifPresent(meant -> problems.accept(unknown(head, row, cell, meant)));
      }
    }
  }

  private Problem twice(SheetHead head, Row row, SheetWords words, Cell later, Cell left) {
    String meaning = heading(head.name(), words, later).orElse("");
    String leftPlace = CellRef.letters(left.column()) + row.number();
    String problem =
        "'"
            + SoundCells.brief(later.shown())
            + "' and '"
            + SoundCells.brief(left.shown())
            + "' in "
            + leftPlace
            + " both mean "
            + meaning
            + "; the left one counts";
    return Problem.warning(
        ProblemKind.HEADING_TWICE,
        at(head, row, later),
        problem,
        "one column for " + meaning,
        SoundCells.brief(later.shown()));
  }

  /** The heading that a misspelt one most likely is; only one that no other column has. */
  private Optional<String> offer(
      String sheet, SheetWords words, Cell.Text cell, Set<String> missing) {
    boolean known = heading(sheet, words, cell).isPresent();
    boolean unusable =
        cell.text().length() < SHORTEST_FOR_OFFER || cell.text().length() > LONGEST_HEADING;
    if (known || unusable) {
      return Optional.empty();
    }
    return NearestName.find(cell.text(), missing);
  }

  private static Problem unknown(SheetHead head, Row row, Cell cell, String meant) {
    return Problem.warning(
        ProblemKind.HEADING_UNKNOWN,
        at(head, row, cell),
        "the heading '" + cell.shown() + "' is not known, so its column is not read",
        meant + ", if that is meant",
        cell.shown());
  }

  private static CellRef at(SheetHead head, Row row, Cell cell) {
    return new CellRef(head.name(), row.number(), CellRef.letters(cell.column()));
  }

  /** The row that comes nearest to a kind, with the needs it leaves open. */
  Optional<NearMiss> nearMiss(SheetHead head, SheetKind kind) {
    SheetWords words = vocabulary.of(kind);
    return head.rows().stream()
        .map(
            row -> {
              Map<String, Integer> columns = columns(head.name(), words, row, (cell, left) -> {});
              List<String> missing =
                  words.missing(columns.keySet()).stream()
                      .map(need -> String.join(" or ", need))
                      .toList();
              return new NearMiss(head.name(), columns.size(), missing, written(row));
            })
        .max(Comparator.comparingInt(NearMiss::matched));
  }

  private static List<String> written(Row row) {
    return row.cells().stream()
        .filter(cell -> cell instanceof Cell.Text)
        .limit(30)
        .map(cell -> SoundCells.brief(cell.shown()).replaceAll("\\R", " "))
        .toList();
  }

  /**
   * A row that has some of the headings that a kind needs.
   *
   * @param matched how many headings it has
   * @param missing what is missing
   * @param found the headings there are
   */
  record NearMiss(String sheet, int matched, List<String> missing, List<String> found) {}
}
