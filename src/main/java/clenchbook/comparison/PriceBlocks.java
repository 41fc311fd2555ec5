package clenchbook.comparison;

import clenchbook.comparison.pricing.CallbackSum;
import clenchbook.comparison.pricing.Pricing;
import clenchbook.comparison.pricing.UnderList;
import clenchbook.comparison.pricing.WorkPrice;
import clenchbook.comparison.questions.CompareRates;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.TableOf;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The part of the report about prices and callbacks. */
final class PriceBlocks {

  private static final int MOST_ROWS = 20;

  private final Pricing pricing;
  private final CompareRates rates;
  private final FigureText text;

  PriceBlocks(Comparisons all) {
    this.pricing = all.pricing();
    this.rates = all.rates();
    this.text = rates.text();
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
                  + " they stand for is in the costs below: put them right first."));
    }
    losses().forEach(text -> blocks.add(new Block.Paragraph(text)));
    blocks.add(prices());
    blocks.add(new Block.Paragraph(rise()));
    callbackWords().ifPresent(words -> blocks.add(new Block.Paragraph(words)));
    return blocks;
  }

  /** For the annex: who was billed under the list, and which work callbacks came from. */
  List<Block> further() {
    List<Block> blocks = new ArrayList<>();
    if (pricing.works().isEmpty()) {
      return blocks;
    }
    blocks.add(new Block.Heading(1, "Under the list, and callbacks"));
    underList(blocks);
    callbacks(blocks);
    return blocks;
  }

  private String money(BigDecimal amount) {
    return text.money(amount);
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
        + text.currencySign()
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
    return TableOf.rows(pricing.works())
        .words("Work", 4, WorkPrice::work)
        .count("Jobs", 1, WorkPrice::jobs)
        .number("List", 2, work -> work.list().map(text::amount).orElse(""))
        .number("Meets the wage", 2, each -> text.amount(each.forWage()))
        .number("Meets the target", 2, each -> text.amount(each.forTarget()))
        .number("Left in all", 2, each -> text.amount(each.margin()))
        .number("5 % more brings", 2, each -> text.amount(each.riseBrings()))
        .captioned("Prices by Work");
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
    String rest = pricing.underList().size() > MOST_ROWS ? " (the first " + MOST_ROWS + ")" : "";
    blocks.add(
        TableOf.rows(pricing.underList().stream().limit(MOST_ROWS).toList())
            .words("Owner", 4, UnderList::owner)
            .count("Jobs", 1, UnderList::jobs)
            .number("Under the list by", 2, each -> text.amount(each.by()))
            .captioned("Billed under the list, free visits apart" + rest));
  }

  private Optional<String> callbackWords() {
    int days = rates.callbackDays();
    int count = pricing.callbacks().size();
    if (count == 0) {
      return Optional.of(
          "No free or lost-shoe visit came within %s days of the visit before it."
              .formatted(text.count(days)));
    }
    return Optional.of(
        (count == 1
                ? "1 free or lost-shoe visit came within %2$s days of shoes being put on; time"
                    + " included, it cost %3$s beyond what was charged. That cost belongs to the"
                    + " work that brought it about."
                : "%1$s free or lost-shoe visits came within %2$s days of shoes being put on; time"
                    + " included, they cost %3$s beyond what was charged. That cost belongs to the"
                    + " work that brought them about.")
            .formatted(text.count(count), text.count(days), money(pricing.callbackNetCost())));
  }

  private void callbacks(List<Block> blocks) {
    if (pricing.callbacks().isEmpty()) {
      return;
    }
    blocks.add(
        TableOf.rows(pricing.callbackSums().stream().filter(each -> each.callbacks() > 0).toList())
            .words("Work", 4, CallbackSum::work)
            .words("Shaped", 1, CallbackSum::method)
            .count("Jobs", 1, CallbackSum::jobs)
            .count("Callbacks", 1, CallbackSum::callbacks)
            .number("Cost", 2, each -> text.amount(each.cost()))
            .number("Charged", 2, each -> text.amount(each.charged()))
            .captioned("Callbacks by the work that caused them"));
  }
}
