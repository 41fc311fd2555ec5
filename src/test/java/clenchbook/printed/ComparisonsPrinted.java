package clenchbook.printed;

import static clenchbook.printed.FigureFiles.negated;
import static clenchbook.printed.FigureFiles.rounded;
import static clenchbook.printed.FigureFiles.unsigned;
import static clenchbook.printed.PrintedPage.row;

import clenchbook.printed.PrintedPage.Row;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** The report of the comparisons, as its files say it must read. */
final class ComparisonsPrinted {
  private static final int MOST_OWNERS = 20;
  private static final List<String> QUESTIONS = List.of("hot with cold", "handmade with keg");
  private final FigureFiles files;
  private final PrintedPage page;

  private ComparisonsPrinted(FigureFiles files, PrintedPage page) {
    this.files = files;
    this.page = page;
  }

  /** Lists each number that differs or that no file holds. */
  static List<String> faults(Path month) throws Exception {
    ComparisonsPrinted report =
        new ComparisonsPrinted(
            new FigureFiles(month.resolve("figures")),
            PrintedPage.of(
                month.resolve("comparisons.pdf"), "A book, not an experiment:", "Does it pay?"));
    report.large();
    report.overall().forEach(report::words);
    report.lostShoes();
    report.forge();
    report.handmade();
    report.breakEvenTable();
    report.prices();
    report.callbacks();
    report.use();
    report.strata();
    report.page.fixed("Intervals are 95 % intervals"); // the confidence level
    report.page.fixed("a dot at 2 is 2 more than that"); // an example
    report.page.fixed("2000 times, and fewer times in a book of more than 5000 jobs");
    report.page.fixed("reaches over 0, no difference"); // none
    return report.page.faults();
  }

  private List<Map<String, String>> overall() {
    return files.rows("comparisons").stream()
        .filter(each -> each.get("stratum").equals("all"))
        .filter(each -> !each.get("measure").equals("lost shoes"))
        .toList();
  }

  private Map<String, String> breakEven(String quantity) {
    return files.row("break-even", "quantity", quantity);
  }

  private static boolean negative(String cell) {
    return cell.startsWith("-");
  }

  private void large() {
    String saved =
        overall().stream()
            .filter(each -> each.get("question").equals("hot with cold"))
            .filter(each -> each.get("measure").equals("shape minutes per shoe"))
            .map(each -> negated(each.get("difference"), 2))
            .findFirst()
            .orElseThrow();
    page.figure("Saved on a hot shoe", saved);
    page.figure("The forge pays from", rounded(breakEven("shoes per stop").get("value"), 1));
    Map<String, String> extra = breakEven("extra price per set");
    page.figure(
        (negative(extra.get("value")) ? "A handmade set can spare " : "Extra a handmade set needs ")
            + extra.get("unit"),
        unsigned(extra.get("value"), 2));
  }

  /** The sentence, the second way where it disagrees, and the line under the picture. */
  private void words(Map<String, String> all) {
    String start = capital(all.get("measure")) + ", " + all.get("question") + ": ";
    List<String> numbers = new ArrayList<>();
    numbers.addAll(List.of(all.get("n_a"), horses(all.get("horses_a"))));
    numbers.addAll(List.of(all.get("n_b"), horses(all.get("horses_b"))));
    long strata = strata(all).size();
    numbers.add(strata == 1 ? "" : String.valueOf(strata));
    numbers.addAll(shown(all));
    page.sentence(start, numbers.toArray(String[]::new));
    if (!List.of("agrees", "could not be tried").contains(all.get("guard_says"))) {
      page.sentence(
          start + "the two ways",
          unsigned(all.get("difference"), 2),
          unsigned(all.get("guard_difference"), 2));
      page.sentence("Trust neither until", all.get("guard_horses"));
    }
    page.sentence(
        capital(all.get("measure"))
            + ", "
            + all.get("question")
            + " "
            + all.get("a")
            + " less "
            + all.get("b")
            + ": ",
        rounded(all.get("difference"), 2),
        rounded(wider(all, "low"), 2),
        rounded(wider(all, "high"), 2),
        rounded(all.get("mean_a"), 2),
        rounded(all.get("mean_b"), 2));
  }

