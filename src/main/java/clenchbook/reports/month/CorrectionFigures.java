package clenchbook.reports.month;

import clenchbook.billing.BillingDecision;
import clenchbook.billing.corrections.Difference;
import clenchbook.jobs.Job;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FigureText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Where the book and the documents that are out no longer agree, as a table and in words. */
final class CorrectionFigures {
  private CorrectionFigures() {}

  static FigureTable table(BillingDecision billing, EarlierDrafts drafts) {
    List<List<String>> rows = new ArrayList<>();
    for (Difference difference : billing.differences()) {
      rows.add(
          List.of(
              difference.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '),
              difference.number(),
              difference.owner(),
              difference.visit().date().toString(),
              difference.horse(),
              difference.work(),
              Figures.money(difference.billed()),
              Figures.money(difference.now()),
              ChangeWords.inFiles(difference.changes())));
    }
    billing.unbilled().forEach(job -> rows.add(unbilled("not billed", job)));
    billing.included().forEach(job -> rows.add(unbilled("billed late", job)));
    rows.addAll(drafts.rows());
    return new FigureTable(
        "differences",
        List.of("kind", "number", "owner", "date", "horse", "work", "billed", "now", "changed"),
        rows);
  }

  private static List<String> unbilled(String kind, Job job) {
    String owner = job.payers().isEmpty() ? "" : job.payers().get(0).name();
    return List.of(
        kind, "", owner, job.date().toString(), job.horse().name(), job.workName(), "", "", "");
  }

  /** The same in sentences for people. */
  static List<String> sentences(BillingDecision billing, EarlierDrafts drafts, FigureText text) {
    List<String> sentences = new ArrayList<>();
    billing.differences().forEach(difference -> sentences.add(sentence(difference, text)));
    if (!billing.unbilled().isEmpty()) {
      Job first = billing.unbilled().get(0);
      sentences.add(
          billing.unbilled().size()
              + (billing.unbilled().size() == 1 ? " earlier visit is" : " earlier visits are")
              + " on no invoice (the first: "
              + first.date()
              + ", "
              + first.horse().name()
              + "); bill them with --include-earlier.");
    }
    drafts.sentence().ifPresent(sentences::add);
    return sentences;
  }

  private static String sentence(Difference difference, FigureText text) {
    String what =
        difference.visit().date()
            + ", "
            + difference.horse()
            + ", "
            + difference.work()
            + ": invoice "
            + difference.number()
            + " to "
            + difference.owner()
            + ": "
            + ChangeWords.inWords(difference.changes(), text);
    return what
        + switch (difference.kind()) {
          case CORRECTED -> "; a credit note of this month takes it back.";
          case TO_CORRECT ->
              "; next month's run takes it back, or --correct " + difference.number() + " now.";
          case ON_DRAFT -> "; a draft of another month has it.";
          case MAY_BE_HELD ->
              "; the row is gone, but rows of Visits are held back, so nothing was done. Mend those"
                  + " first.";
          case LISTED ->
              "; prices, owners, shares and discounts do not change an invoice that is out.";
        };
  }
}
