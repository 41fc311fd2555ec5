package clenchbook.print.pdf;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Chart;
import clenchbook.reports.blocks.Report;
import clenchbook.texts.InEnglish;
import clenchbook.values.Basis;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** An invented report with every kind of block and picture. */
final class SampleReports {
  private SampleReports() {}

  static Report margins() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.KeyFigures(
            List.of(
                new Block.KeyFigure("Income", "£4,812.50", Optional.empty()),
                new Block.KeyFigure(
                    "Costs before own labour", "£1,630.11", Optional.of(Basis.STANDARD)),
                new Block.KeyFigure(
                    "Margin before own labour", "£3,182.39", Optional.of(Basis.MEASURED)),
                new Block.KeyFigure("Earned per hour", "£31.07", Optional.of(Basis.DEFAULT)))));
    blocks.add(
        new Block.Caution(
            "Travel rests on the way out and back to each place, because no trips were logged on 4"
                + " days. This overstates rounds."));
    blocks.add(new Block.Heading(1, "Where the month's money came from and went"));
    blocks.add(
        new Block.Picture(
            "Income and costs by Work",
            "Handmade sets brought in most, trims cost least.",
            stacked()));
    blocks.add(new Block.Heading(1, "By Work"));
    blocks.add(
        new Block.Paragraph(
            "Each Work with what it brought in, what it cost and what was left. Jobs that earn less"
                + " than the wage are listed below."));
    blocks.add(table(34));
    blocks.add(new Block.Heading(2, "Jobs that earn less than the wage"));
    blocks.add(
        new Block.Table(
            "",
            List.of(
                Block.Column.words("Job", 3),
                Block.Column.number("Earned per hour", 2),
                Block.Column.words("Why", 5)),
            List.of(
                Block.Row.of(
                    "2 Oct, Bramble, lost shoe",
                    "4.20",
                    "35 minutes of driving for 15 minutes of work, and the visit was free of charge"
                        + " as a goodwill gesture"))));
    blocks.add(new Block.PageBreak());
    blocks.add(new Block.Heading(1, "Pictures"));
    blocks.add(new Block.Picture("Hours by week", "Week 41 was the longest, 44 hours.", weeks()));
    blocks.add(
        new Block.Picture("Shape minutes per shoe", "Hot shoes took 1.4 minutes less.", dots()));
    blocks.add(
        new Block.Picture(
            "When lighting the forge pays", "From the third shoe at a stop.", curve()));
    blocks.add(
        new Block.Picture(
            "Earned per hour by place", "Only one place lies under the wage.", bars()));
    return new Report(
        "margins",
        "Margins",
        "October 2026",
        "Figures rest on what the workbook holds. A summary for planning, not advice on tax or"
            + " prices.",
        blocks,
        InEnglish.TEXTS);
  }

  private static Block.Table table(int rows) {
    List<Block.Row> lines = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      lines.add(
          new Block.Row(
              List.of(
                  Block.Cell.of(
                      i == 3
                          ? "Handmade set with bar shoes in front and pads"
                          : "Full set, keg " + i),
                  Block.Cell.of("" + (i + 1)),
                  Block.Cell.of("1,234.56"),
                  Block.Cell.of("112.20", Basis.MEASURED),
                  Block.Cell.of("14.02", Basis.STANDARD),
                  Block.Cell.of("80.10", Basis.DEFAULT),
                  Block.Cell.of("1,028.24", Basis.DEFAULT),
                  Block.Cell.of("41.30", Basis.STANDARD)),
              false));
    }
    lines.add(
        Block.Row.total(
            "All", "40", "4,812.50", "900.10", "120.40", "609.61", "3,182.39", "31.07"));
    return new Block.Table(
        "Margins by Work, October 2026",
        List.of(
            Block.Column.words("Work", 5),
            Block.Column.number("Jobs", 1),
            Block.Column.number("Income", 2),
            Block.Column.number("Materials", 2),
            Block.Column.number("Gas", 2),
            Block.Column.number("Travel", 2),
            Block.Column.number("Margin before own labour", 2),
            Block.Column.number("Per hour", 2)),
        lines);
  }

  static Chart stacked() {
    return new Chart.Columns(
        "Work",
        "£",
        List.of("Trim", "Full set, keg", "Handmade set", "Fronts, trim behind", "Lost shoe"),
        List.of(
            new Chart.Series("Materials", List.of(0.0, 180.0, 210.0, 60.0, 4.0)),
            new Chart.Series("Gas", List.of(0.0, 20.0, 45.0, 8.0, 1.0)),
            new Chart.Series("Travel", List.of(80.0, 120.0, 60.0, 70.0, 30.0)),
            new Chart.Series("Sundries", List.of(20.0, 40.0, 20.0, 20.0, 5.0)),
            new Chart.Series("Margin", List.of(400.0, 900.0, 1100.0, 500.0, 20.0))),
        true,
        false,
        List.of());
  }

  static Chart weeks() {
    List<String> names = new ArrayList<>();
    List<List<Double>> values =
        List.of(
            new ArrayList<>(),
            new ArrayList<>(),
            new ArrayList<>(),
            new ArrayList<>(),
            new ArrayList<>(),
            new ArrayList<>(),
            new ArrayList<>());
    for (int week = 1; week <= 44; week++) {
      names.add("W" + (week < 10 ? "0" : "") + week);
      for (int i = 0; i < 7; i++) {
        values.get(i).add(1.0 + (week * (i + 3)) % 7);
      }
    }
    String[] kinds = {
      "under the horse",
      "at the anvil",
      "at the stall jack",
      "making",
      "grinding",
      "setting up",
      "driving"
    };
    List<Chart.Series> series = new ArrayList<>();
    for (int i = 0; i < kinds.length; i++) {
      series.add(new Chart.Series(kinds[i], values.get(i)));
    }
    return new Chart.Columns(
        "Week", "Hours", names, series, true, false, List.of(new Chart.Limit("weekly limit", 40)));
  }

  static Chart dots() {
    return new Chart.Dots(
        "Method",
        "Minutes per shoe",
        List.of(
            new Chart.DotGroup(
                "hot",
                List.of(5.0, 5.5, 6.0, 6.0, 4.5, 7.0, 5.2, 6.6),
                Optional.of(new Chart.Interval(5.7, 5.1, 6.3))),
            new Chart.DotGroup(
                "cold",
                List.of(7.0, 7.5, 6.0, 8.0, 6.5, 9.0, 7.2, 6.6),
                Optional.of(new Chart.Interval(7.1, 6.4, 7.9)))));
  }

  static Chart curve() {
    List<Chart.Point> hot = new ArrayList<>();
    List<Chart.Point> cold = new ArrayList<>();
    for (int shoes = 0; shoes <= 12; shoes++) {
      hot.add(new Chart.Point(shoes, 4.0 + 2.1 * shoes));
      cold.add(new Chart.Point(shoes, 3.4 * shoes));
    }
    return new Chart.Lines(
        "Shoes at the stop",
        "£",
        List.of(new Chart.Line("hot", hot, false), new Chart.Line("cold", cold, true)),
        List.of(),
        List.of(new Chart.Limit("pays from here", 3.1)));
  }

  static Chart bars() {
    return new Chart.Columns(
        "Place",
        "£ per hour",
        List.of(
            "Nether Wendon", "Fallow Barn", "Mill Hatch Riding School and Livery", "Upper Wendon"),
        List.of(new Chart.Series("earned per hour", List.of(41.0, 38.5, 22.0, 30.0))),
        false,
        true,
        List.of(new Chart.Limit("wage", 28)));
  }
}