  private static List<String> shown(Map<String, String> all) {
    String means = rounded(all.get("mean_a"), 2) + "/" + rounded(all.get("mean_b"), 2);
    List<String> both = List.of(means.split("/"));
    String low = wider(all, "low");
    String high = wider(all, "high");
    List<String> numbers = new ArrayList<>();
    switch (all.get("verdict")) {
      case "a lower" -> {
        numbers.add(unsigned(all.get("difference"), 2));
        numbers.addAll(both);
        numbers.addAll(List.of(negated(high, 2), negated(low, 2)));
      }
      case "a higher" -> {
        numbers.add(unsigned(all.get("difference"), 2));
        numbers.addAll(both);
        numbers.addAll(List.of(rounded(low, 2), rounded(high, 2)));
      }
      case "no difference shown" -> {
        numbers.addAll(both);
        numbers.addAll(List.of(unsigned(low, 2), unsigned(high, 2)));
      }
      default -> throw new AssertionError("no sample is so thin: " + all);
    }
    return numbers;
  }

  /** The bound of the wider of the two intervals. */
  private static String wider(Map<String, String> all, String bound) {
    boolean horse =
        !all.get("low_horse").isEmpty()
            && width(all, "high_horse", "low_horse").compareTo(width(all, "high", "low")) > 0;
    return all.get(horse ? bound + "_horse" : bound);
  }

  private static BigDecimal width(Map<String, String> all, String high, String low) {
    return new BigDecimal(all.get(high)).subtract(new BigDecimal(all.get(low)));
  }

