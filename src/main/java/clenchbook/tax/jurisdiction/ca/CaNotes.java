package clenchbook.tax.jurisdiction.ca;

import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.billed.Billed;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.page.Sentence;
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
          Sentence.of("Income tax, pension contributions, instalments"),
          Sentence.of(
              "Capital cost allowance: an estimate stands beside the lines; first-year rates of"
                  + " Bill C-15 are named only"),
          Sentence.of("Business use of the home; limits of interest and lease of a passenger car"),
          Sentence.of("Provincial sales taxes, Quebec's among them; the quick method"));

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
      notes.add(
          Sentence.of(
              "Settings ask for the cash basis, but Form T2125 wants income when it is earned and"
                  + " costs when they are owed; cash is for commission earners, farmers and"
                  + " fishers. By invoices the sales come to {0}. Set Tax basis to 'invoiced'.",
              invoiced.toPlainString()));
    }
  }

  private void gst(GstByProvince provinces) {
    if (!GstReturn.isRegistered(figures)) {
      notes.add(
          Sentence.of(
              "No Tax number stands in the Settings: no GST/HST is reckoned, and what was paid on"
                  + " purchases is part of their cost."));
      return;
    }
    notes.add(
        Sentence.of(
            "GST/HST goes by the day of the invoice and the purchase, at the rate of the province"
                + " where the horse stood."));
    if (provinces.atAnotherRate().signum() != 0) {
      notes.add(
          Sentence.of(
              "{0} of sales bear another rate than that of the province of the work: see the table"
                  + " by province.",
              provinces.atAnotherRate().toPlainString()));
    }
    if (provinces.nowhere().signum() != 0) {
      notes.add(
          Sentence.of(
              "{0} of sales have no province: write it, or a postcode, into the address of the"
                  + " place or of the business.",
              provinces.nowhere().toPlainString()));
    }
    if (provinces.inQuebec().signum() != 0) {
      notes.add(
          Sentence.of(
              "{0} of sales were made in Quebec, which has a sales tax and a return of its own:"
                  + " neither is carried.",
              provinces.inQuebec().toPlainString()));
    }
    if (!figures.expenses().vehicleRows().isEmpty()) {
      notes.add(
          Sentence.of(
              "Tax on a vehicle that is also used privately may be credited for the business part"
                  + " only; line 106 holds all of it."));
    }
  }

  private void vehicle() {
    if (figures.expenses().vehicleRows().isEmpty() && figures.log().trips().isEmpty()) {
      return;
    }
    notes.add(
        Sentence.of(
            "There is no money for a kilometre for the self-employed: the vehicle counts at what"
                + " it cost times {0} %, parking and extra business insurance in full.",
            figures
                .vehicle()
                .share()
                .movePointRight(2)
                .setScale(1, RoundingMode.HALF_UP)
                .toPlainString()));
    LogDuties duties = LogDuties.of(figures.log());
    if (duties.withoutPurpose() + duties.withoutDestination() > 0) {
      notes.add(
          Sentence.of(
              "Of {0} business trips {1} lack a purpose and {2} a destination: a log must give"
                  + " both.",
              String.valueOf(duties.trips()),
              String.valueOf(duties.withoutPurpose()),
              String.valueOf(duties.withoutDestination())));
    }
    if (duties.vehiclesWithoutReadings() > 0 || duties.trips() == 0) {
      notes.add(
          Sentence.of(
              "The log lacks an odometer reading at the beginning or the end of the year; the share"
                  + " rests on {0}.",
              figures.vehicle().shareBasis().file()));
    }
  }

  private void assets(CcaClasses classes) {
    if (figures.assets().isEmpty()) {
      return;
    }
    notes.add(
        Sentence.of(
            "Capital cost allowance may be claimed up to a most, or less: the estimate supposes"
                + " that the most was claimed in each year before. What was claimed stands in last"
                + " year's return."));
    long unknown =
        figures.assets().stream().map(DepreciatedAsset::kind).filter(String::isEmpty).count();
    if (unknown > 0) {
      notes.add(
          Sentence.of(
              "{0} assets have a Class that no table knows: write the number of the class.",
              String.valueOf(unknown)));
    }
    boolean ended =
        classes.years().stream()
            .map(CcaClasses.ClassYear::year)
            .anyMatch(year -> year.recapture().add(year.terminalLoss()).signum() > 0);
    if (ended) {
      notes.add(
          Sentence.of(
              "A class ended or fell below zero by sales: what is left belongs to line 9270,"
                  + " what is below to line 8230, save for a car of class 10.1; neither is counted"
                  + " here."));
    }
  }

  private void costs() {
    if (!LineItem.of(CaJurisdiction.MEALS_REST, figures.expenses().left()).isEmpty()) {
      rates
          .find("ca/limits", "meals", figures.period().last())
          .ifPresent(
              rate ->
                  notes.add(Sentence.of("Meals and entertainment count at {0} %.", rate.value())));
    }
  }
}
