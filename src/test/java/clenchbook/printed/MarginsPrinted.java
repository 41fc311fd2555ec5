package clenchbook.printed;

import static clenchbook.printed.PrintedPage.row;

import clenchbook.printed.PrintedPage.Row;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** The report of the margins, as its files say it must read. */
final class MarginsPrinted {
  private static final int MOST_BELOW = 25;
  private final FigureFiles files;
  private final PrintedPage page;

  private MarginsPrinted(FigureFiles files, PrintedPage page) {
    this.files = files;
    this.page = page;
  }

  /** Lists each number that differs or that no file holds. */
  static List<String> faults(Path month, String subtitle) throws Exception {
    MarginsPrinted report =
        new MarginsPrinted(
            new FigureFiles(month.resolve("figures")),
            PrintedPage.of(
                month.resolve("margins.pdf"),
                "Costs rest on this book and its settings;",
                "What the work cost and what it left"));
    report.page.fixed(subtitle); // the month's name
    report.large();
    report.words();
    report.groups("By Work", "work");
    report.groups("By kind of shoe", "shoe");
    report.groups("By place", "place");
    report.groups("By owner", "owner");
    report.belowWage();
    return report.page.faults();
  }

  private String summary(String figure) {
    return files.row("margins-summary", "figure", figure).get("value");
  }

  private Map<String, String> whole() {
    return files.row("margins", "group", "all");
  }

  private List<Map<String, String>> of(String group) {
    return files.rows("margins").stream().filter(row -> row.get("group").equals(group)).toList();
  }

  private void large() {
    Map<String, String> whole = whole();
    page.figure("Income without tax", whole.get("income"));
    page.figure("Left before own labour", whole.get("margin_before_labour"));
    page.figure("Left after own labour", whole.get("margin_after_labour"));
    page.figure("Earned per hour", whole.get("earned_per_hour"));
  }

  private void words() {
    boolean given =
        files.row("margins-summary", "figure", "yearly overheads").get("basis").equals("standard");
    String overheads = "Overheads of " + summary("yearly overheads");
    if (given) {
      page.sentence(overheads, summary("yearly overheads"));
    } else {
      page.sentence(
          overheads,
          summary("yearly overheads"),
          summary("months that hold overheads"),
          "12"); // months in a year
    }
    page.sentence("They are spread over", summary("hours per year"));
    rounding();
    page.sentence(
        "Of " + whole().get("income") + " income",
        whole().get("income"),
        whole().get("margin_after_labour"));
    long below = of("work").stream().filter(this::below).count();
    page.sentence(
        below + " of " + of("work").size() + " kinds of work earned less",
        String.valueOf(below),
        String.valueOf(of("work").size()));
  }

  private void rounding() {
    String rounding = summary("rounding on documents");
    if (new BigDecimal(rounding).signum() != 0) {
      page.sentence("The documents of this time come to", summary("billed without tax"));
      page.sentence("The difference of", rounding);
    }
  }

  private boolean below(Map<String, String> row) {
    String earned = row.get("earned_per_hour");
    return !earned.isEmpty()
        && new BigDecimal(earned).compareTo(new BigDecimal(summary("hourly wage"))) < 0;
  }

  private void groups(String heading, String group) {
    boolean byWork = group.equals("work");
    List<Row> costs = new ArrayList<>();
    List<Row> left = new ArrayList<>();
    of(group).forEach(row -> costs.add(costs(row.get("name"), row)));
    of(group).forEach(row -> left.add(left(row.get("name"), row, byWork)));
    costs.add(costs("All", whole()));
    if (!byWork) {
      left.add(left("All", whole(), false));
    }
    page.after(heading);
    page.table("Income and costs", costs);
    page.table(byWork ? "What each Work left" : "What was left", left);
  }

  private static Row costs(String name, Map<String, String> row) {
    return row(
        name,
        row.get("jobs"),
        row.get("income"),
        row.get("materials"),
        row.get("gas"),
        row.get("sundries"),
        row.get("travel"),
        row.get("overhead"));
  }

  private static Row left(String name, Map<String, String> row, boolean byWork) {
    return row(
        name,
        row.get("margin_before_labour"),
        row.get("labour"),
        row.get("margin_after_labour"),
        row.get("hours"),
        row.get("earned_per_hour"),
        byWork ? row.get("average_net") : "",
        byWork ? row.get("price_to_reach_wage") : "");
  }

  private void belowWage() {
    page.after("Jobs that earned less than the wage");
    List<Map<String, String>> below =
        files.rows("jobs").stream()
            .filter(row -> !row.get("reason").equals("cancelled"))
            .filter(this::below)
            .toList();
    String count = summary("jobs below the wage");
    if (below.size() > MOST_BELOW) {
      page.sentence(
          count + " jobs; the " + MOST_BELOW + " lowest", count, String.valueOf(MOST_BELOW));
    } else {
      page.sentence(count + " job", count);
    }
    page.table(
        "Date Horse Work Charge After labour Per hour",
        below.stream()
            .sorted(
                Comparator.comparing((Map<String, String> row) -> earned(row))
                    .thenComparing(row -> row.get("date")))
            .limit(MOST_BELOW)
            .map(MarginsPrinted::job)
            .toList());
  }

  private static BigDecimal earned(Map<String, String> row) {
    return new BigDecimal(row.get("earned_per_hour"));
  }

  private static Row job(Map<String, String> row) {
    return row(
        row.get("date") + " " + row.get("horse") + " " + row.get("work"),
        row.get("charge_net"),
        row.get("margin_after_labour"),
        row.get("earned_per_hour"));
  }
}
