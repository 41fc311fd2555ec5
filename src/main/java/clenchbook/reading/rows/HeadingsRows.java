package clenchbook.reading.rows;

import clenchbook.book.SheetKind;
import clenchbook.problem.NearestName;
import clenchbook.problem.ProblemKind;
import clenchbook.reading.cells.RowCells;
import clenchbook.reading.cells.SoundCells;
import clenchbook.reading.words.OwnMeaning;
import clenchbook.reading.words.OwnWords;
import clenchbook.reading.words.Vocabulary;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The rows of Headings: the farrier's own words. All are gathered, then sheets are renamed first.
 */
public final class HeadingsRows {
  private static final int MOST_ROWS = 5_000;
  private static final String FORMULA_MARKS = "=+-@\uFF1D\uFF0B\uFF0D\uFF20";
  private static final Set<String> GIVEN_BY_NAME = Set.of("Owner", "Horse", "Place");

  private final Vocabulary vocabulary;
  private final boolean proposed;
  private final OwnWords own = new OwnWords();
  private final List<RowCells> rows = new ArrayList<>();

  /**
   * Makes an empty list.
   *
   * @param proposed whether the rows stand in a file that the program may have written: there a
   *     blank Means is nothing odd
   */
  public HeadingsRows(Vocabulary vocabulary, boolean proposed) {
    this.vocabulary = vocabulary;
    this.proposed = proposed;
  }

  /** Takes one row; true when it says something. */
  public boolean add(RowCells row) {
    boolean says = row.has("Means") && rows.size() < MOST_ROWS;
    if (says) {
      rows.add(row);
    } else if (!proposed) {
      Message problem = Message.of("cells.missing", row.called("Means"));
      row.warn(ProblemKind.NAME_MISSING, "Means", problem, Message.of("rows.headings.some"));
    }
    return says;
  }

  public OwnWords read() {
    rows.stream().filter(row -> written(row, "Mine").isEmpty()).forEach(this::rename);
    rows.stream().filter(row -> !written(row, "Mine").isEmpty()).forEach(this::heading);
    return own;
  }

  /** A cell without the mark that keeps a spreadsheet from taking it for a formula. */
  private static String written(RowCells row, String heading) {
    String text = row.text(heading);
    boolean marked =
        text.length() > 1 && text.charAt(0) == '\'' && FORMULA_MARKS.indexOf(text.charAt(1)) >= 0;
    return marked ? text.substring(1) : text;
  }

  private void rename(RowCells row) {
    String means = row.text("Means");
    Optional<SheetKind> kind = kind(means);
    if (kind.isPresent()) {
      own.rename(written(row, "Sheet"), kind.get());
    } else {
      List<String> titles = new ArrayList<>();
      for (SheetKind each : SheetKind.values()) {
        titles.add(vocabulary.of(each).title());
      }
      Message problem = Message.of("rows.headings.noSheet", SoundCells.brief(means));
      row.warn(ProblemKind.HEADING_UNKNOWN, "Means", problem, offer(means, titles));
    }
  }

  private Optional<SheetKind> kind(String means) {
    List<SheetKind> called = vocabulary.sheetsCalled(means);
    return vocabulary
        .canonicalSheet(means)
        .or(() -> called.size() == 1 ? Optional.of(called.get(0)) : Optional.empty());
  }

  private void heading(RowCells row) {
    String sheet = written(row, "Sheet");
    String means = row.text("Means");
    Optional<SheetKind> kind = own.kindOf(sheet).or(() -> vocabulary.canonicalSheet(sheet));
    List<SheetKind> kinds = kind.map(List::of).orElse(List.of(SheetKind.values()));
    own.add(sheet, written(row, "Mine"), means);
    OwnMeaning meaning = OwnMeaning.of(means);
    boolean understood =
        OwnMeaning.isSheetName(written(row, "Mine"))
            ? GIVEN_BY_NAME.contains(means)
            : meaning.leftOut()
                || SettingsRows.isSetting(means)
                || kinds.stream()
                    .anyMatch(each -> vocabulary.of(each).heading(meaning.means()).isPresent());
    if (!understood) {
      Set<String> known = new HashSet<>();
      kinds.forEach(each -> known.addAll(vocabulary.of(each).canonicalHeadings()));
      Message problem = Message.of("rows.headings.noHeading", SoundCells.brief(means));
      row.warn(ProblemKind.HEADING_UNKNOWN, "Means", problem, offer(means, List.copyOf(known)));
    }
  }

  private static Message offer(String means, List<String> known) {
    return NearestName.find(means, known)
        .map(near -> Message.of("sheets.heading.ifMeant", near))
        .orElseGet(() -> Message.of("rows.headings.aName"));
  }
}
