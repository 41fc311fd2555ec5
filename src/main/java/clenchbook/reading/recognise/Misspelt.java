package clenchbook.reading.recognise;

import clenchbook.problem.CellRef;
import clenchbook.problem.NearestName;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.reading.words.SheetWords;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A heading that a sheet needs, misspelt: without it the whole sheet is not read.
 *
 * @param at its cell
 * @param written what stands there
 * @param meant the heading that it most likely is
 */
record Misspelt(CellRef at, String written, String meant) {
  private static final int SHORTEST = 3;
  private static final List<String> LANGUAGES = List.of("en", "de", "fr", "es", "nl");

  /** Those of a row, each for a need that no other heading meets. */
  static List<Misspelt> of(
      String sheet, int row, SheetWords words, Headings headings, List<List<String>> missing) {
    Map<String, String> known = new LinkedHashMap<>();
    for (List<String> need : missing) {
      for (String heading : need) {
        LANGUAGES.forEach(
            language -> known.putIfAbsent(words.headingIn(language, heading), heading));
      }
    }
    List<Misspelt> misspelt = new ArrayList<>();
    for (HeadingCell heading : headings.cells()) {
      boolean open =
          heading.heading().isEmpty()
              && HeadingReader.isHeading(heading.cell())
              && heading.cell().shown().strip().length() >= SHORTEST;
      if (open) {
        CellRef at = new CellRef(sheet, row, CellRef.letters(heading.cell().column()));
        NearestName.find(heading.cell().shown(), known.keySet())
            .ifPresent(
                near -> misspelt.add(new Misspelt(at, heading.cell().shown().strip(), near)));
      }
    }
    return misspelt;
  }

  Problem problem() {
    return Problem.warning(
        ProblemKind.HEADING_UNKNOWN,
        at,
        Message.of("sheets.heading.misspelt", written),
        Message.of("sheets.heading.ifMeant", meant),
        written);
  }

  /** The question, for who reads one line alone. */
  Message question() {
    return Message.of("sheets.heading.didYouMean", meant, at.cell());
  }
}
