package clenchbook.tax.jurisdiction.au;

import clenchbook.book.Setting;
import clenchbook.book.Trip;
import clenchbook.tax.expenses.Expenses;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.vehicle.MileageAllowance;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** What an Australian preparer should look at. */
final class AuNotes {
  static final List<Message> NOT_COMPUTED =
      List.of(
          Message.of("australia.notComputed.taxes"),
          Message.of("australia.notComputed.private"),
          Message.of("australia.notComputed.others"));

  private final YearFigures figures;
  private final AuVehicles vehicles;
  private final RateLookup rates;
  private final List<Message> notes = new ArrayList<>();

  AuNotes(YearFigures figures, AuVehicles vehicles, RateLookup rates) {
    this.figures = figures;
    this.vehicles = vehicles;
    this.rates = rates;
  }

  List<Message> all(AuAssets assets) {
    gst();
    vehicle();
    assets(assets);
    costs();
    return List.copyOf(notes);
  }

  private void gst() {
    if (figures.input().book().settings().text(Setting.TAX_NUMBER).isEmpty()) {
      notes.add(Message.of("australia.note.noTaxNumber"));
    }
    notes.add(Message.of("australia.note.wholeDollars"));
    LocalDate last = figures.period().last();
    if (figures.basis().cashIncome()) {
      rates
          .find("au/gst", "cash limit", last)
          .ifPresent(limit -> notes.add(Message.of("australia.note.byReceipts", limit.amount())));
    } else {
      notes.add(Message.of("australia.note.byInvoice"));
    }
    if (!figures.expenses().vehicleRows().isEmpty()) {
      notes.add(Message.of("australia.note.vehicleTax"));
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
      notes.add(Message.of("australia.note.carsOnly"));
      BigDecimal lost = cars.subtract(counted);
      if (figures.wholeYear() && lost.signum() > 0) {
        rates
            .find("au/vehicle", "cap", figures.period().last())
            .ifPresent(
                cap ->
                    notes.add(
                        Message.of(
                            "australia.note.beyondCap", lost.stripTrailingZeros(), cap.amount())));
      }
      figures.vehicle().mileage().steps().stream()
          .map(MileageAllowance.Step::rate)
          .filter(rate -> rate.checked().isEmpty())
          .forEach(this::carriedOn);
    }
    if (others.signum() > 0) {
      otherVehicle(others);
    }
  }

  /** The rows of vehicle cost name no vehicle, so beside a car's allowance none can count. */
  private void otherVehicle(BigDecimal kilometres) {
    notes.add(
        figures.vehicle().byMileage()
            ? Message.of("australia.note.otherVehicleLost", kilometres.stripTrailingZeros())
            : Message.of("australia.note.otherVehicle", kilometres.stripTrailingZeros()));
  }

  private void carriedOn(Rate rate) {
    notes.add(
        Message.of(
            "australia.note.rateNotFound", rate.amount(), figures.input().taxYear().label()));
  }

  private BigDecimal kilometres(List<Trip> trips) {
    return trips.stream().map(vehicles::kilometres).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private void assets(AuAssets assets) {
    if (figures.assets().isEmpty()) {
      return;
    }
    notes.add(Message.of("australia.note.writtenOff"));
    rates
        .ask("au/depreciation", "limit", figures.period().last())
        .filter(rate -> rate.name().contains("announced"))
        .ifPresent(rate -> notes.add(Message.of("australia.note.limitAnnounced", rate.amount())));
    if (assets.unknown() > 0) {
      notes.add(Message.of("australia.note.unknownLimit", assets.unknown()));
    }
  }

  private void costs() {
    if (!LineItem.of("superannuation", figures.expenses().items()).isEmpty()) {
      notes.add(Message.of("australia.note.superannuation"));
    }
    if (!LineItem.of(Expenses.NEVER.get(3), figures.expenses().left()).isEmpty()) {
      notes.add(Message.of("australia.note.meals"));
    }
  }
}
