package clenchbook.tax.jurisdiction.us;

import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.assets.TakenByMileage;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.rates.RateLookup;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** What a farrier in the United States or a preparer should look at. */
final class UsNotes {
  private final YearFigures figures;
  private final RateLookup rates;
  private final List<Message> notes = new ArrayList<>();

  private UsNotes(YearFigures figures, RateLookup rates) {
    this.figures = figures;
    this.rates = rates;
  }

  static final List<Message> NOT_COMPUTED =
      List.of(
          Message.of("america.notComputed.incomeTax"),
          Message.of("america.notComputed.elections"),
          Message.of("america.notComputed.others"),
          Message.of("america.notComputed.medicare"));

  static List<Message> of(YearFigures figures, RateLookup rates) {
    UsNotes notes = new UsNotes(figures, rates);
    notes.gifts();
    notes.vehicle();
    notes.assets();
    notes.us();
    return List.copyOf(notes.notes);
  }

  private void add(String key, Object... gaps) {
    notes.add(Message.of(key, gaps));
  }

  private void vehicle() {
    if (figures.vehicle().byMileage()) {
      add("america.note.vehicle");
    }
  }

  private void gifts() {
    List<LineItem> gifts = LineItem.of(UsJurisdiction.GIFTS, figures.expenses().items());
    if (!gifts.isEmpty()) {
      rates
          .find("us/limits", UsJurisdiction.GIFTS, gifts.get(0).date())
          .ifPresent(limit -> add("america.note.gifts", limit.amount()));
    }
  }

  /** A vehicle that was sold: its basis by mileage, or what to ask where that is not known. */
  private void soldVehicle(DepreciatedAsset vehicle, TakenByMileage taken) {
    String name = vehicle.asset().name();
    if (!taken.known()) {
      add("america.note.gainUnknown", name, taken.unknown().said());
    } else {
      BigDecimal left = vehicle.remaining().orElseThrow();
      Message sold = Message.of("america.note.sold", name, taken.amount(), left);
      notes.add(
          taken.remark().isEmpty() ? sold : Message.joined(" ", List.of(sold, taken.remark())));
    }
  }

  private void assets() {
    figures.assets().stream()
        .filter(asset -> asset.asset().sold().filter(figures.period()::holds).isPresent())
        .forEach(asset -> asset.mileage().ifPresent(taken -> soldVehicle(asset, taken)));
    long unsorted = figures.assets().stream().filter(asset -> asset.kind().isEmpty()).count();
    if (unsorted > 0) {
      add("america.note.unsorted", unsorted);
    }
  }

  private void us() {
    add("america.note.commuting");
    if (!figures.wholeYear()) {
      add("america.note.quarter");
    }
    if (figures.assets().stream().anyMatch(asset -> asset.gain(figures.period()).isPresent())) {
      add("america.note.assetSold");
    }
    if (figures.assets().stream().anyMatch(this::isOfThisYearsQuarters)) {
      add("america.note.midQuarter");
    }
  }

  private boolean isOfThisYearsQuarters(DepreciatedAsset asset) {
    return figures.input().taxYear().days().holds(asset.asset().bought())
        && Convention.of(asset).filter(Convention::isMidQuarter).isPresent();
  }
}
