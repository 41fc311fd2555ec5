package clenchbook.tax.jurisdiction.us;

import clenchbook.tax.figures.YearFigures;
import java.util.ArrayList;
import java.util.List;

/** What a farrier in the United States or a preparer should look at. */
final class UsNotes {
  private final YearFigures figures;
  private final List<String> notes = new ArrayList<>();

  private UsNotes(YearFigures figures) {
    this.figures = figures;
  }

  static List<String> of(YearFigures figures) {
    UsNotes notes = new UsNotes(figures);
    notes.vehicle();
    notes.assets();
    notes.us();
    return List.copyOf(notes.notes);
  }

  private void vehicle() {
    if (figures.vehicle().byMileage()) {
      notes.add(
          "The vehicle counts by mileage; the actual cost stands beside it. Which may be used, and"
              + " whether one may change, depends on the vehicle's first year: ask the preparer.");
    }
  }

  private void assets() {
    long unsorted = figures.assets().stream().filter(asset -> asset.kind().isEmpty()).count();
    if (unsorted > 0) {
      notes.add(
          unsorted + " assets have a Class that no table knows: listed without depreciation.");
    }
  }

  private void us() {
    notes.add(
        "Section 179 and bonus depreciation are named, not computed: they are elections. So are the"
            + " deduction for qualified business income, state taxes, health insurance and the"
            + " additional Medicare tax.");
    notes.add(
        "Driving between home and a regular place of work is commuting unless home is the principal"
            + " place of business; the log can't tell. Ask the preparer.");
    if (!figures.wholeYear()) {
      notes.add(
          "A quarter leaves out depreciation and self-employment tax, which are figured for the"
              + " whole year.");
    }
    if (figures.assets().stream().anyMatch(asset -> asset.gain(figures.period()).isPresent())) {
      notes.add(
          "An asset was sold: its gain or loss stands in the asset register and belongs on Form"
              + " 4797, not on Schedule C.");
    }
    boolean midQuarter =
        figures.assets().stream()
            .anyMatch(
                asset ->
                    asset.convention().startsWith("quarter")
                        && figures.input().taxYear().days().holds(asset.asset().bought()));
    if (midQuarter) {
      notes.add(
          "More than the test's share of this year's assets came in its last quarter: the"
              + " mid-quarter tables count.");
    }
  }
}
