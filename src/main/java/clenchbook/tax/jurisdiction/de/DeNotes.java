package clenchbook.tax.jurisdiction.de;

import clenchbook.book.PaymentKind;
import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.income.IncomePart;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.page.Sentence;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.vehicle.MileageAllowance;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a German preparer should look at. */
final class DeNotes {
  static final List<Message> NOT_COMPUTED =
      List.of(
          Sentence.of("Income tax, trade tax, social insurance"),
          Sentence.of(
              "VAT on private use, the special prepayment, the year's VAT return as a whole"),
          Sentence.of("Declining balance, the investment deduction and other elections"),
          Sentence.of(
              "Meal allowances: the book doesn't know how long you were away (limits in the"
                  + " annex)"),
          Sentence.of("The room at home and its daily allowance"));

  private final YearFigures figures;
  private final DeVehicles vehicles;
  private final SmallBusiness small;
  private final RateLookup rates;
  private final List<Message> notes = new ArrayList<>();

  DeNotes(YearFigures figures, DeVehicles vehicles, SmallBusiness small, RateLookup rates) {
    this.figures = figures;
    this.vehicles = vehicles;
    this.small = small;
    this.rates = rates;
  }

  List<Message> all(BigDecimal elsewhere) {
    if (small.inYear(figures.input().taxYear().year())) {
      notes.add(
          Sentence.of(
              "No sale bears tax: the year is that of a small business (§ 19 UStG). Purchases"
                  + " count with their tax, and no advance return is due."));
    } else {
      tax(elsewhere);
    }
    lineNumbers();
    vehicle();
    assets();
    costs();
    return List.copyOf(notes);
  }

  private void tax(BigDecimal elsewhere) {
    notes.add(
        Sentence.of(
            "Costs stand without tax; tax received, paid on purchases and paid over are lines of"
                + " their own, as the form wants it."));
    LocalDate last = figures.period().last();
    if (AdvanceReturns.byReceipts(figures)) {
      rates
          .find("de/vat", "receipts limit", last)
          .ifPresent(
              limit ->
                  notes.add(
                      Sentence.of(
                          "VAT goes by receipts (§ 20 UStG), which the tax office allows on"
                              + " application up to a turnover of {0} in the year before. Input tax"
                              + " goes by the day of the purchase.",
                          limit.value())));
    } else {
      notes.add(
          Sentence.of("VAT goes by the day of the invoice, input tax by that of the purchase."));
    }
    if (!figures.expenses().vehicleRows().isEmpty()) {
      notes.add(
          Sentence.of("Input tax on a vehicle that is also used privately is held in full in 66."));
    }
    if (elsewhere.signum() != 0) {
      notes.add(
          Sentence.of(
              "{0} of sales without tax stand under no code of the advance return: the preparer"
                  + " says which (43, 41, 21, 45, 60).",
              elsewhere.toPlainString()));
    }
    untaxedMoney();
  }

  /** Money of which the program takes no tax although the law may. */
  private void untaxedMoney() {
    BigDecimal tips =
        figures.income().receipts().stream()
            .filter(receipt -> receipt.kind() == PaymentKind.TIP)
            .map(receipt -> figures.unit().round(receipt.amount()))
            .reduce(figures.unit().zero(), BigDecimal::add);
    if (tips.signum() != 0) {
      notes.add(
          Sentence.of(
              "Tips of {0} count as income without tax; for the self-employed they are part of the"
                  + " price, and VAT is due within them. Ask the preparer.",
              tips.toPlainString()));
    }
    List<LineItem> held = figures.income().parts().getOrDefault(IncomePart.NO_BILL, List.of());
    if (!held.isEmpty()) {
      notes.add(
          Sentence.of(
              "{0} received pays no bill yet: VAT on advance payments is due when they come, and"
                  + " none is taken here.",
              LineItem.sum(held).toPlainString()));
    }
  }

  private void lineNumbers() {
    boolean numbered =
        rates
            .ask("de/euer", "profit", figures.input().taxYear().last())
            .filter(rate -> Character.isDigit(rate.value().charAt(0)))
            .isPresent();
    if (!numbered) {
      notes.add(
          Sentence.of(
              "The form's line numbers change each year and are not given for {0}; the names are"
                  + " those of the form of 2025.",
              figures.input().taxYear().label()));
    }
  }

  private void vehicle() {
    if (figures.vehicle().byMileage()) {
      String rate =
          figures.vehicle().mileage().steps().stream()
              .map(MileageAllowance.Step::rate)
              .map(Rate::value)
              .distinct()
              .reduce((one, other) -> one + ", " + other)
              .orElse("");
      notes.add(
          Sentence.of(
              "Assets hold no vehicle used more than half for business: each business kilometre"
                  + " driven counts {0}, with all running costs in it and parking beside it. 0.38"
                  + " is the rate for commuting and not for rounds.",
              rate));
    } else if (vehicles.ownedIn(figures.input().taxYear().days())) {
      notes.add(
          Sentence.of(
              "The vehicle is an asset of the business: its cost and depreciation count at the"
                  + " business share of {0} %. The form wants them in full, and private use as a"
                  + " withdrawal, by the log or 1 % of the list price a month, with VAT on it.",
              figures
                  .vehicle()
                  .share()
                  .movePointRight(2)
                  .setScale(1, RoundingMode.HALF_UP)
                  .toPlainString()));
    }
  }

  private void assets() {
    if (figures.assets().isEmpty()) {
      return;
    }
    Optional<Rate> low = rates.ask("de/depreciation", "low value", figures.period().last());
    Optional<Rate> list = rates.ask("de/depreciation", "no list", figures.period().last());
    if (low.isPresent() && list.isPresent()) {
      notes.add(
          Sentence.of(
              "Assets up to {0} without tax are an expense at once, above {1} with a list of them;"
                  + " the rest goes straight line by the month over its useful life.",
              low.get().value(), list.get().value()));
    }
    long unknown =
        figures.assets().stream()
            .filter(DeAssets::isOfBusiness)
            .filter(asset -> asset.kind().isEmpty())
            .count();
    if (unknown > 0) {
      notes.add(
          Sentence.of(
              "{0} assets have no useful life here and no depreciation: write the number of years"
                  + " into their Class.",
              String.valueOf(unknown)));
    }
    if (figures.assets().stream().map(DepreciatedAsset::line).anyMatch(DeAssets.POOL::equals)) {
      notes.add(
          Sentence.of(
              "A pool takes all assets of its year between 250.01 and 1,000 without tax, or"
                  + " none."));
    }
    if (!figures.wholeYear()) {
      notes.add(Sentence.of("A quarter leaves out depreciation and assets sold."));
    }
  }

  private void costs() {
    if (!LineItem.of(DeJurisdiction.GIFTS_ABOVE, figures.expenses().left()).isEmpty()
        || !LineItem.of(DeJurisdiction.GIFTS, figures.expenses().items()).isEmpty()) {
      notes.add(
          Sentence.of(
              "Gifts count up to 50 a person and year, above it not at all (to 2023: 35). The book"
                  + " doesn't know the persons: each purchase is taken for one. List them apart."));
    }
    if (!LineItem.of(DeJurisdiction.MEALS, figures.expenses().items()).isEmpty()) {
      notes.add(
          Sentence.of(
              "Meals with clients count at 70 %; the input tax on them comes back in full."));
    }
  }
}
