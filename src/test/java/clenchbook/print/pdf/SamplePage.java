package clenchbook.print.pdf;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.MonthPage;
import clenchbook.texts.InEnglish;
import java.util.List;
import java.util.Optional;

/** An invented month's page with every kind of part. */
public final class SamplePage {
  private SamplePage() {}

  public static MonthPage full() {
    List<Block> blocks = SampleReports.margins().blocks();
    return new MonthPage(
        "October 2026",
        "Larkhill Forge",
        InEnglish.TEXTS,
        List.of(
            "3 rows of Visits were held back and stand on no invoice: Visits!A14, Visits!A15,"
                + " Visits!C20.",
            "Mr <Ash> & \"Sons\" is unknown on the sheet Owners (Visits!C9)."),
        new MonthPage.Reading(
            List.of("Assumed, because Settings do not say: Units metric <& so on>."),
            List.of(new MonthPage.FileLink("margins.pdf", "Every sheet and column", ""))),
        new MonthPage.Problems(
            "The book has 7 problems.",
            List.of(new MonthPage.FileLink("problems.csv", "Each with its cell", ""))),
        List.of(
            new MonthPage.Section("Margins", "margins.pdf", blocks),
            new MonthPage.Section(
                "Comparisons",
                "comparisons.pdf",
                List.of(new Block.Paragraph("Too few jobs were measured to compare."))),
            new MonthPage.Section("Workload", "", List.of()),
            new MonthPage.Section(
                "The reports",
                "",
                List.of(
                    new Block.Answers(
                        List.of(
                            new Block.Answered(
                                "Margins",
                                "margins.pdf",
                                "It earned <more> than the wage.",
                                Optional.of(
                                    new Block.Picture(
                                        "Where it went",
                                        "Most is <labour>.",
                                        SampleReports.bars()))),
                            new Block.Answered("Margins", "margins.pdf", "No picture.")))))),
        List.of(
            new MonthPage.FileGroup(
                "Invoices",
                List.of(
                    new MonthPage.FileLink(
                        "invoices/2026-0041 Ashgrove #1 & Żubr?.pdf",
                        "2026-0041 Ashgrove",
                        "£292.50 due by 14 November 2026"),
                    new MonthPage.FileLink("invoices/2026-0042 Bell.pdf", "2026-0042 Bell", ""))),
            new MonthPage.FileGroup(
                "Reports",
                List.of(
                    new MonthPage.FileLink(
                        "margins.pdf", "Margins", "the month by Work, owner and place")))));
  }

  public static MonthPage empty() {
    return new MonthPage(
        "October 2026",
        "",
        InEnglish.TEXTS,
        List.of(),
        new MonthPage.Reading(List.of(), List.of()),
        new MonthPage.Problems("Nothing is to be put right.", List.of()),
        List.of(),
        List.of());
  }
}
