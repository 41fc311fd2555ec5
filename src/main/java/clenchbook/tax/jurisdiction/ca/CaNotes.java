package clenchbook.tax.jurisdiction.ca;

import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.billed.Billed;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.rates.RateLookup;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** What a Canadian preparer should look at. */
final class CaNotes {
  static final List<Message> NOT_COMPUTED =
      List.of(
          Message.of("canada.notComputed.taxes"),
          Message.of("canada.notComputed.allowance"),
          Message.of("canada.notComputed.home"),
          Message.of("canada.notComputed.provinces"));

  private final YearFigures figures;
  private final RateLookup rates;
  private final List<Message> notes = new ArrayList<>();

  CaNotes(YearFigures figures, RateLookup rates) {
    this.figures = figures;
    this.rates = rates;
  }

  List<Message> all(GstByProvince provinces, CcaClasses classes) {
    basis();
    gst(provinces);
    vehicle();
    assets(classes);
    costs();
    return List.copyOf(notes);
  }

  private void basis() {
    if (figures.basis().cashIncome()) {
      BigDecimal invoiced =
          figures.billed().stream()
              .filter(bill -> bill.isIncome() && figures.period().holds(bill.date()))
              .map(Billed::net)
              .reduce(figures.unit().zero(), BigDecimal::add);
      notes.add(Message.of("canada.note.cash", invoiced));
    }
  }

  private void gst(GstByProvince provinces) {
    if (!GstReturn.isRegistered(figures)) {
      notes.add(Message.of("canada.note.noTaxNumber"));
      return;
    }
    notes.add(Message.of("canada.note.byInvoice"));
    if (provinces.atAnotherRate().signum() != 0) {
      notes.add(Message.of("canada.note.otherRate", provinces.atAnotherRate()));
    }
    if (provinces.nowhere().signum() != 0) {
      notes.add(Message.of("canada.note.noProvince", provinces.nowhere()));
    }
    if (provinces.inQuebec().signum() != 0) {
      notes.add(Message.of("canada.note.quebec", provinces.inQuebec()));
    }
    if (!figures.expenses().vehicleRows().isEmpty()) {
      notes.add(Message.of("canada.note.vehicleTax"));
    }
  }

  private void vehicle() {
    if (figures.expenses().vehicleRows().isEmpty() && figures.log().trips().isEmpty()) {
      return;
    }
    notes.add(
        Message.of(
            "canada.note.vehicle",
            figures.vehicle().share().movePointRight(2).setScale(1, RoundingMode.HALF_UP)));
    LogDuties duties = LogDuties.of(figures.log());
    if (duties.withoutPurpose() + duties.withoutDestination() > 0) {
      notes.add(
          Message.of(
              "canada.note.logLacks",
              duties.trips(),
              duties.withoutPurpose(),
              duties.withoutDestination()));
    }
    if (duties.vehiclesWithoutReadings() > 0 || duties.trips() == 0) {
      notes.add(Message.of("canada.note.noOdometer", figures.vehicle().shareBasis().said()));
    }
  }

  private void assets(CcaClasses classes) {
    if (figures.assets().isEmpty()) {
      return;
    }
    notes.add(Message.of("canada.note.estimate"));
    long unknown =
        figures.assets().stream().map(DepreciatedAsset::kind).filter(String::isEmpty).count();
    if (unknown > 0) {
      notes.add(Message.of("canada.note.unknownClass", unknown));
    }
    boolean ended =
        classes.years().stream()
            .map(CcaClasses.ClassYear::year)
            .anyMatch(year -> year.recapture().add(year.terminalLoss()).signum() > 0);
    if (ended) {
      notes.add(Message.of("canada.note.ended"));
    }
  }

  private void costs() {
    if (!LineItem.of(CaJurisdiction.MEALS_REST, figures.expenses().left()).isEmpty()) {
      rates
          .find("ca/limits", "meals", figures.period().last())
          .ifPresent(rate -> notes.add(Message.of("canada.note.meals", rate.amount())));
    }
  }
}
