package clenchbook.samples;

import clenchbook.samples.Stable.Owner;
import clenchbook.samples.Stable.Share;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/** Pays the invoices: most within three weeks, some late, a few never; leaves the balances owed. */
final class Purse {
  final Tab payments = new Tab("Payments", "Date|Owner|Amount|Invoice|Kind|How|Reference");

  /** What each owner owes as the last month opens. */
  final Map<String, BigDecimal> opening = new TreeMap<>();

  private final Scenario scenario;
  private final Random random;
  private int reference = 5001;
  private int settled;

  Purse(Scenario scenario, Random random) {
    this.scenario = scenario;
    this.random = random;
  }

  void settle(List<Visit> visits) {
    Map<YearMonth, Map<String, Double>> owed = new TreeMap<>();
    for (Visit visit : visits) {
      share(owed.computeIfAbsent(YearMonth.from(visit.date), m -> new TreeMap<>()), visit);
    }
    owed.forEach((month, owners) -> owners.forEach((owner, sum) -> pay(month, owner, sum)));
    payments.rows.sort(
        Comparator.comparing((Map<String, Object> row) -> (LocalDate) row.get("Date"))
            .thenComparing(row -> (String) row.get("Owner")));
  }

  private static void share(Map<String, Double> owners, Visit visit) {
    double left = visit.gross - visit.paid;
    if (visit.horse.shares.isEmpty()) {
      owners.merge(visit.horse.payer().name, left, Double::sum);
    }
    for (Share share : visit.horse.shares) {
      owners.merge(share.owner().name, left * share.percent() / 100, Double::sum);
    }
  }

  private void pay(YearMonth month, String owner, double sum) {
    BigDecimal amount = BigDecimal.valueOf(Job.cents(sum));
    if (amount.signum() <= 0) {
      return;
    }
    LocalDate last = YearMonth.from(scenario.end()).atDay(1);
    int draw = random.nextInt(100);
    boolean never = draw < 3;
    LocalDate day =
        month.atEndOfMonth().plusDays(draw < 10 ? 38 + random.nextInt(40) : 2 + random.nextInt(19));
    boolean paidBefore = !never && day.isBefore(last);
    if (!paidBefore && month.isBefore(YearMonth.from(last))) {
      opening.merge(owner, amount, BigDecimal::add);
    }
    if (!never && !day.isAfter(scenario.end())) {
      boolean named = paidBefore && ++settled % 70 == 0;
      payments.add(
          day,
          owner,
          amount,
          named ? "B-" + month.getYear() + "-" + (100 + random.nextInt(80)) : "",
          random.nextInt(3) == 0 ? "payment" : "",
          random.nextInt(4) == 0 ? "card" : scenario.included() ? "bank transfer" : "check",
          random.nextInt(5) == 0 ? "" : "P" + reference++);
    }
  }

  /** Adds the odd entries of the last weeks: a deposit, a refund, a debt given up, tips. */
  void oddEntries(List<Owner> owners) {
    LocalDate month = YearMonth.from(scenario.end()).atDay(1);
    payments.add(
        month.plusDays(6),
        owners.get(2).name,
        new BigDecimal("60"),
        "",
        "deposit",
        "card",
        "handmade set ordered");
    payments.add(
        month.plusDays(11),
        owners.get(7).name,
        new BigDecimal("12.50"),
        "",
        "refund",
        "bank transfer",
        "studs not fitted");
    payments.add(
        month.plusDays(19), owners.get(11).name, new BigDecimal("5"), "", "tip", "cash", "");
    payments.add(
        month.minusDays(40), owners.get(15).name, new BigDecimal("10"), "", "tip", "cash", "");
    payments.add(
        month.plusDays(13), misspelt(owners.get(3).name), new BigDecimal("38"), "", "", "cash", "");
    opening.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .ifPresent(
            debt ->
                payments.add(
                    month.plusDays(27),
                    debt.getKey(),
                    debt.getValue().min(new BigDecimal("40")),
                    "",
                    "written off",
                    "",
                    "moved away, half given up"));
  }

  private static String misspelt(String name) {
    return name.substring(0, name.length() - 2)
        + name.charAt(name.length() - 1)
        + name.charAt(name.length() - 2);
  }
}
