package clenchbook.commands;

import clenchbook.book.Setting;
import clenchbook.commands.opening.DiskTrouble;
import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.NextStep;
import clenchbook.commands.opening.OpenBook;
import clenchbook.commands.opening.Places;
import clenchbook.commands.opening.RunFault;
import clenchbook.commands.opening.Terminal;
import clenchbook.commands.printing.Printing;
import clenchbook.comparison.Comparisons;
import clenchbook.comparison.questions.ComparedJobs;
import clenchbook.costing.JobCosts;
import clenchbook.jobs.Job;
import clenchbook.print.files.OutputFile;
import clenchbook.print.files.OutputFolder;
import clenchbook.print.pdf.PdfDocuments;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.Report;
import clenchbook.texts.Message;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The command {@code compare}: hot with cold, handmade with keg, over any period. */
public final class CompareRun {
  private final Path book;
  private final Optional<LocalDate> from;
  private final Optional<LocalDate> to;
  private final Optional<Path> out;
  private final Machine machine;
  private final Terminal terminal;

  /**
   * Makes the run.
   *
   * @param book the workbook
   * @param from first day, inclusive; empty for the first day of the twelve months that end with
   *     {@code to}
   * @param to last day, inclusive; empty for the last day of the month of the last visit
   * @param out the folder of reports; empty for the one beside the book
   * @param machine the machine
   * @param terminal where it speaks
   */
  public CompareRun(
      Path book,
      Optional<LocalDate> from,
      Optional<LocalDate> to,
      Optional<Path> out,
      Machine machine,
      Terminal terminal) {
    this.book = book;
    this.from = from;
    this.to = to;
    this.out = out;
    this.machine = machine;
    this.terminal = terminal;
  }

  /**
   * Runs it.
   *
   * @return 1 when rows are held back, else 0
   * @throws RunFault when it could not be done
   */
  public int run() {
    OpenBook open = OpenBook.read(book, machine, terminal).withVisits();
    open.tellAssumptions(terminal);
    LocalDate last = to.orElseGet(() -> lastMonth(open).atEndOfMonth());
    LocalDate first = from.orElseGet(() -> YearMonth.from(last).minusMonths(11).atDay(1));
    if (first.isAfter(last)) {
      throw new RunFault(Message.of("commands.compare.endsBefore", first, last));
    }
    terminal.progress(Message.of("commands.progress.comparing"));
    JobCosts costs = JobCosts.of(open.jobs(), last);
    Comparisons comparisons =
        Comparisons.of(
            ComparedJobs.of(open.jobs(), costs),
            first,
            last,
            ComparedJobs.rates(open.book().settings()));
    write(open, comparisons, first, last);
    int code = outcome(open);
    terminal.say(
        NextStep.of(
            code == MonthEndRun.ROWS_HELD
                ? Message.of("commands.compare.nextHeld", NextStep.command("check", book))
                : Message.of("commands.compare.next")));
    return code;
  }

  private static YearMonth lastMonth(OpenBook open) {
    List<Job> jobs = open.jobs().all();
    if (jobs.isEmpty()) {
      throw new RunFault(Message.of("commands.compare.noVisits"));
    }
    return YearMonth.from(jobs.get(jobs.size() - 1).date());
  }

  private void write(OpenBook open, Comparisons comparisons, LocalDate first, LocalDate last) {
    PdfDocuments documents = Printing.documents(open.book().settings(), book, last);
    Map<String, OutputFile> files = new LinkedHashMap<>();
    for (FigureTable table : comparisons.tables()) {
      files.put("figures/" + table.name() + ".csv", MonthFiles.csv(table));
    }
    files.putAll(MonthFiles.understood(open));
    String business = open.book().settings().text(Setting.BUSINESS_NAME);
    for (Report file : comparisons.report(business).files()) {
      files.put(file.file(), OutputFile.of(documents.report(file)));
    }
    Map<String, Object> asked = new LinkedHashMap<>();
    asked.put("from", first.toString());
    asked.put("to", last.toString());
    Path folder =
        out.orElseGet(() -> Places.reports(book, out).resolve("compare " + first + " to " + last));
    try {
      OutputFolder.write(folder, files, RunFacts.of("compare", asked, open));
    } catch (IOException e) {
      throw DiskTrouble.writing(
          Message.of("commands.disk.reports"), folder, e, Message.of("commands.disk.nothingLost"));
    } finally {
      terminal.clear();
    }
    terminal.say(
        Message.of(
            "commands.compare.done", first, last, folder.resolve("comparisons.pdf").toString()));
  }

  private int outcome(OpenBook open) {
    boolean held =
        open.problems().stream().anyMatch(p -> p.severity() == clenchbook.problem.Severity.HELD);
    if (held) {
      terminal.warn(Message.of("commands.heldNoFigure"));
    }
    return held ? MonthEndRun.ROWS_HELD : MonthEndRun.DONE;
  }
}
