package clenchbook.billing.accounts;

import clenchbook.billing.accounts.Account.Ages;
import clenchbook.billing.accounts.Account.Movement;
import clenchbook.billing.accounts.Account.Source;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Names;
import clenchbook.book.PaymentKind;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Sets payments and credits against what is owed: against the document they name, else the oldest
 * first. Money taken at the truck goes against the invoice that bears its visit. What is left over
 * is credit.
 */
public final class Settling {
  private final List<Item> items = new ArrayList<>();
  private final Map<String, BigDecimal> writtenOff = new LinkedHashMap<>();
  private final LocalDate first;
  private final MinorUnit unit;
  private BigDecimal credit;
  private boolean olderMoved;

  private static final class Item {
    private final String number;
    private final LocalDate date;
    private final LocalDate due;
    private BigDecimal open;

    Item(String number, LocalDate date, LocalDate due, BigDecimal open) {
      this.number = number;
      this.date = date;
      this.due = due;
      this.open = open;
    }
  }

  private record Money(LocalDate date, String names, PaymentKind kind, BigDecimal amount) {}

  /** Settles documents by payments, each against the document it names, else the oldest first. */
  public Settling(
      BigDecimal opening,
      LocalDate openingDate,
      List<BilledDocument> documents,
      List<Movement> movements,
      LocalDate first,
      MinorUnit unit) {
    this.first = first;
    this.unit = unit;
    credit = unit.zero();
    List<Money> money = new ArrayList<>();
    charge(opening, openingDate, "", openingDate, "", money);
    for (BilledDocument d : documents) {
      charge(d.gross(), d.date(), d.number(), d.due(), d.corrects(), money);
    }
    movements.stream()
        .filter(movement -> movement.source() != Source.DOCUMENT)
        .forEach(movement -> moved(movement, money));
    settle(money);
  }

  /** A debt becomes an open item, a credit becomes money. */
  private void charge(
      BigDecimal amount,
      LocalDate date,
      String number,
      LocalDate due,
      String corrects,
      List<Money> money) {
    if (amount.signum() < 0) {
      money.add(new Money(date, corrects, PaymentKind.PAYMENT, amount.negate()));
    } else {
      items.add(new Item(number, date, due, amount));
    }
  }

  private void moved(Movement movement, List<Money> money) {
    if (movement.amount().signum() > 0) {
      items.add(new Item("", movement.date(), movement.date(), movement.amount()));
    } else {
      money.add(
          new Money(
              movement.date(), movement.reference(), movement.kind(), movement.amount().negate()));
    }
  }

  private void settle(List<Money> money) {
    List<Money> left = new ArrayList<>();
    for (Money payment : money) {
      BigDecimal rest = payment.amount();
      for (Item item : items) {
        boolean named = !payment.names().isEmpty() && Names.same(item.number, payment.names());
        rest = named ? against(item, payment, rest) : rest;
      }
      left.add(new Money(payment.date(), "", payment.kind(), rest));
    }
    items.sort(Comparator.comparing(item -> item.date));
    for (Money payment : left) {
      BigDecimal rest = payment.amount();
      for (Item item : items) {
        rest = against(item, payment, rest);
      }
      credit = credit.add(rest);
    }
  }

  private BigDecimal against(Item item, Money payment, BigDecimal rest) {
    BigDecimal part = rest.min(item.open);
    if (part.signum() <= 0) {
      return rest;
    }
    item.open = item.open.subtract(part);
    if (payment.kind() == PaymentKind.WRITTEN_OFF && !item.number.isEmpty()) {
      writtenOff.merge(item.number, part, BigDecimal::add);
    }
    boolean older = item.date.isBefore(first);
    olderMoved |= older && !payment.date().isBefore(first);
    return rest.subtract(part);
  }

  /** What is open, by how many days it is past due on a day; credit counts as current. */
  public Ages ages(LocalDate day) {
    BigDecimal current = credit.negate();
    BigDecimal upTo30 = unit.zero();
    BigDecimal upTo60 = unit.zero();
    BigDecimal over60 = unit.zero();
    for (Item item : items) {
      long days = ChronoUnit.DAYS.between(item.due, day);
      if (days <= 0) {
        current = current.add(item.open);
      } else if (days <= 30) {
        upTo30 = upTo30.add(item.open);
      } else if (days <= 60) {
        upTo60 = upTo60.add(item.open);
      } else {
        over60 = over60.add(item.open);
      }
    }
    return new Ages(current, upTo30, upTo60, over60);
  }

  /** What is still open of each document. */
  public Map<String, BigDecimal> open() {
    Map<String, BigDecimal> open = new LinkedHashMap<>();
    items.stream()
        .filter(item -> !item.number.isEmpty())
        .forEach(item -> open.put(item.number, item.open));
    return open;
  }

  public Map<String, BigDecimal> writtenOff() {
    return writtenOff;
  }

  public boolean olderMoved() {
    return olderMoved;
  }
}
