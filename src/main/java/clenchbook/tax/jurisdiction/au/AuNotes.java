package clenchbook.tax.jurisdiction.au;

import clenchbook.book.Setting;
import clenchbook.book.Trip;
import clenchbook.tax.expenses.Expenses;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.page.Sentence;
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
          Sentence.of(
              "Income tax, Medicare levy, the small business income tax offset and PAYG"
                  + " instalments"),
          Sentence.of("The private part of GST, phone, power and home"),
          Sentence.of(
              "Superannuation of employees, fringe benefits, capital gains, trading stock below the"
                  + " change that may be left out"));

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
      notes.add(
          Sentence.of(
              "No Tax number stands in the Settings: whether the business is registered can't be"
                  + " told."));
    }
    notes.add(
        Sentence.of(
            "G1 is given with GST in it: put an X in the box that says so. Whole dollars, cents"
                + " left off."));
    LocalDate last = figures.period().last();
    if (figures.basis().cashIncome()) {
      rates
          .find("au/gst", "cash limit", last)
          .ifPresent(
              limit ->
                  notes.add(
                      Sentence.of(
                          "GST goes by the day of receipt and payment (cash), for a turnover below"
                              + " {0}.",
                          limit.value())));
    } else {
      notes.add(Sentence.of("GST goes by the day of the invoice or the purchase."));
    }
    if (!figures.expenses().vehicleRows().isEmpty()) {
      notes.add(
          Sentence.of(
              "GST on a vehicle that is also used privately may be claimed for the business part"
                  + " only; 1B holds all of it."));
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
      notes.add(
          Sentence.of(
              "Cents per kilometre count for a car of a sole trader only. A ute or van made to"
                  + " carry one tonne or more is no car: give it the class 'goods vehicle' in"
                  + " Assets, and its actual cost counts."));
      BigDecimal lost = cars.subtract(counted);
      if (figures.wholeYear() && lost.signum() > 0) {
        rates
            .find("au/vehicle", "cap", figures.period().last())
            .ifPresent(
                cap ->
                    notes.add(
                        Sentence.of(
                            "{0} business kilometres lie beyond the cap of {1} km for each car and"
                                + " are lost.",
                            plain(lost), cap.value())));
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
            ? Sentence.of(
                "{0} business kilometres were driven with a vehicle that is no car: they take no"
                    + " cents per kilometre. Its actual cost may be claimed, but the rows of"
                    + " vehicle cost do not say whose they are, so none is counted here: pick that"
                    + " vehicle's from the purchases.",
                plain(kilometres))
            : Sentence.of(
                "{0} business kilometres were driven with a vehicle that is no car: they take no"
                    + " cents per kilometre, and its actual cost at the business share counts.",
                plain(kilometres)));
  }

  private void carriedOn(Rate rate) {
    notes.add(
        Sentence.of(
            "The {0} per kilometre of {1} was not found published: the last rate stands until a new"
                + " one is determined. Confirm it.",
            rate.value(), figures.input().taxYear().label()));
  }

  private BigDecimal kilometres(List<Trip> trips) {
    return trips.stream().map(vehicles::kilometres).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private void assets(AuAssets assets) {
    if (figures.assets().isEmpty()) {
      return;
    }
    notes.add(
        Sentence.of(
            "Assets that cost less than the limit of their day are written off at once, the others"
                + " go into the small business pool: the simplified rules, which a small business"
                + " may choose. Cost is taken without GST where it comes back."));
    rates
        .ask("au/depreciation", "limit", figures.period().last())
        .filter(rate -> rate.name().contains("announced"))
        .ifPresent(
            rate ->
                notes.add(
                    Sentence.of(
                        "For 2026-27 the limit in law is {0}; 20,000 was announced on 12 May 2026"
                            + " and was not law in June 2026. Confirm it.",
                        rate.value())));
    if (assets.unknown() > 0) {
      notes.add(
          Sentence.of(
              "{0} assets were bought on a day whose limit nobody looked up: they are listed"
                  + " without a deduction.",
              String.valueOf(assets.unknown())));
    }
  }

  private void costs() {
    if (!LineItem.of("superannuation", figures.expenses().items()).isEmpty()) {
      notes.add(
          Sentence.of(
              "Superannuation expenses are those for employees; own contributions are no business"
                  + " deduction."));
    }
    if (!LineItem.of(Expenses.NEVER.get(3), figures.expenses().left()).isEmpty()) {
      notes.add(
          Sentence.of(
              "Meals and entertainment are listed and not counted: entertaining is not deductible,"
                  + " own meals only on a journey overnight."));
    }
  }

  private static String plain(BigDecimal amount) {
    return amount.stripTrailingZeros().toPlainString();
  }
}
