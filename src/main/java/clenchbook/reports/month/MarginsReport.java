package clenchbook.reports.month;

import clenchbook.book.Names;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.costing.JobCost;
import clenchbook.costing.Overheads;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Block.Heading;
import clenchbook.reports.blocks.Block.PageBreak;
import clenchbook.reports.blocks.Block.Paragraph;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.Report;
import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the margins say, for print and for the month's page. */
public final class MarginsReport {
  private static final int MOST_BELOW_WAGE = 25;
  private static final int FEWEST_OWNERS = 10;

  private final Margins margins;
  private final String period;
  private final MarginTables tables;
  private final MarginPictures pictures;
  private final FigureText text;

  private MarginsReport(Margins margins, String period) {
    this.margins = margins;
    this.period = period;
    this.tables = new MarginTables(margins);
    this.pictures = new MarginPictures(margins);
    this.text = FigureText.of(margins.settings());
  }

  /**
   * The report.
   *
   * @param margins the margins
   * @param period the period in words
   * @return the report, named {@code margins}
   */
  public static Report of(Margins margins, String period) {
    MarginsReport report = new MarginsReport(margins, period);
    boolean work = margins.whole().isPresent();
    return new Report(
        "margins",
        report.text.say("month.margins.label"),
        report.text.say("month.margins.title"),
        report.subtitle(),
        report.text.say("month.margins.caution"),
        Optional.of(new MarginsAnswer(margins).page()),
        work ? report.evidence() : List.of(),
        work ? report.annex() : List.of(),
        report.text.texts());
  }

  private String subtitle() {
    Settings settings = margins.settings();
    String business = settings.text(Setting.BUSINESS_NAME);
    return Stream.of(business, period, text.say("month.margins.amounts", text.currencySign()))
        .filter(text -> !text.isEmpty())
        .reduce((one, other) -> one + " · " + other)
        .orElse("");
  }

  private List<Block> evidence() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(1, text.say("month.margins.byWork")));
    blocks.add(tables.priced(MarginBy.WORK, margins.byWork()));
    blocks.add(pictures.perHour());
    blocks.add(new Heading(1, text.say("month.margins.byShoe")));
    blocks.add(tables.leftWithWhole(MarginBy.SHOE, margins.byShoe()));
    blocks.add(new PageBreak());
    blocks.add(new Heading(1, text.say("month.margins.byPlace")));
    blocks.add(tables.leftWithWhole(MarginBy.PLACE, margins.byPlace()));
    blocks.add(new PageBreak());
    blocks.add(new Heading(1, text.say("month.margins.leastLeft")));
    blocks.add(tables.leftOf(MarginBy.OWNER, leastLeft()));
    blocks.addAll(belowWage());
    return blocks;
  }

  private List<MarginGroup> leastLeft() {
    return margins.byOwner().stream()
        .sorted(
            Comparator.comparing(MarginGroup::marginAfter)
                .thenComparing(MarginGroup::name, Names.ORDER))
        .limit(FEWEST_OWNERS)
        .toList();
  }

  private List<Block> annex() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(1, text.say("month.margins.howMade")));
    blocks.add(new Paragraph(overheadsInWords()));
    margins
        .whole()
        .flatMap(this::roundingInWords)
        .ifPresent(words -> blocks.add(new Paragraph(words)));
    blocks.add(new Heading(1, text.say("month.margins.whereCosts")));
    blocks.add(tables.costs(MarginBy.WORK, margins.byWork()));
    blocks.add(tables.costs(MarginBy.SHOE, margins.byShoe()));
    blocks.add(tables.costs(MarginBy.PLACE, margins.byPlace()));
    blocks.add(new Heading(1, text.say("month.margins.byOwner")));
    blocks.add(tables.leftWithWhole(MarginBy.OWNER, margins.byOwner()));
    blocks.add(tables.costs(MarginBy.OWNER, margins.byOwner()));
    return blocks;
  }

  private String overheadsInWords() {
    String hours = text.plain(margins.settings().number(Setting.HOURS_PER_YEAR));
    String spread =
        margins.settings().isGiven(Setting.HOURS_PER_YEAR)
            ? text.say("month.overheads.spread", hours)
            : text.say("month.overheads.spreadDefault", hours);
    return yearlyInWords(margins.overheads()) + " " + spread;
  }

  private String yearlyInWords(Overheads overheads) {
    String yearly = text.about(overheads.yearly());
    if (overheads.basis() == Basis.STANDARD) {
      return text.say("month.overheads.given", yearly);
    }
    if (overheads.months().isEmpty()) {
      return text.say("month.overheads.none", yearly);
    }
    int months = overheads.months().size();
    String first = text.month(overheads.months().get(0));
    String last = text.month(overheads.months().get(months - 1));
    return text.say("month.overheads.expenses", yearly, months, first, last);
  }

  /** Jobs and documents are rounded each for itself; empty where they agree. */
  private Optional<String> roundingInWords(MarginGroup whole) {
    BigDecimal difference = margins.rounding();
    if (difference.signum() == 0) {
      return Optional.empty();
    }
    BigDecimal most = difference.ulp().multiply(BigDecimal.valueOf(whole.jobs().size()));
    String billed = text.money(margins.billedNet());
    return Optional.of(
        difference.abs().compareTo(most) <= 0
            ? text.say("month.margins.rounding", billed, text.money(difference))
            : text.say("month.margins.moreThanRounding", billed, text.money(difference)));
  }

  private List<Block> belowWage() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(1, text.say("month.margins.belowWage")));
    List<JobCost> jobs = margins.belowWage();
    if (jobs.isEmpty()) {
      blocks.add(new Paragraph(text.say("month.margins.noneBelow")));
      return blocks;
    }
    int shown = Math.min(MOST_BELOW_WAGE, jobs.size());
    blocks.add(
        new Paragraph(
            shown < jobs.size()
                ? text.say("month.margins.someBelow", jobs.size(), shown)
                : text.say("month.margins.allBelow", jobs.size())));
    blocks.add(tables.belowWage(jobs.subList(0, shown)));
    return blocks;
  }
}
