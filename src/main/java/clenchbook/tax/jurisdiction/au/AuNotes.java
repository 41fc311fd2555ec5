package clenchbook.tax.jurisdiction.au;

import clenchbook.book.Setting;
import clenchbook.book.Trip;
import clenchbook.tax.expenses.Expenses;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.jurisdiction.page.Sentence;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.vehicle.MileageAllowance;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** What an Australian preparer should look at. */
final class AuNotes {
  static final List<Sentence> NOT_COMPUTED =
      List.of(Sentence.of("not income tax"), Sentence.of("not private"), Sentence.of("not others"));

  private final YearFigures figures;
  private final AuVehicles vehicles;
  private final RateLookup rates;
  private final List<Sentence> notes = new ArrayList<>();

  AuNotes(YearFigures figures, AuVehicles vehicles, RateLookup rates) {
    this.figures = figures;
    this.vehicles = vehicles;
    this.rates = rates;
  }

  List<Sentence> all(AuAssets assets) {
    gst();
    vehicle();
    assets(assets);
    costs();
    return List.copyOf(notes);
  }

  private void gst() {
    if (figures.input().book().settings().text(Setting.TAX_NUMBER).isEmpty()) {
      notes.add(Sentence.of("no tax number"));
    }
    notes.add(Sentence.of("g1 includes gst"));
    LocalDate last = figures.period().last();
    if (figures.basis().cashIncome()) {
      rates
          .find("au/gst", "cash limit", last)
          .ifPresent(limit -> notes.add(Sentence.of("gst cash", limit.value())));
    } else {
      notes.add(Sentence.of("gst invoiced"));
    }
    if (!figures.expenses().vehicleRows().isEmpty()) {
      notes.add(Sentence.of("private gst"));
    }
  }

  private void vehicle() {
    List<Trip> driven = MileageAllowance.driven(figures.log().trips());
    BigDecimal cars = kilometres(driven.stream().filter(vehicles::isCar).toList());
    BigDecimal others = kilometres(driven).subtract(cars);
    BigDecimal counted =
        figures.vehicle().mileage().steps().stream()
            .map(MileageAllowance.Step::distance)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    if (figures.vehicle().byMileage()) {
      notes.add(Sentence.of("car"));
      BigDecimal lost = cars.subtract(counted);
      if (figures.wholeYear() && lost.signum() > 0) {
        rates
            .find("au/vehicle", "cap", figures.period().last())
            .ifPresent(cap -> notes.add(Sentence.of("cap", plain(lost), cap.value())));
      }
      figures.vehicle().mileage().steps().stream()
          .map(MileageAllowance.Step::rate)
          .filter(rate -> rate.checked().isEmpty())
          .forEach(this::carriedOn);
    }
    if (others.signum() > 0) {
      notes.add(Sentence.of("other vehicle", plain(others)));
    }
  }

  private void carriedOn(Rate rate) {
    notes.add(Sentence.of("rate carried on", rate.value(), figures.input().taxYear().label()));
  }

  private BigDecimal kilometres(List<Trip> trips) {
    return trips.stream().map(vehicles::kilometres).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private void assets(AuAssets assets) {
    if (figures.assets().isEmpty()) {
      return;
    }
    notes.add(Sentence.of("write-off"));
    rates
        .ask("au/depreciation", "limit", figures.period().last())
        .filter(rate -> rate.name().contains("announced"))
        .ifPresent(rate -> notes.add(Sentence.of("write-off limit open", rate.value())));
    if (assets.unknown() > 0) {
      notes.add(Sentence.of("no limit known", String.valueOf(assets.unknown())));
    }
  }

  private void costs() {
    if (!LineItem.of("superannuation", figures.expenses().items()).isEmpty()) {
      notes.add(Sentence.of("superannuation"));
    }
    if (!LineItem.of(Expenses.NEVER.get(3), figures.expenses().left()).isEmpty()) {
      notes.add(Sentence.of("not a deduction"));
    }
  }

  private static String plain(BigDecimal amount) {
    return amount.stripTrailingZeros().toPlainString();
  }
}
