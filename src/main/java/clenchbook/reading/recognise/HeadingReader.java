package clenchbook.reading.recognise;

import clenchbook.book.understood.How;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.Row;
import clenchbook.reading.words.HeadingEnds;
import clenchbook.reading.words.OwnMeaning;
import clenchbook.reading.words.OwnWords;
import clenchbook.reading.words.SheetWords;
import clenchbook.reading.words.WordForms;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads a row as the headings of a kind of sheet: the farrier's own words first. */
final class HeadingReader {
  static final int LONGEST_HEADING = 80;
  private static final int MOST_KEPT = 20_000;

  private final OwnWords own;
  private final Map<String, WordForms> forms = new HashMap<>();
  private final Map<String, Boolean> ends = new HashMap<>();

  HeadingReader(OwnWords own) {
    this.own = own;
  }

  /** The meanings of a row's cells; of two columns with one meaning the left one has it. */
  Headings read(String sheet, SheetWords words, Row row) {
    List<HeadingCell> cells = new ArrayList<>();
    List<Headings.Twice> twice = new ArrayList<>();
    Map<String, Cell> first = new LinkedHashMap<>();
    Set<String> carried = new HashSet<>();
    for (Cell cell : row.cells()) {
      HeadingCell found = meaning(sheet, words, cell, carried);
      Cell left = found.heading().isEmpty() ? null : first.putIfAbsent(found.heading(), cell);
      if (left != null) {
        twice.add(new Headings.Twice(cell, left, found.heading()));
      }
      cells.add(left == null ? found : HeadingCell.unread(cell));
    }
    cells.replaceAll(cell -> givingWay(sheet, words, cell, first));
    carried.retainAll(first.keySet());
    Optional<String> named =
        own.sheetName(sheet, words.title()).filter(heading -> !first.containsKey(heading));
    return new Headings(cells, twice, carried, named.filter(h -> words.heading(h).isPresent()));
  }

  private HeadingCell meaning(String sheet, SheetWords words, Cell cell, Set<String> carried) {
    if (!isHeading(cell)) {
      return HeadingCell.unread(cell);
    }
    Optional<OwnMeaning> mine = own.meaning(sheet, words.title(), cell.shown());
    if (mine.isPresent()) {
      if (mine.get().leftOut()) {
        return HeadingCell.leftOut(cell);
      }
      Optional<String> heading = words.heading(mine.get().means());
      heading.filter(found -> mine.get().carried()).ifPresent(carried::add);
      return heading
          .map(found -> HeadingCell.read(cell, found, How.HEADINGS))
          .orElseGet(() -> HeadingCell.unread(cell));
    }
    return known(words, cell)
        .map(heading -> HeadingCell.read(cell, heading, how(heading, cell.shown())))
        .orElseGet(() -> HeadingCell.unread(cell));
  }

  static boolean isHeading(Cell cell) {
    return cell instanceof Cell.Text text && text.text().length() <= LONGEST_HEADING;
  }

  /** The heading that a cell is by the program's lists of words. */
  Optional<String> known(SheetWords words, Cell cell) {
    if (!isHeading(cell)) {
      return Optional.empty();
    }
    String written = cell.shown();
    Optional<String> found = known(words, written);
    return found.isPresent() || !hasEnd(written)
        ? found
        : HeadingEnds.find(written, left -> known(words, left)).map(HeadingEnds.Found::heading);
  }

  private Optional<String> known(SheetWords words, String written) {
    return words.heading(forms(written)).or(() -> words.heading(forms(withoutBrackets(written))));
  }

  private boolean hasEnd(String written) {
    Boolean known = ends.get(written);
    if (known == null) {
      known = HeadingEnds.hasEnd(written);
      if (ends.size() < MOST_KEPT) {
        ends.put(written, known);
      }
    }
    return known;
  }

  private How how(String heading, String written) {
    boolean same =
        forms(written).equals(forms(heading))
            || forms(withoutBrackets(written)).equals(forms(heading));
    return same ? How.NAME : How.KNOWN_WORD;
  }

  /**
   * What stands in brackets behind a heading, such as a currency, says nothing about its meaning.
   */
  private static String withoutBrackets(String written) {
    int open = written.indexOf('(');
    return open > 0 && written.strip().endsWith(")") ? written.substring(0, open) : written;
  }

  /** A word that counts only where no other column has its meaning. */
  private HeadingCell givingWay(
      String sheet, SheetWords words, HeadingCell cell, Map<String, Cell> first) {
    if (!cell.heading().isEmpty() || cell.told() || !isHeading(cell.cell())) {
      return cell;
    }
    String written = cell.cell().shown();
    if (own.meaning(sheet, words.title(), written).isPresent()) {
      return cell;
    }
    Optional<String> free =
        words.weakHeadings(forms(withoutBrackets(written))).stream()
            .filter(heading -> first.putIfAbsent(heading, cell.cell()) == null)
            .findFirst();
    return free.map(heading -> HeadingCell.read(cell.cell(), heading, How.KNOWN_WORD)).orElse(cell);
  }

  WordForms forms(String words) {
    WordForms known = forms.get(words);
    if (known == null) {
      known = WordForms.of(words);
      if (forms.size() < MOST_KEPT) {
        forms.put(words, known);
      }
    }
    return known;
  }
}
