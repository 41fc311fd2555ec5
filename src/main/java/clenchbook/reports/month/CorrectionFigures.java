package clenchbook.reports.month;

import clenchbook.billing.BillingDecision;
import clenchbook.billing.corrections.Difference;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.jobs.Job;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.NamedRows;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Where the book and the documents that are out no longer agree, as a table and in words. */
final class CorrectionFigures {
  private CorrectionFigures() {}

  static FigureTable table(BillingDecision billing, EarlierDrafts drafts) {
    NamedRows rows =
        NamedRows.of(
            "kind", "number", "owner", "date", "horse", "work", "billed", "now", "changed");
    for (Difference difference : billing.differences()) {
      rows.row()
          .put("kind", difference.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '))
          .put("number", difference.number())
          .put("owner", difference.owner())
          .put("date", difference.visit().date().toString())
          .put("horse", difference.horse())
          .put("work", difference.work())
          .put("billed", Figures.money(difference.billed()))
          .put("now", Figures.money(difference.now()))
          .put("changed", ChangeWords.inFiles(difference.changes()));
    }
    billing.unbilled().forEach(job -> unbilled(rows.row(), "not billed", job));
    billing.included().forEach(job -> unbilled(rows.row(), "billed late", job));
    drafts.documents().forEach(document -> notSent(rows.row(), document));
    return rows.named("differences");
  }

  private static void unbilled(NamedRows.Row row, String kind, Job job) {
    row.put("kind", kind)
        .put("owner", job.payers().isEmpty() ? "" : job.payers().get(0).name())
        .put("date", job.date().toString())
        .put("horse", job.horse().name())
        .put("work", job.workName());
  }

  private static void notSent(NamedRows.Row row, BilledDocument document) {
    row.put("kind", "not sent")
        .put("number", document.number())
        .put("owner", document.owner())
        .put("date", document.date().toString())
        .put("billed", Figures.money(document.net()));
  }

  /** The same in sentences for people. */
  static List<String> sentences(BillingDecision billing, EarlierDrafts drafts, FigureText text) {
    List<String> sentences = new ArrayList<>();
    billing.differences().forEach(difference -> sentences.add(sentence(difference, text)));
    if (!billing.unbilled().isEmpty()) {
      Job first = billing.unbilled().get(0);
      sentences.add(
          text.say(
              "month.unbilled", billing.unbilled().size(), first.date(), first.horse().name()));
    }
    drafts.sentence(text).ifPresent(sentences::add);
    return sentences;
  }

  private static String sentence(Difference difference, FigureText text) {
    String what =
        text.say(
            "month.difference.what",
            difference.visit().date() + ", " + difference.horse() + ", " + difference.work(),
            difference.number(),
            difference.owner(),
            ChangeWords.inWords(difference.changes(), text));
    return switch (difference.kind()) {
      case CORRECTED -> text.say("month.difference.corrected", what);
      case TO_CORRECT -> text.say("month.difference.toCorrect", what, difference.number());
      case ON_DRAFT -> text.say("month.difference.onDraft", what);
      case MAY_BE_HELD -> text.say("month.difference.mayBeHeld", what);
      case LISTED -> text.say("month.difference.listed", what);
    };
  }
}
