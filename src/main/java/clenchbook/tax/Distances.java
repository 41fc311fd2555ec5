package clenchbook.tax;

import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.lines.LineScheme;
import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateUnit;
import clenchbook.tax.vehicle.DistanceUnit;
import clenchbook.tax.vehicle.MileageAllowance;
import clenchbook.tax.vehicle.MileageLog;
import clenchbook.tax.vehicle.Reconstructed;
import clenchbook.texts.BookName;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How far the year's vehicle went, and what a mile of it was worth. */
final class Distances {
  private static final Wording TRIPS =
      new Wording("Trips", new Message("", List.of(new BookName("Trips"))));
  private static final Wording READINGS =
      Wording.of("odometer readings and Trips", "tax.measure.readings");
  private static final Wording PERCENT = Wording.of("percent", "tax.unit.percent");
  private static final Wording UNLOGGED =
      Wording.of("reconstructed from Places, not counted", "tax.measure.reconstructed");

  private final YearFigures figures;
  private final LineScheme lines;

  Distances(YearFigures figures, LineScheme lines) {
    this.figures = figures;
    this.lines = lines;
  }

  /** Distances and the business share. */
  List<Measure> all() {
    List<Measure> all = new ArrayList<>();
    MileageLog log = figures.log();
    Wording basis = log.fromOdometers() ? READINGS : TRIPS;
    all.add(far(Wording.of("business distance", "tax.measure.business"), log.business(), TRIPS));
    all.add(
        far(Wording.of("private distance", "tax.measure.private"), log.privateDistance(), basis));
    all.add(far(Wording.of("total distance", "tax.measure.total"), log.total(), basis));
    all.add(
        new Measure(
            Wording.of("business share", "tax.measure.share"),
            share(),
            PERCENT,
            figures.vehicle().shareBasis()));
    all.add(
        far(
            UNLOGGED,
            Reconstructed.total(figures.reconstructed()),
            Wording.of(
                "each place's own way out and back on days with visits but no business trip",
                "tax.measure.outAndBack")));
    formMiles("vehicle business miles", log.business()).ifPresent(all::add);
    formMiles("vehicle other miles", log.privateDistance()).ifPresent(all::add);
    return all;
  }

  /** A way that nobody had to drive without writing it down needs no line on paper. */
  static boolean isNothing(Measure measure) {
    return measure.what().equals(UNLOGGED) && measure.value().equals("0");
  }

  private Measure far(Wording what, BigDecimal distance, Wording basis) {
    DistanceUnit unit = figures.distanceUnit();
    return new Measure(
        what, distance.toPlainString(), new Wording(unit.word(), unit.said()), basis);
  }

  private String share() {
    return figures
        .vehicle()
        .share()
        .movePointRight(2)
        .setScale(1, RoundingMode.HALF_UP)
        .toPlainString();
  }

  /** The miles that a form asks for; nothing where the regime's form does not. */
  private Optional<Measure> formMiles(String code, BigDecimal distance) {
    return lines
        .row(figures.regime().lineTable(), code)
        .map(
            row ->
                new Measure(
                    Wording.of(
                        "line " + row.value() + ", " + row.name(),
                        "tax.measure.formLine",
                        row.value(),
                        row.said()),
                    rounded(figures.distanceUnit().miles(distance)).toPlainString(),
                    Wording.of("miles", "tax.unit.miles"),
                    new Wording(row.citation(), row.cited())));
  }

  /** The same with each rate's distance, value and amount, for the file. */
  List<Measure> withRates() {
    List<Measure> all = new ArrayList<>(all());
    for (MileageAllowance.Step step : figures.vehicle().mileage().steps()) {
      Rate rate = step.rate();
      String name = rate.name() + " from " + rate.from();
      String far = rate.unit() == RateUnit.PER_KM ? "km" : "miles";
      String distance = rounded(step.distance()).toPlainString();
      all.add(inFile(far + " at " + name, distance, far, "of the whole tax year"));
      all.add(inFile("rate: " + name, rate.value(), rate.unit().text(), rate.citation()));
      all.add(
          inFile(
              "amount at " + name,
              step.amount().toPlainString(),
              "money",
              "of the whole tax year"));
    }
    return all;
  }

  private static Measure inFile(String what, String value, String unit, String basis) {
    return new Measure(Wording.literal(what), value, Wording.literal(unit), Wording.literal(basis));
  }

  static BigDecimal rounded(BigDecimal distance) {
    return distance.setScale(2, RoundingMode.HALF_UP);
  }
}