  private static String horses(String count) {
    return count.equals("1") ? "" : count;
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private void lostShoes() {
    List<String> numbers = new ArrayList<>();
    for (Map<String, String> method : files.rows("lost-shoes")) {
      numbers.add(rounded(method.get("shoes_on"), 0));
      numbers.add(method.get("horses"));
      numbers.add(method.get("percent"));
      numbers.add(method.get("low_percent"));
      numbers.add(method.get("high_percent"));
    }
    page.sentence("Lost shoes, hot with cold: ", numbers.toArray(String[]::new));
  }

  private void forge() {
    Map<String, String> forge = breakEven("shoes per stop");
    BigDecimal shoes = new BigDecimal(forge.get("value"));
    page.sentence(
        "Lighting the forge pays from",
        rounded(forge.get("value"), 1),
        shoes.setScale(0, RoundingMode.CEILING).toPlainString(),
        rounded(forge.get("low"), 1),
        rounded(forge.get("high"), 1));
    page.sentence(
        "If steel, gas, the wage",
        largest("gain of the forge per stop"),
        largest("extra price per set"));
  }

  /** The change furthest from none; up and down may tie. */
  private String largest(String quantity) {
    List<String> changes =
        files.rows("sensitivity").stream()
            .filter(each -> each.get("quantity").equals(quantity))
            .map(each -> each.get("change"))
            .filter(change -> !change.isEmpty())
            .toList();
    BigDecimal most =
        changes.stream()
            .map(change -> new BigDecimal(change).abs())
            .max(Comparator.naturalOrder())
            .orElseThrow();
    return changes.stream()
        .filter(change -> new BigDecimal(change).abs().compareTo(most) == 0)
        .map(change -> rounded(change, 2))
        .collect(Collectors.joining("|"));
  }

  private void handmade() {
    Map<String, String> extra = breakEven("extra price per set");
    Map<String, String> making = breakEven("making minutes per shoe");
    page.sentence(
        negative(extra.get("value")) ? "A handmade set already earns more" : "A handmade set needs",
        unsigned(extra.get("value"), 2),
        rounded(extra.get("low"), 2),
        rounded(extra.get("high"), 2),
        rounded(making.get("value"), 1),
        rounded(making.get("low"), 1),
        rounded(making.get("high"), 1),
        rounded(breakEven("making minutes per shoe now").get("value"), 1));
  }

  private void breakEvenTable() {
    page.table(
        "Break-even figures",
        files.rows("break-even").stream()
            .map(
                each ->
                    row(
                        each.get("quantity"),
                        rounded(each.get("value"), 2),
                        rounded(each.get("low"), 2),
                        rounded(each.get("high"), 2)))
            .toList());
  }

  private void prices() {
    Map<String, String> all = files.row("prices", "work", "all");
    List<Map<String, String>> works =
        files.rows("prices").stream().filter(each -> !each.get("work").equals("all")).toList();
    String wage = files.row("margins-summary", "figure", "hourly wage").get("value");
    page.sentence("All prices are without tax", rounded(wage, 2));
    page.sentence("The target margin is", works.get(0).get("target_margin_percent"));
    for (Map<String, String> each : works) {
      if (!each.get("loses_by").isEmpty()) {
        page.sentence(
            each.get("work") + " loses money: ",
            each.get("jobs"),
            each.get("left_after_callbacks"));
      }
    }
    page.table("Prices by Work", works.stream().map(ComparisonsPrinted::price).toList());
    page.sentence("At this period's mix a rise of", "5", all.get("rise_5_percent_brings"));
    List<Map<String, String>> under = files.rows("under-list");
    page.table(
        "Billed under the list, free visits apart"
            + (under.size() > MOST_OWNERS ? " (the first " + MOST_OWNERS + ")" : ""),
        under.stream()
            .limit(MOST_OWNERS)
            .map(each -> row(each.get("owner"), each.get("jobs"), each.get("under_list_by")))
            .toList());
    if (under.size() > MOST_OWNERS) {
      page.fixed("(the first " + MOST_OWNERS + ")");
    }
  }

  private static Row price(Map<String, String> each) {
    return row(
        each.get("work"),
        each.get("jobs"),
        each.get("list_price"),
        each.get("price_for_wage"),
        each.get("price_for_target"),
        each.get("margin_after_labour"),
        each.get("rise_5_percent_brings"));
  }

  private void callbacks() {
    Map<String, String> all = files.row("prices", "work", "all");
    page.sentence(
        all.get("callbacks") + " free or lost-shoe visits came",
        all.get("callbacks"),
        all.get("callback_days"),
        all.get("callback_cost"));
    page.table(
        "Callbacks by the work that caused them",
        files.rows("callback-costs").stream()
            .filter(each -> !each.get("callbacks").equals("0"))
            .map(
                each ->
                    row(
                        each.get("work") + " " + each.get("method"),
                        each.get("jobs"),
                        each.get("callbacks"),
                        each.get("cost"),
                        each.get("charged")))
            .toList());
  }

  /** How many jobs each measure used and left out; a row a reason, a column a measure. */
  private void use() {
    for (String question : QUESTIONS) {
      Map<String, List<String>> reasons = new LinkedHashMap<>();
      for (Map<String, String> each : files.rows("comparison-use")) {
        if (each.get("question").equals(question)) {
          reasons
              .computeIfAbsent(each.get("reason"), unused -> new ArrayList<>())
              .add(each.get("jobs") + " (" + each.get("percent") + " %)");
        }
      }
      page.after(capital(question) + ": jobs of the period");
      reasons.forEach((reason, cells) -> page.figure(reason, cells.toArray(String[]::new)));
    }
  }

  private List<Map<String, String>> strata(Map<String, String> all) {
    return files.rows("comparisons").stream()
        .filter(each -> each.get("question").equals(all.get("question")))
        .filter(each -> each.get("measure").equals(all.get("measure")))
        .filter(each -> !each.get("stratum").equals("all"))
        .toList();
  }

  private void strata() {
    page.after("Annex: the sorts of job compared");
    for (Map<String, String> all : overall()) {
      page.table(
          all.get("measure") + ", " + all.get("question"),
          strata(all).stream().map(ComparisonsPrinted::stratum).toList());
    }
  }

  private static Row stratum(Map<String, String> each) {
    return row(
        each.get("stratum"),
        each.get("n_a"),
        each.get("n_b"),
        rounded(each.get("mean_a"), 2),
        rounded(each.get("mean_b"), 2),
        rounded(each.get("difference"), 2),
        rounded(each.get("low"), 2),
        rounded(each.get("high"), 2));
  }
}
