package clenchbook.reading.recognise;

import clenchbook.book.SheetKind;
import clenchbook.reading.cells.SoundCells;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.Row;
import clenchbook.reading.words.OwnWords;
import clenchbook.reading.words.SheetWords;
import clenchbook.reading.words.Vocabulary;
import clenchbook.texts.BookName;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Finds out what a sheet is: by its name where that is one of the program's or renamed by the sheet
 * Headings, else by its headings. The heading row is the first row that holds what the kind needs.
 */
public final class SheetRecognizer {
  private static final Pattern FIGURE = Pattern.compile("[\\p{Sc}\\s]*-?\\d[\\d.,:/%\\p{Sc}\\s-]*");
  private static final int FEWEST_BESIDE_FIGURES = 3;

  private final Vocabulary vocabulary;
  private final OwnWords own;
  private final HeadingReader reader;

  public SheetRecognizer(Vocabulary vocabulary, OwnWords own) {
    this.vocabulary = vocabulary;
    this.own = own;
    this.reader = new HeadingReader(own);
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

  HeadingReader reader() {
    return reader;
  }

  SheetWords words(SheetKind kind) {
    return vocabulary.of(kind);
  }

  /** The kind that the sheet's name alone settles. */
  public Optional<SheetKind> kindByName(String sheet) {
    return own.kindOf(sheet).or(() -> vocabulary.canonicalSheet(sheet));
  }

  /** Whether a name is one of those in use for a kind of sheet, in any language. */
  boolean isCalled(String sheet, SheetKind kind) {
    return vocabulary.sheetsCalled(sheet).contains(kind);
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
            || named.filter(found -> !refused(found, head.name())).isPresent();
    if (byName.isPresent() && (sure || named.isEmpty())) {
      return named.map(found -> new Candidate(found, true)).stream().toList();
    }
    List<Candidate> byHeadings = byHeadings(head, Block.WHOLE);
    return byHeadings.isEmpty()
        ? named.map(found -> new Candidate(found, true)).stream().toList()
        : byHeadings;
  }

  /** The ways in which some columns of a sheet may be read, by their headings. */
  List<Candidate> byHeadings(SheetHead head, Block block) {
    List<SheetKind> called = vocabulary.sheetsCalled(head.name());
    List<Candidate> all = new ArrayList<>();
    for (SheetKind kind : SheetKind.values()) {
      layout(head, kind, block)
          .filter(found -> !refused(found, head.name()) && !LooksLikeLog.is(head, found))
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

  private boolean refused(SheetLayout layout, String sheet) {
    List<String> never = vocabulary.of(layout.kind()).never();
    return layout.headings().cells().stream()
        .filter(heading -> heading.heading().isEmpty())
        .anyMatch(heading -> never.stream().anyMatch(word -> isWord(sheet, word, heading.cell())));
  }

  /** Whether a cell is this heading: as such, or by any word that a sheet of visits has for it. */
  private boolean isWord(String sheet, String word, Cell cell) {
    if (reader.forms(cell.shown()).bare().equals(reader.forms(word).bare())) {
      return true;
    }
    SheetWords visits = vocabulary.of(SheetKind.VISITS);
    Row alone = new Row(1, List.of(cell));
    return reader.read(sheet, visits, alone).columns().containsKey(word);
  }

  /** The sheet read as a kind; empty where no row holds the headings that the kind needs. */
  public Optional<SheetLayout> layout(SheetHead head, SheetKind kind) {
    return layout(head, kind, Block.WHOLE);
  }

  private Optional<SheetLayout> layout(SheetHead head, SheetKind kind, Block block) {
    for (Row row : head.rows()) {
      Optional<SheetLayout> made = layoutAt(head, kind, block, row);
      if (made.isPresent()) {
        return made;
      }
    }
    return Optional.empty();
  }

  /** The table of a kind whose headings stand in this row. */
  Optional<SheetLayout> layoutAt(SheetHead head, SheetKind kind, Block block, Row row) {
    SheetWords words = vocabulary.of(kind);
    Headings headings = reader.read(head.name(), words, block.of(row));
    return words.isMadeBy(headings.found()) && mayBeHeadings(block.of(row), headings)
        ? Optional.of(SheetLayout.of(kind, head, row.number(), block, headings))
        : Optional.empty();
  }

  /** A row of data has figures, and few words that happen to be headings too. */
  private static boolean mayBeHeadings(Row row, Headings headings) {
    long figures = row.cells().stream().filter(SheetRecognizer::isFigure).count();
    int known = headings.columns().size();
    return figures == 0 || (known >= FEWEST_BESIDE_FIGURES && known > figures);
  }

  private static boolean isFigure(Cell cell) {
    return cell instanceof Cell.Text text
        ? FIGURE.matcher(text.text()).matches()
        : !(cell instanceof Cell.Truth);
  }

  /** The row that comes nearest to a kind, with the needs it leaves open. */
  Optional<NearMiss> nearMiss(SheetHead head, SheetKind kind) {
    SheetWords words = vocabulary.of(kind);
    return head.rows().stream()
        .map(
            row -> {
              Headings headings = reader.read(head.name(), words, row);
              List<List<String>> missing = words.missing(headings.found());
              return new NearMiss(
                  head.name(),
                  headings.found(),
                  missing.stream().map(need -> anyOf(kind, need)).toList(),
                  written(row),
                  Misspelt.of(head.name(), row.number(), words, headings, missing));
            })
        .max(Comparator.comparingInt(miss -> miss.known().size()));
  }

  private static Message anyOf(SheetKind kind, List<String> headings) {
    return Message.inTurn(
        "sheets.or", headings.stream().map(heading -> BookName.of(kind.title(), heading)).toList());
  }

  private static List<String> written(Row row) {
    return row.cells().stream()
        .filter(cell -> cell instanceof Cell.Text)
        .limit(30)
        .map(SoundCells::oneLine)
        .toList();
  }

  /**
   * A row that has some of the headings that a kind needs.
   *
   * @param known the program's headings that it has
   * @param missing what is missing
   * @param found the headings there are
   * @param misspelt those that are most likely a missing one
   */
  record NearMiss(
      String sheet,
      Set<String> known,
      List<Message> missing,
      List<String> found,
      List<Misspelt> misspelt) {}
}
