package clenchbook.reading;

import clenchbook.book.Book;
import clenchbook.book.Settings;
import clenchbook.book.SheetKind;
import clenchbook.reading.SheetReading.Target;
import clenchbook.reading.cells.Measure;
import clenchbook.reading.cells.ReadingRules;
import clenchbook.reading.cells.RowCells;
import clenchbook.reading.formats.TableFile;
import clenchbook.reading.formats.cells.TableSource;
import clenchbook.reading.formats.cells.UnreadableWorkbook;
import clenchbook.reading.proposal.BookGuess;
import clenchbook.reading.proposal.Proposal;
import clenchbook.reading.recognise.SheetHead;
import clenchbook.reading.recognise.SheetLayout;
import clenchbook.reading.recognise.SheetPlan;
import clenchbook.reading.recognise.SheetRecognizer;
import clenchbook.reading.recognise.TableFinder;
import clenchbook.reading.rows.BookDraft;
import clenchbook.reading.rows.HeadingTax;
import clenchbook.reading.rows.HeadingsRows;
import clenchbook.reading.rows.SettingsOutcome;
import clenchbook.reading.rows.SettingsRows;
import clenchbook.reading.rows.SheetRows;
import clenchbook.reading.words.OwnWords;
import clenchbook.reading.words.Vocabulary;
import clenchbook.texts.Message;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Reads a workbook: finds its sheets, reads the farrier's own words and settings first, since they
 * say how the rest is meant, then every other sheet once, row by row.
 */
public final class BookReader {
  private static final int ROWS_BETWEEN_SIGNS = 5_000;

  private final TableSource source;
  private final ReadOptions options;
  private final Optional<Path> headingsFile;
  private final Vocabulary vocabulary = Vocabulary.load();
  private final BookDraft draft;
  private final SheetReading reading;
  private final Set<Integer> usedSettings = new HashSet<>();
  private final Map<Integer, SheetReading.Done> readAlready = new HashMap<>();
  private boolean headingsFromFile;
  private int read;

  private BookReader(TableSource source, Path book, ReadOptions options) {
    this.source = source;
    this.options = options;
    this.headingsFile = HeadingsFile.of(book, options.headings());
    this.draft = new BookDraft(source.sheetNames());
    this.reading = new SheetReading(source, draft, this::sign);
  }

  /**
   * Reads a workbook of any accepted format, without changing it.
   *
   * @param file the workbook, a folder of CSV files, or one of them
   * @param options password, the machine's locale, the file of headings, progress
   * @return the book with its problems
   * @throws UnreadableWorkbook when it can't be used at all, with the reason in one line
   * @throws IOException when the disk fails
   */
  public static ReadResult read(Path file, ReadOptions options) throws IOException {
    try (TableSource source = TableFile.open(file, options.password())) {
      String sum = FileSum.sha256(file);
      return new BookReader(source, file, options).read(sum);
    } catch (OutOfMemoryError tooLarge) {
      throw new UnreadableWorkbook(Message.of("formats.tooLarge"));
    }
  }

  /**
   * Guesses what the sheets and headings mean that are not known.
   *
   * @param file the workbook, a folder of CSV files, or one of them
   * @param options as for {@link #read}
   * @return a row for each of them, in the order of the book
   * @throws UnreadableWorkbook when it can't be used at all, with the reason in one line
   * @throws IOException when the disk fails
   */
  public static List<Proposal> propose(Path file, ReadOptions options) throws IOException {
    try (TableSource source = TableFile.open(file, options.password())) {
      BookReader reader = new BookReader(source, file, options);
      List<SheetHead> heads = SheetHeads.of(source);
      OwnWords own = reader.ownWords(heads);
      SheetRecognizer recognizer = new SheetRecognizer(reader.vocabulary, own);
      List<SheetLayout> layouts = new SheetPlan(recognizer, problem -> {}).layouts(heads);
      return BookGuess.of(
          new TableGathering(source, recognizer, own).tables(heads, layouts), reader.vocabulary);
    } catch (OutOfMemoryError tooLarge) {
      throw new UnreadableWorkbook(Message.of("formats.tooLarge"));
    }
  }

  private ReadResult read(String sum) throws IOException {
    List<SheetHead> heads = SheetHeads.of(source);
    OwnWords own = ownWords(heads);
    SheetRecognizer recognizer = new SheetRecognizer(vocabulary, own);
    SheetPlan plan = new SheetPlan(recognizer, draft::say);
    TreeMap<Integer, List<SheetLayout>> bySheet = new TreeMap<>();
    plan.layouts(heads)
        .forEach(
            layout ->
                bySheet.computeIfAbsent(layout.index(), unused -> new ArrayList<>()).add(layout));
    TableFinder finder = new TableFinder(recognizer);
    SettingsOutcome settings = settings(heads, bySheet, plan, finder, own);
    List<SheetLayout> layouts = bySheet.values().stream().flatMap(List::stream).toList();
    Settings inForce = settings.settings(NamesOfBook.of(layouts, settings));
    options.language().accept(inForce.texts());
    ReadingRules rules = settings.rules(source.countsFrom1904());
    UnderstoodBook understood =
        new UnderstoodBook(draft::say, UnderstoodBook.named(draft.problems()));
    List<String> hidden = new ArrayList<>();
    for (SheetHead head : heads) {
      List<SheetLayout> tables = bySheet.getOrDefault(head.index(), List.of());
      if (tables.isEmpty()) {
        understood.addUnread(head);
      } else {
        boolean isHidden = source.isHidden(head.index());
        understood.add(readSheet(sheet(head, tables, bySheet, finder), rules, plan), isHidden);
        if (isHidden) {
          hidden.add(head.name());
        }
      }
    }
    draft.sayExamples();
    Book book = draft.book(inForce);
    HeadingTax.say(layouts, book, draft::say);
    Optional<String> fromFile =
        headingsFromFile ? headingsFile.map(HeadingsFile::name) : Optional.empty();
    return new ReadResult(book, draft.problems(), understood.understood(hidden, fromFile), sum);
  }

