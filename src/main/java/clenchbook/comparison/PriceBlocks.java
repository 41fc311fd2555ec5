package clenchbook.comparison;

import clenchbook.comparison.pricing.CallbackSum;
import clenchbook.comparison.pricing.Pricing;
import clenchbook.comparison.pricing.UnderList;
import clenchbook.comparison.pricing.WorkPrice;
import clenchbook.report.Block;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** The part of the report about prices and callbacks. */
final class PriceBlocks {

  private static final int MOST_ROWS = 20;

  private final Pricing pricing;
  private final CompareRates rates;

  PriceBlocks(Comparisons all) {
    this.pricing = all.pricing();
    this.rates = all.rates();
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Heading(1, "The price to ask"));
    if (pricing.works().isEmpty()) {
      blocks.add(new Block.Paragraph("There is no work in this period to price."));
      return blocks;
    }
    blocks.add(new Block.Paragraph(basis()));
    if (pricing.impossible() > 0) {
      blocks.add(
          new Block.Paragraph(
              Numbers.count(pricing.impossible(), "job claims", "jobs claim")
                  + " more minutes than a day has. No comparison uses such minutes, but the labour"
                  + " they stand for is in the costs below: mend them first."));
    }
    losses().forEach(text -> blocks.add(new Block.Paragraph(text)));
    blocks.add(prices());
    blocks.add(new Block.Paragraph(rise()));
    underList(blocks);
    callbacks(blocks);
    return blocks;
  }

  private String money(BigDecimal amount) {
    return rates.currency() + " " + amount.toPlainString();
  }

  private String basis() {
    String target =
        pricing.target().movePointRight(2).stripTrailingZeros().toPlainString()
            + " % ("
            + (pricing.targetGiven() ? "given" : "default, since none is given")
            + ")";
    String wage =
        pricing.wageGiven()
            ? "the hourly wage of "
                + money(rates.minor().round(rates.wage().orElse(BigDecimal.ZERO)))
            : "no wage, because none is given: time costs nothing here, so these prices are too"
                + " low";
    return "All prices are without tax, in "
        + rates.currency()
        + ", and are means over the period: a job pays for its materials, gas, sundries, travel,"
        + " overheads and "
        + wage
        + ". The target margin is "
        + target
        + " of the price.";
  }

  private List<String> losses() {
    return pricing.works().stream()
        .filter(work -> work.loses().isPresent())
        .map(this::loss)
        .toList();
  }

  private String loss(WorkPrice work) {
    WorkPrice.Loss why = work.loses().orElseThrow();
    if (why == WorkPrice.Loss.FREE) {
      return work.work()
          + " was done for nothing: "
          + Numbers.count(work.jobs(), "job", "jobs")
          + " cost "
          + money(work.cost())
          + ".";
    }
    return work.work()
        + " loses money: "
        + Numbers.count(work.jobs(), "job leaves ", "jobs leave ")
        + money(work.leftAfterCallbacks())
        + " after everything"
        + (work.callbacks() > 0 ? " and their callbacks" : "")
        + ", and what lies furthest above the usual is "
        + why.word()
        + ".";
  }

  private Block prices() {
    List<Block.Row> rows =
        pricing.works().stream()
            .map(
                work ->
                    Block.Row.of(
                        work.work(),
                        String.valueOf(work.jobs()),
                        work.list().map(BigDecimal::toPlainString).orElse(""),
                        work.forWage().toPlainString(),
                        work.forTarget().toPlainString(),
                        work.margin().toPlainString(),
                        work.riseBrings().toPlainString()))
            .toList();
    return new Block.Table(
        "Prices by Work",
        List.of(
            Block.Column.words("Work", 4),
            Block.Column.number("Jobs", 1),
            Block.Column.number("List", 2),
            Block.Column.number("Meets the wage", 2),
            Block.Column.number("Meets the target", 2),
            Block.Column.number("Left in all", 2),
            Block.Column.number("5 % more brings", 2)),
        rows);
  }

  private String rise() {
    BigDecimal sum =
        pricing.works().stream()
            .map(WorkPrice::riseBrings)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    return "At this period's mix a rise of 5 % on everything brings " + money(sum) + ".";
  }

  private void underList(List<Block> blocks) {
    if (pricing.underList().isEmpty()) {
      blocks.add(new Block.Paragraph("Nobody was billed under the list, free visits apart."));
      return;
    }
    List<Block.Row> rows =
        pricing.underList().stream().limit(MOST_ROWS).map(PriceBlocks::under).toList();
    blocks.add(
        new Block.Table(
            "Billed under the list, free visits apart"
                + (pricing.underList().size() > MOST_ROWS ? " (the first " + MOST_ROWS + ")" : ""),
            List.of(
                Block.Column.words("Owner", 4),
                Block.Column.number("Jobs", 1),
                Block.Column.number("Under the list by", 2)),
            rows));
  }

  private static Block.Row under(UnderList each) {
    return Block.Row.of(each.owner(), String.valueOf(each.jobs()), each.by().toPlainString());
  }

  private void callbacks(List<Block> blocks) {
    blocks.add(new Block.Heading(2, "Callbacks"));
    int days = rates.callbackDays();
    if (pricing.callbacks().isEmpty()) {
      blocks.add(
          new Block.Paragraph(
              "No free or lost-shoe visit came within " + days + " days of the visit before it."));
      return;
    }
    int count = pricing.callbacks().size();
    blocks.add(
        new Block.Paragraph(
            Numbers.count(count, "free or lost-shoe visit came", "free or lost-shoe visits came")
                + " within "
                + days
                + " days of shoes being put on; time included, "
                + (count == 1 ? "it" : "they")
                + " cost "
                + money(pricing.callbackNetCost())
                + " beyond what was charged. That cost belongs to the work that brought "
                + (count == 1 ? "it" : "them")
                + " about."));
    blocks.add(
        new Block.Table(
            "Callbacks by the work that caused them",
            List.of(
                Block.Column.words("Work", 4),
                Block.Column.words("Shaped", 1),
                Block.Column.number("Jobs", 1),
                Block.Column.number("Callbacks", 1),
                Block.Column.number("Cost", 2),
                Block.Column.number("Charged", 2)),
            pricing.callbackSums().stream()
                .filter(each -> each.callbacks() > 0)
                .map(PriceBlocks::sum)
                .toList()));
  }

  private static Block.Row sum(CallbackSum each) {
    return Block.Row.of(
        each.work(),
        each.method(),
        String.valueOf(each.jobs()),
        String.valueOf(each.callbacks()),
        each.cost().toPlainString(),
        each.charged().toPlainString());
  }
}
