package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.commands.opening.RunFault;
import clenchbook.register.Register;
import clenchbook.register.RegisterCheck;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A year of month-ends with corrections, deleted visits, part payments, refunds and runs that could
 * not write: at its end every balance is what plain addition over the book gives.
 */
class TwelveMonthEndsTest {
  private static final List<String> OWNERS = List.of("Adam", "Ivo", "Maeve", "Ruth");
  private static final long SEED = 20260101;

  @TempDir private Path folder;

  private final SplittableRandom random = new SplittableRandom(SEED);
  private final List<Row> visits = new ArrayList<>();
  private final List<Money> payments = new ArrayList<>();
  private int corrected;

  /** A row of Visits as the farrier has it; the charge is without tax of 20 %. */
  private record Row(String date, String owner, String horse, int charge, int paid) {
    String text() {
      return String.join(
          ",", date, owner, horse, "Trim", Integer.toString(charge), paid > 0 ? "" + paid : "");
    }

    Row charging(int other) {
      return new Row(date, owner, horse, other, paid);
    }
  }

  private record Money(String date, String owner, int amount, String invoice, String kind) {
    String text() {
      return String.join(",", date, owner, Integer.toString(amount), invoice, kind);
    }
  }

  @Test
  void the_balances_of_a_year_are_those_of_plain_addition() throws IOException {
    SmallFolderBook book = SmallFolderBook.in(folder);
    for (int month = 1; month <= 12; month++) {
      String name = String.format("2026-%02d", month);
      visit(name);
      if (month > 1 && month < 12) {
        change();
      }
      pay(name, book);
      write(book);
      if (month % 4 == 0) {
        interrupted(book, name);
      }
      book.monthEnd(name);
      if (month % 3 == 0) {
        book.monthEnd(name);
      }
      send(book, name);
    }
    List<BilledDocument> documents = Register.read(book.register());
    assertTrue(RegisterCheck.faults(documents).isEmpty());
    assertTrue(documents.stream().anyMatch(document -> !document.invoice()), "credit notes");
    assertTrue(corrected > 5);
    assertEquals(plainSums(), balances(book));
  }

  private void visit(String month) {
    for (String owner : OWNERS) {
      for (int turn = 0; turn < random.nextInt(1, 4); turn++) {
        int charge = random.nextInt(30, 120);
        int paid = random.nextInt(3) == 0 ? random.nextInt(1, charge) : 0;
        String day = month + String.format("-%02d", 3 + 7 * turn);
        visits.add(new Row(day, owner, owner + "'s horse " + turn, charge, paid));
      }
    }
  }

  /** A charge mended in an earlier row, and now and then a row that never was. */
  private void change() {
    int place = random.nextInt(visits.size() - 8);
    Row row = visits.get(place);
    visits.set(place, row.charging(row.charge() + random.nextInt(1, 20)));
    corrected++;
    if (random.nextInt(3) == 0) {
      visits.remove(random.nextInt(visits.size() - 8));
    }
  }

  private void pay(String month, SmallFolderBook book) {
    List<BilledDocument> documents = Register.read(book.register());
    for (String owner : OWNERS) {
      if (random.nextInt(2) == 0) {
        String invoice =
            documents.stream()
                .filter(document -> document.owner().equals(owner) && document.invoice())
                .map(BilledDocument::number)
                .findFirst()
                .orElse("");
        payments.add(new Money(month + "-20", owner, random.nextInt(5, 150), invoice, ""));
      }
    }
    if (random.nextInt(4) == 0) {
      payments.add(new Money(month + "-25", "Ruth", 5, "", "refund"));
      payments.add(new Money(month + "-26", "Ivo", 9, "", "tip"));
    }
  }

  private void write(SmallFolderBook book) throws IOException {
    StringBuilder rows = new StringBuilder("Date,Owner,Horse,Work,Charge,Paid\n");
    visits.forEach(row -> rows.append(row.text()).append('\n'));
    book.sheet("Visits", rows.toString());
    StringBuilder money = new StringBuilder();
    payments.forEach(payment -> money.append(payment.text()).append('\n'));
    book.payments(money.toString());
  }

  /** The month's folder can't be made; the register already has the month then. */
  private static void interrupted(SmallFolderBook book, String month) throws IOException {
    Path blocked = book.reports().resolve(month);
    Files.writeString(blocked, "in the way");
    assertThrows(RunFault.class, () -> book.monthEnd(month));
    Files.delete(blocked);
  }

  private static void send(SmallFolderBook book, String month) {
    try (Register register = Register.open(book.register())) {
      List<String> numbers =
          register.documents().stream()
              .filter(document -> document.month().toString().equals(month))
              .map(BilledDocument::number)
              .toList();
      register.move(numbers, DocumentState.ISSUED);
    }
  }

  private Map<String, BigDecimal> plainSums() {
    Map<String, BigDecimal> sums = new TreeMap<>();
    OWNERS.forEach(owner -> sums.put(owner, new BigDecimal("0.00")));
    for (Row row : visits) {
      BigDecimal gross = new BigDecimal(row.charge()).multiply(new BigDecimal("1.20"));
      sums.merge(row.owner(), gross.subtract(new BigDecimal(row.paid())), BigDecimal::add);
    }
    for (Money payment : payments) {
      int sign = payment.kind().equals("refund") ? 1 : payment.kind().equals("tip") ? 0 : -1;
      sums.merge(payment.owner(), new BigDecimal(sign * payment.amount()), BigDecimal::add);
    }
    return sums;
  }

  private static Map<String, BigDecimal> balances(SmallFolderBook book) throws IOException {
    Map<String, BigDecimal> balances = new TreeMap<>();
    Path file = book.reports().resolve("2026-12/figures/balances.csv");
    for (String line : Files.readAllLines(file).stream().skip(1).toList()) {
      String[] cells = line.split(",");
      balances.put(cells[0], new BigDecimal(cells[4]));
    }
    return balances;
  }
}
