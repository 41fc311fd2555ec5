package clenchbook.reading;

import clenchbook.book.Book;
import clenchbook.book.SheetKind;
import clenchbook.problem.CellRef;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.reading.cells.Measure;
import clenchbook.reading.cells.ReadingRules;
import clenchbook.reading.cells.RowCells;
import clenchbook.reading.formats.TableFile;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.DamagedSheet;
import clenchbook.reading.formats.cells.MergedCells;
import clenchbook.reading.formats.cells.Row;
import clenchbook.reading.formats.cells.TableSource;
import clenchbook.reading.formats.cells.UnreadableWorkbook;
import clenchbook.reading.recognise.SheetHead;
import clenchbook.reading.recognise.SheetLayout;
import clenchbook.reading.recognise.SheetPlan;
import clenchbook.reading.recognise.SheetRecognizer;
import clenchbook.reading.rows.BookDraft;
import clenchbook.reading.rows.HeadingsRows;
import clenchbook.reading.rows.SettingsOutcome;
import clenchbook.reading.rows.SettingsRows;
import clenchbook.reading.rows.SheetRows;
import clenchbook.reading.words.OwnWords;
import clenchbook.reading.words.Vocabulary;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Reads a workbook: finds its sheets, reads the farrier's own words and settings first, since they
 * say how the rest is meant, then every other sheet once, row by row.
 */
public final class BookReader {
  private static final int WIDEST_HEAD = 600;
  private static final int ROWS_BETWEEN_SIGNS = 5_000;

  private final TableSource source;
  private final ReadOptions options;
  private final Vocabulary vocabulary = Vocabulary.load();
  private final BookDraft draft;
  private int read;

  private BookReader(TableSource source, ReadOptions options) {
    this.source = source;
    this.options = options;
    this.draft = new BookDraft(source.sheetNames());
  }

  /**
   * Reads a workbook of any accepted format, without changing it.
   *
   * @param file the workbook, or a folder of CSV files
   * @param options password, the machine's locale, progress
   * @return the book with its problems
   * @throws UnreadableWorkbook when it can't be used at all, with the reason in one line
   * @throws IOException when the disk fails
   */
  public static ReadResult read(Path file, ReadOptions options) throws IOException {
    try (TableSource source = TableFile.open(file, options.password())) {
      String sum = FileSum.sha256(file);
      BookReader reader = new BookReader(source, options);
      Book book = reader.read();
      return new ReadResult(book, reader.draft.problems(), sum);
    } catch (OutOfMemoryError tooLarge) {
      throw new UnreadableWorkbook("the workbook needs more memory than the program has");
    }
  }

  private Book read() throws IOException {
    List<SheetHead> heads = heads();
    OwnWords own = ownWords(heads);
    SheetPlan plan = new SheetPlan(new SheetRecognizer(vocabulary, own), draft::say);
    List<SheetLayout> layouts = plan.layouts(heads);
    SettingsOutcome settings = settings(layouts, own);
    ReadingRules rules = settings.rules(source.countsFrom1904());
    for (SheetLayout layout : layouts) {
      if (layout.kind() != SheetKind.SETTINGS && layout.kind() != SheetKind.HEADINGS) {
        readSheet(layout, rules, draft.reader(layout.kind()));
      }
    }
    return draft.book(settings.settings());
  }

  /** The first rows of every sheet; a sheet that breaks off gives what it has. */
  private List<SheetHead> heads() throws IOException {
    List<SheetHead> heads = new ArrayList<>();
    List<String> names = source.sheetNames();
    for (int index = 0; index < names.size(); index++) {
      List<Row> rows = new ArrayList<>();
      try {
        source.rows(index, row -> rows.add(narrow(row)) && rows.size() < SheetHead.MOST_ROWS);
      } catch (DamagedSheet damaged) {
        // Said when the sheet is read; one that is not needed may be as it likes.
      }
      heads.add(new SheetHead(names.get(index), index, List.copyOf(rows)));
    }
    return heads;
  }

  private static Row narrow(Row row) {
    List<Cell> cells = row.cells().subList(0, Math.min(WIDEST_HEAD, row.cells().size()));
    return new Row(row.number(), List.copyOf(cells));
  }

  private OwnWords ownWords(List<SheetHead> heads) throws IOException {
    SheetRecognizer plain = new SheetRecognizer(vocabulary, new OwnWords());
    HeadingsRows rows = new HeadingsRows(vocabulary);
    for (SheetHead head : heads) {
      boolean byName = plain.kindByName(head.name()).equals(Optional.of(SheetKind.HEADINGS));
      List<SheetRecognizer.Candidate> found = plain.candidates(head);
      boolean byHeadings = found.size() == 1 && found.get(0).layout().kind() == SheetKind.HEADINGS;
      if (byName || byHeadings) {
        for (SheetRecognizer.Candidate candidate : found) {
          readSheet(candidate.layout(), plainRules(), rows::add);
        }
        break;
      }
    }
    return rows.read();
  }

  private ReadingRules plainRules() {
    return new ReadingRules(
        options.machine(), Optional.empty(), Optional.empty(), Measure.KM, source.countsFrom1904());
  }

  private SettingsOutcome settings(List<SheetLayout> layouts, OwnWords own) throws IOException {
    SettingsRows rows = new SettingsRows(own, draft::say);
    for (SheetLayout layout : layouts) {
      if (layout.kind() == SheetKind.SETTINGS) {
        readSheet(layout, plainRules(), rows::add);
      }
    }
    return rows.read(options.machine(), source.countsFrom1904());
  }

  /** Reads a sheet; once more where merged cells, known only at its end, speak for other rows. */
  private void readSheet(SheetLayout layout, ReadingRules rules, Predicate<RowCells> reader)
      throws IOException {
    BookDraft.Mark mark = draft.mark();
    SheetRows rows = new SheetRows(layout, rules, List.of(), draft::say, reader);
    List<MergedCells> merged = pass(layout, rows);
    if (rows.isChangedBy(merged)) {
      draft.back(mark);
      rows = new SheetRows(layout, rules, merged, draft::say, reader);
      pass(layout, rows);
    }
    draft.add(layout, rows.finish());
  }

  private List<MergedCells> pass(SheetLayout layout, SheetRows rows) throws IOException {
    try {
      return source.rows(
          layout.index(),
          row -> {
            rows.take(row);
            sign();
            return true;
          });
    } catch (DamagedSheet damaged) {
      draft.say(
          Problem.note(
              ProblemKind.PART_DAMAGED,
              CellRef.ofSheet(layout.name()),
              "the sheet is damaged; what follows its last sound row is not read",
              "a sound copy of the workbook"));
      return List.of();
    }
  }

  private void sign() {
    read++;
    if (read % ROWS_BETWEEN_SIGNS == 0) {
      options.progress().accept(read);
    }
  }
}
