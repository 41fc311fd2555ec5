package clenchbook.tax;

import clenchbook.book.Settings;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.TableOf;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.page.PageWords;
import clenchbook.tax.page.Translations;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.rates.RateUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** What stands behind the preparer's page, in English: the evidence, the ties, the sources. */
final class AnnexPages {
  private static final int MOST_LEFT = 40;

  private final YearPages pages;
  private final Reconciliation ties;
  private final RateLookup rates;
  private final PageWords words;
  private final List<Block> blocks = new ArrayList<>();

  AnnexPages(YearPages pages, Reconciliation ties, RateLookup rates) {
    this.pages = pages;
    this.ties = ties;
    this.rates = rates;
    Settings settings = pages.figures().input().book().settings();
    this.words =
        PageWords.of(PageWords.ENGLISH, Translations.NONE)
            .with(new FigureText(settings.texts().in(PageWords.ENGLISH), settings.currency()));
  }

  List<Block> blocks() {
    beside();
    for (TaxTable table : pages.tax()) {
      if (!table.onPage()) {
        blocks.add(new Block.Heading(2, table.title()));
        blocks.add(new PrintedTables(words).of(table));
      }
    }
    pages.gauges().sources().ifPresent(blocks::add);
    mileage();
    reconciliation();
    categories();
    sources();
    return List.copyOf(blocks);
  }

  private void beside() {
    blocks.add(new Block.Heading(1, "Beside the lines"));
    blocks.add(
        new Block.Paragraph(
            "Parts of the lines, the vehicle the other way, and what counts on no line. None of it"
                + " is in a total."));
    blocks.add(
        new LineBlocks(words)
            .table(
                pages.summary().stream()
                    .filter(line -> line.kind() == SummaryLine.Kind.BESIDE)
                    .toList()));
  }

  private void table(String heading, FigureTable table) {
    blocks.add(new Block.Heading(2, heading));
    blocks.add(new PrintedTables(words).of(table));
  }

  private void mileage() {
    boolean odd = !pages.tables().flags().rows().isEmpty();
    boolean unlogged = !pages.figures().reconstructed().isEmpty();
    if (odd || unlogged) {
      blocks.add(new Block.Heading(1, "The mileage log"));
    }
    if (odd) {
      table("What is odd in the log", pages.tables().flags());
    }
    if (unlogged) {
      table(
          "Driven without a trip in the log, as reconstructed from Places",
          pages.tables().reconstructed());
    }
  }

  private void reconciliation() {
    blocks.add(new Block.Heading(1, "Tied to register and book"));
    blocks.add(
        TableOf.rows(printedSteps())
            .words("Step", 12, PrintedStep::label)
            .number("Amount", 3, PrintedStep::amount)
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
      if (!step.part().equals(part)) {
        part = step.part();
        printed.add(new PrintedStep(part, "", false));
      }
      printed.add(new PrintedStep(step.label(), money(step.amount()), step.result()));
    }
    return printed;
  }

  private static String money(BigDecimal amount) {
    return amount.toPlainString();
  }

  private void left() {
    if (ties.left().isEmpty()) {
      blocks.add(new Block.Paragraph("Nothing is left over."));
      return;
    }
    blocks.add(
        TableOf.rows(ties.left().stream().limit(MOST_LEFT).toList())
            .words("Row", 3, left -> left.sheet() + " " + YearTables.row(left.row()))
            .words("Date", 3, left -> left.date().toString())
            .words("Who", 5, left -> left.who())
            .words("Why", 8, left -> left.why())
            .amount("Amount", 3, left -> left.amount())
            .captioned("Left over, by row"));
    if (ties.left().size() > MOST_LEFT) {
      int more = ties.left().size() - MOST_LEFT;
      blocks.add(new Block.Paragraph("And " + more + " more in figures/reconciliation.csv."));
    }
  }

  private void categories() {
    blocks.add(new Block.Heading(1, "Your words for costs, and where they count"));
    blocks.add(new PrintedTables(words).of(pages.tables().categories()));
  }

  private void sources() {
    blocks.add(new Block.Heading(1, "Rates and line numbers used, with their sources"));
    blocks.add(
        TableOf.rows(rates.used())
            .words("What", 7, Rate::name)
            .words("Value", 4, this::value)
            .words("In force", 6, rate -> rate.from() + " to " + rate.to())
            .words("Source", 9, Rate::citation)
            .plain());
  }

  private String value(Rate rate) {
    String currency = pages.figures().input().book().settings().currency();
    String unit = rate.unit() == RateUnit.MONEY ? currency : rate.unit().text();
    return rate.unit() == RateUnit.PERCENT ? rate.value() + " %" : rate.value() + " " + unit;
  }
}
