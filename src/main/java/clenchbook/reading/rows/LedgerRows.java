package clenchbook.reading.rows;

import clenchbook.book.Asset;
import clenchbook.book.Payment;
import clenchbook.book.PaymentKind;
import clenchbook.book.Purchase;
import clenchbook.book.StockCount;
import clenchbook.book.Trip;
import clenchbook.book.Unit;
import clenchbook.problem.ProblemKind;
import clenchbook.problem.Severity;
import clenchbook.reading.cells.RowCells;
import clenchbook.reading.words.Choices;
import clenchbook.reading.words.PrivateUse;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/** Rows of Trips, Purchases, Payments, Assets and Counts: each needs its day. */
final class LedgerRows {
  private static final Message PAYMENT_KINDS = Message.of("rows.choice.payment");

  private LedgerRows() {}

  private static <T> Optional<T> unlessHeld(RowCells row, T record) {
    return row.held() ? Optional.empty() : Optional.of(record);
  }

  /** The trip; empty when the row is held back. */
  static Optional<Trip> trip(RowCells row) {
    LocalDate date = row.requiredDate("Date").orElse(LocalDate.EPOCH);
    return unlessHeld(
        row,
        new Trip(
            row.source(),
            date,
            row.name("From"),
            row.name("To"),
            row.distance("Distance"),
            row.distance("Odometer start"),
            row.distance("Odometer end"),
            row.minutes("Drive min"),
            PrivateUse.canonical(row.name("Purpose")),
            row.name("Vehicle")));
  }

  /** The purchase; empty when the row is held back. */
  static Optional<Purchase> purchase(RowCells row) {
    LocalDate date = row.requiredDate("Date").orElse(LocalDate.EPOCH);
    Unit unit = QuantityCell.unit(row);
    Purchase purchase =
        new Purchase(
            row.source(),
            date,
            row.name("Supplier"),
            row.name("Item"),
            row.size("Size"),
            QuantityCell.bought(row, unit),
            unit,
            PrivateUse.canonical(row.name("Category")),
            row.money("Net"),
            row.money("Tax"),
            row.money("Gross"),
            row.date("Paid on"),
            row.text("Receipt"));
    if (!row.has("Net") && !row.has("Gross")) {
      String heading = row.source().has("Net") ? "Net" : "Gross";
      Message problem = Message.of("rows.purchase.noAmount");
      Message expected = Message.of("cells.money.amount");
      row.warn(ProblemKind.MONEY_UNREADABLE, heading, problem, expected);
    }
    return unlessHeld(row, purchase);
  }

  /** The payment; empty when the row is held back. */
  static Optional<Payment> payment(RowCells row) {
    LocalDate date = row.requiredDate("Date").orElse(LocalDate.EPOCH);
    Payment payment =
        new Payment(
            row.source(),
            date,
            row.payer("Owner"),
            amount(row),
            row.text("Invoice"),
            row.choice("Kind", Choices.PAYMENT, PAYMENT_KINDS).orElse(PaymentKind.PAYMENT),
            row.name("How"),
            row.text("Reference"));
    return unlessHeld(row, payment);
  }

  private static BigDecimal amount(RowCells row) {
    Optional<BigDecimal> amount = row.money("Amount");
    if (!row.has("Amount")) {
      Message problem = Message.of("cells.missing", row.called("Amount"));
      Message expected = Message.of("cells.money.amount");
      row.say(Severity.HELD, ProblemKind.MONEY_UNREADABLE, "Amount", problem, expected);
    }
    amount.filter(typed -> typed.signum() < 0).ifPresent(typed -> minus(row, typed));
    return amount.orElse(BigDecimal.ZERO);
  }

  private static void minus(RowCells row, BigDecimal typed) {
    row.warn(
        ProblemKind.SIGN_IGNORED,
        "Amount",
        Message.of("rows.payment.minus", typed.abs()),
        Message.of("rows.payment.withoutSign"));
  }

  /** The asset; empty when the row is held back. */
  static Optional<Asset> asset(RowCells row) {
    LocalDate bought = row.requiredDate("Bought").orElse(LocalDate.EPOCH);
    return unlessHeld(
        row,
        new Asset(
            row.source(),
            row.name("Asset"),
            bought,
            row.money("Cost"),
            row.name("Class"),
            row.percent("Business use %"),
            row.date("Sold"),
            row.money("Proceeds")));
  }

  /** The count; empty when the row is held back, or counts nothing. */
  static Optional<StockCount> count(RowCells row) {
    LocalDate date = row.requiredDate("Date").orElse(LocalDate.EPOCH);
    String item = row.name("Item");
    String size = row.size("Size");
    Optional<BigDecimal> quantity = QuantityCell.counted(row);
    if (!row.has("Quantity")) {
      Message problem = Message.of("cells.missing", row.called("Quantity"));
      Message expected = Message.of("rows.count.pieces");
      row.warn(ProblemKind.NUMBER_UNREADABLE, "Quantity", problem, expected);
    }
    boolean counts = PriceRows.named(row, "Item", item) && quantity.isPresent();
    StockCount count =
        new StockCount(row.source(), date, item, size, quantity.orElse(BigDecimal.ZERO));
    return counts ? unlessHeld(row, count) : Optional.empty();
  }
}
