package clenchbook.tax;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.TableOf;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.rates.RateUnit;
import clenchbook.texts.Texts;
import java.util.ArrayList;
import java.util.List;

/** What stands behind the preparer's page: the evidence, the ties, the sources. */
final class AnnexPages {
  private static final int MOST_LEFT = 40;

  private final YearPages pages;
  private final Reconciliation ties;
  private final RateLookup rates;
  private final String currency;
  private final PageWords words;
  private final List<Block> blocks = new ArrayList<>();

  AnnexPages(YearPages pages, Reconciliation ties, RateLookup rates, Texts texts) {
    this.pages = pages;
    this.ties = ties;
    this.rates = rates;
    this.currency = pages.figures().input().book().settings().currency();
    this.words = new PageWords(new FigureText(texts, currency));
  }

  List<Block> blocks() {
    beside();
    pages.tax().stream().filter(table -> !table.onPage()).forEach(this::table);
    pages.gauges().sources(words).ifPresent(blocks::add);
    mileage();
    reconciliation();
    categories();
    sources();
    return List.copyOf(blocks);
  }

  private void heading(String said) {
    blocks.add(new Block.Heading(1, said));
  }

  private void beside() {
    heading(words.say("tax.annex.beside"));
    blocks.add(new Block.Paragraph(words.say("tax.annex.besideWhat")));
    blocks.add(
        new LineBlocks(words)
            .table(
                pages.summary().stream()
                    .filter(line -> line.kind() == SummaryLine.Kind.BESIDE)
                    .toList()));
  }

  private void table(TaxTable table) {
    blocks.add(new Block.Heading(2, words.say(table.title())));
    blocks.add(new PrintedTables(words).of(table));
  }

  private void mileage() {
    boolean odd = !pages.figures().log().flags().isEmpty();
    boolean unlogged = !pages.figures().reconstructed().isEmpty();
    if (odd || unlogged) {
      heading(words.say("tax.log"));
    }
    if (odd) {
      table(pages.tables().flags());
    }
    if (unlogged) {
      table(pages.tables().reconstructed());
    }
  }

  private void reconciliation() {
    heading(words.say("tax.ties"));
    blocks.add(
        TableOf.rows(printedSteps())
            .words(words.say("tax.column.step"), 12, PrintedStep::label)
            .number(words.say("tax.column.amount"), 3, PrintedStep::amount)
            .totalsWhere(PrintedStep::result)
            .plain());
    left();
  }

  /** A line of the table that ties register and book; a part's name stands without an amount. */
  private record PrintedStep(String label, String amount, boolean result) {}

  private List<PrintedStep> printedSteps() {
    List<PrintedStep> printed = new ArrayList<>();
    String part = "";
    for (Reconciliation.Step step : ties.steps()) {
      if (!step.part().file().equals(part)) {
        part = step.part().file();
        printed.add(new PrintedStep(words.say(step.part()), "", false));
      }
      printed.add(
          new PrintedStep(words.say(step.label()), words.amount(step.amount()), step.result()));
    }
    return printed;
  }

  private void left() {
    if (ties.left().isEmpty()) {
      blocks.add(new Block.Paragraph(words.say("tax.ties.nothingLeft")));
      return;
    }
    blocks.add(
        TableOf.rows(ties.left().stream().limit(MOST_LEFT).toList())
            .words(words.say("tax.column.row"), 3, this::rowOf)
            .words(words.say("tax.column.date"), 3, left -> left.date().toString())
            .words(words.say("tax.column.who"), 5, left -> left.who())
            .words(words.say("tax.column.why"), 8, left -> words.say(left.why()))
            .number(words.say("tax.column.amount"), 3, left -> words.amount(left.amount()))
            .captioned(words.say("tax.ties.left")));
    if (ties.left().size() > MOST_LEFT) {
      int more = ties.left().size() - MOST_LEFT;
      blocks.add(new Block.Paragraph(words.say("tax.more", more, "figures/reconciliation.csv")));
    }
  }

  private String rowOf(Reconciliation.Left left) {
    return left.ofRegister()
        ? words.say("tax.ties.register")
        : left.sheet() + " " + YearTables.row(left.row());
  }

  private void categories() {
    TaxTable table = pages.tables().categories();
    heading(words.say(table.title()));
    blocks.add(new PrintedTables(words).of(table));
  }

  private void sources() {
    heading(words.say("tax.sources"));
    blocks.add(
        TableOf.rows(rates.used())
            .words(words.say("tax.column.what"), 7, rate -> words.say(Gauges.named(rate)))
            .words(words.say("tax.column.value"), 4, this::value)
            .words(
                words.say("tax.column.inForce"),
                6,
                rate -> words.say("tax.period", rate.from(), rate.to()))
            .words(words.say("tax.column.source"), 9, rate -> words.say(rate.cited()))
            .plain());
  }

  private String value(Rate rate) {
    if (rate.isUnnumbered()) {
      return "";
    }
    if (rate.unit() == RateUnit.WORD) {
      return words.say(rate.saidValue());
    }
    if (!rate.unit().isNumeric()) {
      return rate.value() + " " + words.say(rate.unit().said());
    }
    String value = words.amount(rate.amount());
    return switch (rate.unit()) {
      case PERCENT -> value + " %";
      case MONEY -> value + " " + currency;
      default -> value + " " + words.say(rate.unit().said());
    };
  }
}
