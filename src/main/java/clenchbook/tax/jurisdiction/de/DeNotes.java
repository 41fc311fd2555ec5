package clenchbook.tax.jurisdiction.de;

import clenchbook.book.PaymentKind;
import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.income.IncomePart;
import clenchbook.tax.lines.LineItem;
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
          Message.of("germany.notComputed.taxes"),
          Message.of("germany.notComputed.privateUse"),
          Message.of("germany.notComputed.elections"),
          Message.of("germany.notComputed.meals"),
          Message.of("germany.notComputed.home"));

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
      notes.add(Message.of("germany.note.smallBusiness"));
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
    notes.add(Message.of("germany.note.withoutTax"));
    LocalDate last = figures.period().last();
    if (AdvanceReturns.byReceipts(figures)) {
      rates
          .find("de/vat", "receipts limit", last)
          .ifPresent(limit -> notes.add(Message.of("germany.note.byReceipts", limit.amount())));
    } else {
      notes.add(Message.of("germany.note.byInvoice"));
    }
    if (!figures.expenses().vehicleRows().isEmpty()) {
      notes.add(Message.of("germany.note.vehicleTax"));
    }
    if (elsewhere.signum() != 0) {
      notes.add(Message.of("germany.note.elsewhere", elsewhere));
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
      notes.add(Message.of("germany.note.tips", tips));
    }
    List<LineItem> held = figures.income().parts().getOrDefault(IncomePart.NO_BILL, List.of());
    if (!held.isEmpty()) {
      notes.add(Message.of("germany.note.advancePayments", LineItem.sum(held)));
    }
  }

  private void lineNumbers() {
    boolean numbered =
        rates
            .ask("de/euer", "profit", figures.input().taxYear().last())
            .filter(rate -> Character.isDigit(rate.value().charAt(0)))
            .isPresent();
    if (!numbered) {
      notes.add(Message.of("germany.note.lineNumbers", figures.input().taxYear().label()));
    }
  }

  private void vehicle() {
    if (figures.vehicle().byMileage()) {
      List<BigDecimal> each =
          figures.vehicle().mileage().steps().stream()
              .map(MileageAllowance.Step::rate)
              .map(Rate::amount)
              .distinct()
              .toList();
      notes.add(Message.of("germany.note.kilometres", each));
    } else if (vehicles.ownedIn(figures.input().taxYear().days())) {
      notes.add(
          Message.of(
              "germany.note.businessVehicle",
              figures.vehicle().share().movePointRight(2).setScale(1, RoundingMode.HALF_UP)));
    }
  }

  private void assets() {
    if (figures.assets().isEmpty()) {
      return;
    }
    Optional<Rate> low = rates.ask("de/depreciation", "low value", figures.period().last());
    Optional<Rate> list = rates.ask("de/depreciation", "no list", figures.period().last());
    if (low.isPresent() && list.isPresent()) {
      notes.add(Message.of("germany.note.lowValue", low.get().amount(), list.get().amount()));
    }
    long unknown =
        figures.assets().stream()
            .filter(DeAssets::isOfBusiness)
            .filter(asset -> asset.kind().isEmpty())
            .count();
    if (unknown > 0) {
      notes.add(Message.of("germany.note.noUsefulLife", unknown));
    }
    if (figures.assets().stream().map(DepreciatedAsset::line).anyMatch(DeAssets.POOL::equals)) {
      notes.add(Message.of("germany.note.pool"));
    }
    if (!figures.wholeYear()) {
      notes.add(Message.of("germany.note.quarter"));
    }
  }

  private void costs() {
    if (!LineItem.of(DeJurisdiction.GIFTS_ABOVE, figures.expenses().left()).isEmpty()
        || !LineItem.of(DeJurisdiction.GIFTS, figures.expenses().items()).isEmpty()) {
      notes.add(Message.of("germany.note.gifts"));
    }
    if (!LineItem.of(DeJurisdiction.MEALS, figures.expenses().items()).isEmpty()) {
      notes.add(Message.of("germany.note.clientMeals"));
    }
  }
}
