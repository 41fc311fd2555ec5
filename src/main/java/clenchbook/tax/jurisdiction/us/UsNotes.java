package clenchbook.tax.jurisdiction.us;

import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.assets.TakenByMileage;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.page.Sentence;
import clenchbook.tax.rates.RateLookup;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** What a farrier in the United States or a preparer should look at. */
final class UsNotes {
  private final YearFigures figures;
  private final RateLookup rates;
  private final List<String> notes = new ArrayList<>();

  private UsNotes(YearFigures figures, RateLookup rates) {
    this.figures = figures;
    this.rates = rates;
  }

  static final List<Message> NOT_COMPUTED =
      List.of(
          Sentence.of("Income tax; the limit of the deduction for qualified business income"),
          Sentence.of(
              "Section 179, bonus depreciation and the de minimis election: elections, named in the"
                  + " annex with their limits"),
          Sentence.of("Business use of the home, state taxes, health insurance"),
          Sentence.of("The additional Medicare tax and reports to payees"));

  static List<Message> of(YearFigures figures, RateLookup rates) {
    UsNotes notes = new UsNotes(figures, rates);
    notes.gifts();
    notes.vehicle();
    notes.assets();
    notes.us();
    return notes.notes.stream().map(note -> Sentence.of(note)).toList();
  }

  private void vehicle() {
    if (figures.vehicle().byMileage()) {
      notes.add(
          "The vehicle counts by mileage; the actual cost stands beside it. Which may be used, and"
              + " whether one may change, depends on the vehicle's first year; the standard rate is"
              + " barred for a vehicle on which section 179 or accelerated depreciation was taken:"
              + " ask the preparer.");
    }
  }

  private void gifts() {
    List<LineItem> gifts = LineItem.of(UsJurisdiction.GIFTS, figures.expenses().items());
    if (!gifts.isEmpty()) {
      rates
          .find("us/limits", UsJurisdiction.GIFTS, gifts.get(0).date())
          .ifPresent(
              limit ->
                  notes.add(
                      "Gifts to clients count up to "
                          + limit.value()
                          + " a person and year. The book doesn't know the persons, so each"
                          + " purchase counts up to that for one; engraving, packing and post are"
                          + " not counted in, and small things with your name on are outside the"
                          + " limit. A preparer may count more."));
    }
  }

  /** A vehicle that was sold: its basis by mileage, or what to ask where that is not known. */
  private void soldVehicle(DepreciatedAsset vehicle, TakenByMileage taken) {
    String name = vehicle.asset().name();
    if (!taken.known()) {
      notes.add(
          name
              + " was sold and its gain is not computed: "
              + taken.unknown().file()
              + ". Its basis fell by the depreciation part of every business mile since it was"
              + " bought. Ask the preparer, with the business miles of each year.");
    } else {
      notes.add(
          name
              + " was sold: by the standard mileage rate its basis fell by "
              + taken.amount().toPlainString()
              + ", the depreciation part of each year's rate, to "
              + vehicle.remaining().map(BigDecimal::toPlainString).orElse("")
              + "; no percentage table is used for it."
              + (taken.remark().isEmpty() ? "" : " But " + taken.remark().gaps().get(0) + "."));
    }
  }

  private void assets() {
    figures.assets().stream()
        .filter(asset -> asset.asset().sold().filter(figures.period()::holds).isPresent())
        .forEach(asset -> asset.mileage().ifPresent(taken -> soldVehicle(asset, taken)));
    long unsorted = figures.assets().stream().filter(asset -> asset.kind().isEmpty()).count();
    if (unsorted > 0) {
      notes.add(
          unsorted + " assets have a Class that no table knows: listed without depreciation.");
    }
  }

  private void us() {
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
