package clenchbook.reading.rows;

import clenchbook.book.Reason;
import clenchbook.book.Visit;
import clenchbook.problem.ProblemKind;
import clenchbook.problem.Severity;
import clenchbook.reading.cells.RowCells;
import clenchbook.reading.words.Choices;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/** Rows of Visits. */
final class VisitRows {
  private static final Message SHAPINGS = Message.of("rows.choice.shaping");
  private static final Message REASONS = Message.of("rows.choice.reason");

  private VisitRows() {}

  /** The visit; empty when the row is held back. */
  static Optional<Visit> read(RowCells row) {
    Optional<LocalDate> date = row.requiredDate("Date");
    Optional<BigDecimal> charge = charge(row);
    Optional<Boolean> inFull = row.paidInWords("Paid");
    Visit visit =
        new Visit(
            row.source(),
            date.orElse(LocalDate.EPOCH),
            row.name("Place"),
            row.payer("Owner"),
            row.name("Horse"),
            row.name("Work"),
            row.shoes("Shoe"),
            row.sizes("Size"),
            row.whole("Shoes"),
            row.whole("New shoes"),
            row.choice("Shaping", Choices.SHAPING, SHAPINGS),
            row.name("Nail"),
            row.whole("Nails"),
            row.extras("Extras"),
            row.minutes("Trim min"),
            row.minutes("Shape min"),
            row.minutes("Nail min"),
            row.minutes("Grind min"),
            row.minutes("Forge min"),
            row.minutes("Total min"),
            row.minutes("Helper min"),
            charge,
            inFull.isPresent() ? Optional.empty() : paid(row),
            inFull.orElse(false),
            row.name("How"),
            reason(row),
            row.whole("Lost"),
            row.text("Vet"),
            row.lines("Notes"));
    return row.held() ? Optional.empty() : Optional.of(visit);
  }

  private static Reason reason(RowCells row) {
    return row.choice("Reason", Choices.REASON, REASONS).orElse(Reason.ROUTINE);
  }

  private static Optional<BigDecimal> charge(RowCells row) {
    Optional<BigDecimal> charge = row.freeInWords("Charge").or(() -> row.money("Charge"));
    if (charge.filter(amount -> amount.signum() < 0).isPresent()) {
      Message problem = Message.of("cells.number.belowNothing", row.called("Charge"), charge.get());
      Message expected = Message.of("rows.visit.aCharge");
      row.say(Severity.HELD, ProblemKind.MONEY_NEGATIVE, "Charge", problem, expected);
    }
    return charge;
  }

  private static Optional<BigDecimal> paid(RowCells row) {
    Optional<BigDecimal> paid = row.money("Paid");
    if (paid.filter(amount -> amount.signum() < 0).isPresent()) {
      Message problem = Message.of("cells.number.belowNothing", row.called("Paid"), paid.get());
      Message expected = Message.of("rows.visit.anAmount");
      row.warn(ProblemKind.NUMBER_OUT_OF_RANGE, "Paid", problem, expected);
      return Optional.empty();
    }
    return paid;
  }
}