  /**
   * The farrier's own words: the sheet's, else the file's; a file that was asked for adds to it.
   */
  private OwnWords ownWords(List<SheetHead> heads) throws IOException {
    SheetRecognizer plain = new SheetRecognizer(vocabulary, new OwnWords());
    Optional<SheetLayout> sheet = headingsSheet(heads, plain);
    headingsFromFile =
        headingsFile.isPresent() && (sheet.isEmpty() || options.headings().isPresent());
    HeadingsRows rows = new HeadingsRows(vocabulary, headingsFromFile);
    if (sheet.isPresent()) {
      SheetHead head = heads.get(sheet.get().index());
      SheetPlan nothing = new SheetPlan(plain, problem -> {});
      TableFinder finder = new TableFinder(plain);
      Map<Integer, List<SheetLayout>> alone = Map.of(head.index(), List.of(sheet.get()));
      SheetReading.Sheet only = sheet(head, List.of(sheet.get()), alone, finder);
      readAlready.put(
          head.index(),
          reading.read(only, plainRules(), nothing, each -> new Target(rows::add, draft::say)));
    }
    if (headingsFromFile) {
      HeadingsFile.read(headingsFile.get(), plain, plainRules(), rows, draft::say);
    }
    return rows.read();
  }

  private static Optional<SheetLayout> headingsSheet(List<SheetHead> heads, SheetRecognizer plain) {
    for (SheetHead head : heads) {
      boolean byName = plain.kindByName(head.name()).equals(Optional.of(SheetKind.HEADINGS));
      List<SheetRecognizer.Candidate> found = plain.candidates(head);
      boolean byHeadings = found.size() == 1 && found.get(0).layout().kind() == SheetKind.HEADINGS;
      if (byHeadings) {
        return Optional.of(found.get(0).layout());
      }
      if (byName) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  private ReadingRules plainRules() {
    return new ReadingRules(
        options.machine(), Optional.empty(), Optional.empty(), Measure.KM, source.countsFrom1904());
  }

  private SettingsOutcome settings(
      List<SheetHead> heads,
      Map<Integer, List<SheetLayout>> bySheet,
      SheetPlan plan,
      TableFinder finder,
      OwnWords own)
      throws IOException {
    SettingsRows rows = new SettingsRows(own, draft::say);
    Function<SheetLayout, Target> targets =
        layout ->
            layout.kind() == SheetKind.SETTINGS
                ? new Target(row -> setting(rows, row), draft::say)
                : Target.none();
    for (SheetHead head : heads) {
      List<SheetLayout> tables = bySheet.getOrDefault(head.index(), List.of());
      if (tables.stream().anyMatch(table -> table.kind() == SheetKind.SETTINGS)) {
        SheetReading.Sheet sheet = sheet(head, tables, bySheet, finder).plannedOnly();
        SheetReading.Done done = reading.read(sheet, plainRules(), plan, targets);
        if (tables.stream().allMatch(table -> table.kind() == SheetKind.SETTINGS)) {
          readAlready.put(head.index(), done);
        }
      }
    }
    return rows.read(options.machine(), source.countsFrom1904(), options.texts());
  }

  private boolean setting(SettingsRows rows, RowCells row) {
    boolean used = rows.add(row);
    if (used) {
      usedSettings.add(row.source().row());
    }
    return used;
  }

  private static SheetReading.Sheet sheet(
      SheetHead head,
      List<SheetLayout> tables,
      Map<Integer, List<SheetLayout>> bySheet,
      TableFinder finder) {
    Set<SheetKind> elsewhere = EnumSet.noneOf(SheetKind.class);
    bySheet.forEach(
        (index, others) -> {
          if (index != head.index()) {
            others.forEach(other -> elsewhere.add(other.kind()));
          }
        });
    return new SheetReading.Sheet(head, tables, finder, elsewhere);
  }

  private List<SheetRows> readSheet(SheetReading.Sheet sheet, ReadingRules rules, SheetPlan plan)
      throws IOException {
    SheetReading.Done before = readAlready.get(sheet.head().index());
    SheetReading.Done done =
        before == null ? reading.read(sheet, rules, plan, this::target) : before;
    draft.add(sheet.head().index(), done.control(), done.tables());
    return done.tables();
  }

  /** Settings among other tables were read before all else; here they are only counted. */
  private Target target(SheetLayout layout) {
    return layout.kind() == SheetKind.SETTINGS
        ? new Target(row -> usedSettings.contains(row.source().row()), problem -> {})
        : new Target(draft.reader(layout.kind()), draft::say);
  }

  private void sign() {
    read++;
    if (read % ROWS_BETWEEN_SIGNS == 0) {
      options.progress().accept(read);
    }
  }
}
