package clenchbook.comparison;

import clenchbook.book.Shaping;
import clenchbook.comparison.pricing.CallbackSum;
import clenchbook.comparison.pricing.Pricing;
import clenchbook.comparison.pricing.UnderList;
import clenchbook.comparison.pricing.WorkPrice;
import clenchbook.comparison.questions.CompareRates;
import clenchbook.comparison.questions.Way;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.TableOf;
import clenchbook.texts.Message;
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
    blocks.add(new Block.Heading(1, text.say("comparison.price.heading")));
    if (pricing.works().isEmpty()) {
      blocks.add(new Block.Paragraph(text.say("comparison.price.none")));
      return blocks;
    }
    blocks.add(new Block.Paragraph(basis()));
    if (pricing.impossible() > 0) {
      blocks.add(
          new Block.Paragraph(text.say("comparison.price.impossible", pricing.impossible())));
    }
    losses().forEach(words -> blocks.add(new Block.Paragraph(words)));
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
    blocks.add(new Block.Heading(1, text.say("comparison.under.heading")));
    underList(blocks);
    callbacks(blocks);
    return blocks;
  }

  private String money(BigDecimal amount) {
    return text.money(amount);
  }

  private String basis() {
    BigDecimal target = pricing.target().movePointRight(2).stripTrailingZeros();
    return text.say(
        Message.joined(
            " ",
            List.of(
                wage(),
                pricing.targetGiven()
                    ? Message.of("comparison.price.target.given", target)
                    : Message.of("comparison.price.target.default", target))));
  }

  private Message wage() {
    return pricing.wageGiven()
        ? Message.of(
            "comparison.price.withWage",
            text.currencySign(),
            money(rates.minor().round(rates.wage().orElse(BigDecimal.ZERO))))
        : Message.of("comparison.price.withoutWage", text.currencySign());
  }

  private List<String> losses() {
    return pricing.works().stream()
        .filter(work -> work.loses().isPresent())
        .map(this::loss)
        .toList();
  }

  private String loss(WorkPrice work) {
    return text.say(
        switch (work.loses().orElseThrow()) {
          case FREE ->
              Message.of("comparison.price.free", work.work(), work.jobs(), money(work.cost()));
          case TRAVEL -> loses("comparison.price.loses.travel", work);
          case MINUTES -> loses("comparison.price.loses.minutes", work);
          case MATERIALS -> loses("comparison.price.loses.materials", work);
          case CALLBACKS -> loses("comparison.price.loses.callbacks", work);
        });
  }

  private Message loses(String key, WorkPrice work) {
    return Message.of(
        key, work.work(), work.jobs(), money(work.leftAfterCallbacks()), work.callbacks());
  }

  private Block prices() {
    return TableOf.rows(pricing.works())
        .words(text.say("comparison.price.work"), 4, WorkPrice::work)
        .count(text.say("comparison.price.jobs"), 1, WorkPrice::jobs)
        .number(
            text.say("comparison.price.list"), 2, work -> work.list().map(text::amount).orElse(""))
        .number(text.say("comparison.price.wage"), 2, each -> text.amount(each.forWage()))
        .number(text.say("comparison.price.target"), 2, each -> text.amount(each.forTarget()))
        .number(text.say("comparison.price.left"), 2, each -> text.amount(each.margin()))
        .number(text.say("comparison.price.rise"), 2, each -> text.amount(each.riseBrings()))
        .captioned(text.say("comparison.price.title"));
  }

  private String rise() {
    BigDecimal sum =
        pricing.works().stream()
            .map(WorkPrice::riseBrings)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    return text.say("comparison.price.riseBrings", money(sum));
  }

  private void underList(List<Block> blocks) {
    if (pricing.underList().isEmpty()) {
      blocks.add(new Block.Paragraph(text.say("comparison.under.none")));
      return;
    }
    String title =
        pricing.underList().size() > MOST_ROWS
            ? text.say("comparison.under.titleFirst", MOST_ROWS)
            : text.say("comparison.under.title");
    blocks.add(
        TableOf.rows(pricing.underList().stream().limit(MOST_ROWS).toList())
            .words(text.say("comparison.under.owner"), 4, UnderList::owner)
            .count(text.say("comparison.price.jobs"), 1, UnderList::jobs)
            .number(text.say("comparison.under.by"), 2, each -> text.amount(each.by()))
            .captioned(title));
  }

  private Optional<String> callbackWords() {
    int days = rates.callbackDays();
    int count = pricing.callbacks().size();
    if (count == 0) {
      return Optional.of(text.say("comparison.callbacks.none", days));
    }
    return Optional.of(
        text.say("comparison.callbacks.cost", count, days, money(pricing.callbackNetCost())));
  }

  private static Message shaped(CallbackSum sum) {
    return switch (sum.shaping().orElse(Shaping.NONE)) {
      case HOT -> Way.HOT.told();
      case COLD -> Way.COLD.told();
      case NONE -> Message.of("comparison.callbacks.notShaped");
    };
  }

  private void callbacks(List<Block> blocks) {
    if (pricing.callbacks().isEmpty()) {
      return;
    }
    blocks.add(
        TableOf.rows(pricing.callbackSums().stream().filter(each -> each.callbacks() > 0).toList())
            .words(text.say("comparison.price.work"), 4, CallbackSum::work)
            .words(text.say("comparison.callbacks.shaped"), 1, each -> text.say(shaped(each)))
            .count(text.say("comparison.price.jobs"), 1, CallbackSum::jobs)
            .count(text.say("comparison.callbacks.count"), 1, CallbackSum::callbacks)
            .number(text.say("comparison.callbacks.costs"), 2, each -> text.amount(each.cost()))
            .number(
                text.say("comparison.callbacks.charged"), 2, each -> text.amount(each.charged()))
            .captioned(text.say("comparison.callbacks.title")));
  }
}
