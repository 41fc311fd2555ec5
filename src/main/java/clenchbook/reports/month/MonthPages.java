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
        pages.text.texts(),
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
        .ifPresent(name -> lines.add(text.say("month.reading.ownWords", name)));
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
      lines.add(text.say("month.reading.unread", unread));
    }
    return new MonthPage.Reading(
        lines,
        links(
            List.of(
                new FileLink("figures/understood.csv", text.say("month.link.understood"), ""))));
  }

  /** How many problems there are and where each of them stands. */
  private MonthPage.Problems problems() {
    Collected sums = Collected.of(month);
    if (sums.problems() == 0) {
      return new MonthPage.Problems(text.say("month.problems.none"), List.of());
    }
    return new MonthPage.Problems(
        text.say("month.problems.count", sums.problems(), sums.held()),
        links(
            List.of(
                new FileLink("problems.csv", text.say("month.link.eachProblem"), ""),
                new FileLink("marked-copy.xlsx", text.say("month.link.coloured"), ""))));
  }

  private List<Section> sections() {
    CollectPages collect = new CollectPages(month, text);
    return List.of(
        new Section(
            text.say("month.part.collect"), "", collect.sendAndCollect(documentFiles, outbox())),
        new Section(text.say("month.part.overdue"), "", collect.overdueOwners()),
        new Section(
            text.say("month.part.due"), month.due().horseSheet().file(), month.due().pageBlocks()),
        new Section(
            text.say("month.part.order"),
            month.stock().report().file(),
            month.stock().pageBlocks()),
        new Section(
            text.say("month.part.body"), month.workload().report().file(), month.workload().page()),
        new Section(text.say("month.part.reports"), "", answers()));
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
    groups.add(new FileGroup(text.say("month.files.reports"), reports()));
    List<FileLink> documents = new ArrayList<>();
    for (BilledDocument document : month.billing().month()) {
      String path = documentFiles.get(document.number());
      if (path != null) {
        documents.add(
            new FileLink(
                path,
                document.number() + " " + document.owner(),
                document.invoice() ? "" : text.say("month.files.creditFor", document.corrects())));
      }
    }
    groups.add(new FileGroup(text.say("month.files.invoices"), documents));
    groups.add(new FileGroup(text.say("month.files.statements"), under("statements/")));
    groups.add(new FileGroup(text.say("month.files.outbox"), under("outbox/")));
    groups.add(new FileGroup(text.say("month.files.figures"), under("figures/")));
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
            new FileLink("due.ics", text.say("month.link.calendar"), ""),
            new FileLink("problems.csv", text.say("month.link.problems"), ""),
            new FileLink("marked-copy.xlsx", text.say("month.link.marked"), ""));
    List<FileLink> links = new ArrayList<>(links(Stream.concat(printed, others).toList()));
    links.add(new FileLink("run.json", text.say("month.link.run"), ""));
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
