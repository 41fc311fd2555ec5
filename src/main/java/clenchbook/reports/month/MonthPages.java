package clenchbook.reports.month;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Names;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.book.understood.Assumptions;
import clenchbook.book.understood.Understood;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.MonthPage;
import clenchbook.reports.blocks.MonthPage.FileGroup;
import clenchbook.reports.blocks.MonthPage.FileLink;
import clenchbook.reports.blocks.MonthPage.Section;
import clenchbook.reports.blocks.Report;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Puts a month on one page: what to send and collect, who is overdue, which horses are due, what to
 * order, the body; each report's answer with the link to it; then all other files.
 */
public final class MonthPages {
  private final MonthFindings month;
  private final Map<String, String> documentFiles;
  private final Collection<String> files;
  private final FigureText text;

  private MonthPages(
      MonthFindings month, Map<String, String> documentFiles, Collection<String> files) {
    this.month = month;
    this.documentFiles = documentFiles;
    this.files = files;
    this.text = FigureText.of(month.jobs().index().book().settings());
  }

  /**
   * The page.
   *
   * @param month the month
   * @param understood what was made of the book's columns
   * @param documentFiles the file of each invoice and credit note, by number
   * @param files every other file of the run, as paths
   * @return the page
   */
  public static MonthPage of(
      MonthFindings month,
      Understood understood,
      Map<String, String> documentFiles,
      Collection<String> files) {
    MonthPages pages = new MonthPages(month, documentFiles, files);
    Settings settings = month.jobs().index().book().settings();
    return new MonthPage(
        pages.text.month(month.month()),
        settings.text(Setting.BUSINESS_NAME),
        "en",
        month.differencesInWords(),
        pages.reading(settings, understood),
        pages.problems(),
        pages.sections(),
        pages.groups());
  }

  /** By whose words the book was read, what was assumed, and what was left unread. */
  private MonthPage.Reading reading(Settings settings, Understood understood) {
    List<String> lines = new ArrayList<>();
    understood
        .headingsFile()
        .ifPresent(name -> lines.add("Your own words were taken from %s.".formatted(name)));
    List<Message> assumed = Assumptions.of(settings, understood);
    if (!assumed.isEmpty()) {
      lines.add(text.say("month.reading.assumed", Message.joined("; ", assumed)));
    }
    List<String> unread =
        understood.columns().stream()
            .filter(column -> column.holdsMoney() && !column.heading().isEmpty())
            .map(column -> column.sheet() + "!" + column.column() + " " + column.heading())
            .toList();
    if (!unread.isEmpty()) {
      lines.add(
          "Not read, though money or minutes stand there: %s."
              .formatted(String.join(", ", unread)));
    }
    return new MonthPage.Reading(
        lines,
        links(List.of(new FileLink("figures/understood.csv", "Every sheet and column", ""))));
  }

  /** How many problems there are and where each of them stands. */
  private MonthPage.Problems problems() {
    Collected sums = Collected.of(month);
    if (sums.problems() == 0) {
      return new MonthPage.Problems("Nothing in the book is to be put right.", List.of());
    }
    String held =
        switch (sums.held()) {
          case 0 -> "No row is held back.";
          case 1 -> "1 problem holds a row back, which is neither billed nor counted.";
          default ->
              "%s problems hold rows back, which are neither billed nor counted."
                  .formatted(text.count(sums.held()));
        };
    String all =
        sums.problems() == 1
            ? "The book has 1 problem."
            : "The book has %s problems.".formatted(text.count(sums.problems()));
    return new MonthPage.Problems(
        all + " " + held,
        links(
            List.of(
                new FileLink("problems.csv", "Each with its cell", ""),
                new FileLink("marked-copy.xlsx", "Coloured in a copy of the book", ""))));
  }

  private List<Section> sections() {
    CollectPages collect = new CollectPages(month, text);
    return List.of(
        new Section("Send and collect", "", collect.sendAndCollect(documentFiles, outbox())),
        new Section("Overdue owners", "", collect.overdueOwners()),
        new Section("Horses due", month.due().horseSheet().file(), month.due().pageBlocks()),
        new Section("Order", month.stock().report().file(), month.stock().pageBlocks()),
        new Section("The body", month.workload().report().file(), month.workload().page()),
        new Section("The reports", "", answers()));
  }

  /** The mails of the outbox; empty where none were written. */
  private List<String> outbox() {
    return files.stream().filter(file -> file.startsWith("outbox/")).toList();
  }

  /** What each report answers, with the link to it. */
  private List<Block> answers() {
    List<Block.Answered> answers = new ArrayList<>();
    for (Report report : month.reports()) {
      report
          .first()
          .ifPresent(
              page ->
                  answers.add(
                      new Block.Answered(
                          report.label(), report.file(), page.answer(), page.picture())));
    }
    return List.of(new Block.Answers(answers));
  }

  private List<FileGroup> groups() {
    List<FileGroup> groups = new ArrayList<>();
    groups.add(new FileGroup("Reports", reports()));
    List<FileLink> documents = new ArrayList<>();
    for (BilledDocument document : month.billing().month()) {
      String path = documentFiles.get(document.number());
      if (path != null) {
        documents.add(
            new FileLink(
                path,
                document.number() + " " + document.owner(),
                document.invoice() ? "" : "credit note for " + document.corrects()));
      }
    }
    groups.add(new FileGroup("Invoices and credit notes", documents));
    groups.add(new FileGroup("Statements", under("statements/")));
    groups.add(new FileGroup("Outbox", under("outbox/")));
    groups.add(new FileGroup("Figures", under("figures/")));
    return groups.stream().filter(group -> !group.files().isEmpty()).toList();
  }

  /** Every printed report names its own link; the rest are files of other kinds. */
  private List<FileLink> reports() {
    Stream<FileLink> printed =
        month.reports().stream()
            .flatMap(report -> report.files().stream())
            .map(report -> new FileLink(report.file(), report.label(), ""));
    Stream<FileLink> others =
        Stream.of(
            new FileLink("due.ics", "Due dates for the calendar", ""),
            new FileLink("problems.csv", "All problems", ""),
            new FileLink("marked-copy.xlsx", "The book's copy with problems marked", ""));
    List<FileLink> links = new ArrayList<>(links(Stream.concat(printed, others).toList()));
    links.add(new FileLink("run.json", "The run's record", ""));
    return links;
  }

  private List<FileLink> links(List<FileLink> some) {
    return some.stream().filter(link -> files.contains(link.path())).toList();
  }

  private List<FileLink> under(String folder) {
    return files.stream()
        .filter(file -> file.startsWith(folder))
        .sorted(Names.ORDER)
        .map(file -> new FileLink(file, file.substring(folder.length()), ""))
        .toList();
  }
}
