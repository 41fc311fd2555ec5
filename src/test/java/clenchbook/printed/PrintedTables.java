package clenchbook.printed;

import static clenchbook.printed.FigureFiles.rounded;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The tables that money hangs on, row by row and cell by cell against their files. */
final class PrintedTables {
  private final FigureFiles files;
  private final List<String> faults = new ArrayList<>();

  private PrintedTables(Path run) {
    this.files = new FigureFiles(run.resolve("figures"));
  }

  /** What is missing of the margins' and comparisons' tables. */
  static List<String> faults(Path run) throws Exception {
    PrintedTables tables = new PrintedTables(run);
    tables.margins(PaperText.of(run.resolve("margins.pdf")));
    tables.costs(PaperText.of(run.resolve("annex/margins.pdf")));
    tables.comparisons(PaperText.of(run.resolve("comparisons.pdf")));
    tables.strata(PaperText.of(run.resolve("annex/comparisons.pdf")));
    return tables.faults;
  }

  private List<Map<String, String>> margins(String... groups) {
    return files.rows("margins").stream()
        .filter(row -> List.of(groups).contains(row.get("group")))
        .toList();
  }

  private void margins(String paper) {
    for (Map<String, String> row : margins("work", "shoe", "place")) {
      BigDecimal costs =
          Stream.of("materials", "gas", "sundries", "travel", "overhead")
              .map(name -> new BigDecimal(row.get(name)))
              .reduce(BigDecimal.ZERO, BigDecimal::add);
      row(
          paper,
          row.get("name"),
          row.get("jobs"),
          row.get("income"),
          costs.toPlainString(),
          row.get("labour"),
          row.get("margin_after_labour"),
          time(row.get("hours")),
          row.get("earned_per_hour"),
          row.get("group").equals("work") ? row.get("average_net") : "",
          row.get("price_to_reach_wage"));
    }
  }

  private void costs(String paper) {
    for (Map<String, String> row : margins("work", "shoe", "place", "owner")) {
      row(
          paper,
          row.get("name"),
          row.get("jobs"),
          row.get("income"),
          row.get("materials"),
          row.get("gas"),
          row.get("sundries"),
          row.get("travel"),
          row.get("overhead"));
    }
  }

  private void comparisons(String paper) {
    for (Map<String, String> each : files.rows("comparisons")) {
      if (each.get("stratum").equals("all") && !each.get("measure").equals("lost shoes")) {
        compared(paper, each, rounded(wider(each, "low"), 2), rounded(wider(each, "high"), 2));
      }
    }
    for (Map<String, String> each : files.rows("prices")) {
      if (!each.get("work").equals("all")) {
        row(
            paper,
            each.get("work"),
            each.get("jobs"),
            each.get("list_price"),
            each.get("price_for_wage"),
            each.get("price_for_target"),
            each.get("margin_after_labour"),
            each.get("rise_5_percent_brings"));
      }
    }
    for (Map<String, String> each : files.rows("break-even")) {
      row(
          paper,
          "",
          rounded(each.get("value"), 2),
          rounded(each.get("low"), 2),
          rounded(each.get("high"), 2));
    }
  }

  /** The row of one comparison between two bounds. */
  private void compared(String paper, Map<String, String> each, String low, String high) {
    row(
        paper,
        "",
        each.get("n_a"),
        each.get("n_b"),
        rounded(each.get("mean_a"), 2),
        rounded(each.get("mean_b"), 2),
        rounded(each.get("difference"), 2),
        low,
        high);
  }

  private void strata(String paper) {
    for (Map<String, String> each : files.rows("comparisons")) {
      if (!each.get("stratum").equals("all")) {
        compared(paper, each, rounded(each.get("low"), 2), rounded(each.get("high"), 2));
      }
    }
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

  private static String time(String hours) {
    long minutes =
        new BigDecimal(hours)
            .multiply(BigDecimal.valueOf(60))
            .setScale(0, RoundingMode.HALF_UP)
            .longValueExact();
    if (minutes < 60) {
      return minutes + " min";
    }
    if (minutes >= 6000) {
      return rounded(hours, 0) + " h";
    }
    String whole = minutes / 60 + " h";
    return minutes % 60 == 0 ? whole : whole + String.format(" %02d", minutes % 60);
  }

  /** The words, then exactly these figures, each with or without the mark of its basis. */
  private void row(String paper, String words, String... figures) {
    List<String> kept = Stream.of(figures).filter(each -> !each.isEmpty()).toList();
    String cells =
        kept.stream()
            .map(PrintedTables::grouped)
            .map(cell -> Pattern.quote(cell) + "(?: ?[sd](?= ))?")
            .collect(Collectors.joining(" "));
    String start = words.isEmpty() ? "" : Pattern.quote(words.split("[ -]")[0]) + "[^0-9]*?";
    if (!Pattern.compile(start + "(?<![0-9.,-])" + cells + "(?![0-9.,]?[0-9])")
        .matcher(paper)
        .find()) {
      faults.add("missing: " + words + " " + kept);
    }
  }

  /** {@code 1234.50} as {@code 1,234.50}. */
  private static String grouped(String cell) {
    return cell.matches("-?\\d{4,}(\\.\\d+)?( h)?")
        ? cell.replaceAll("(?<=\\d)(?=(\\d{3})+(?!\\d))(?<!\\.\\d{0,6})", ",")
        : cell;
  }
}
