package clenchbook.commands;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.commands.opening.DiskTrouble;
import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.NextStep;
import clenchbook.commands.opening.OpenBook;
import clenchbook.commands.opening.Places;
import clenchbook.commands.opening.RunFault;
import clenchbook.commands.opening.Terminal;
import clenchbook.commands.printing.Printing;
import clenchbook.print.files.OutputFile;
import clenchbook.print.files.OutputFolder;
import clenchbook.print.pdf.PdfDocuments;
import clenchbook.problem.Severity;
import clenchbook.reading.rates.RateFiles;
import clenchbook.reading.rates.RefusedRatesException;
import clenchbook.register.Register;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.Report;
import clenchbook.tax.Jurisdictions;
import clenchbook.tax.YearEnd;
import clenchbook.tax.YearEndFindings;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.rates.RateTables;
import clenchbook.tax.year.Regime;
import clenchbook.tax.year.StockValue;
import clenchbook.tax.year.TaxYear;
import clenchbook.tax.year.YearEndInput;
import clenchbook.tax.year.YearStart;
import clenchbook.texts.Message;
import clenchbook.values.Period;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;

/**
 * The command {@code year-end}: the tax summary with the rows behind it, the mileage log, and the
 * margins and workload of the year. It reads the register and never writes it.
 */
public final class YearEndRun {
  private final YearEndRequest request;
  private final Machine machine;
  private final Terminal terminal;
  private int starts;

  /**
   * Makes the run.
   *
   * @param request what was asked
   * @param machine the machine
   * @param terminal where it speaks
   */
  public YearEndRun(YearEndRequest request, Machine machine, Terminal terminal) {
    this.request = request;
    this.machine = machine;
    this.terminal = terminal;
  }

  /**
   * Runs it.
   *
   * @return 1 when rows are held back or a rate is missing, else 0
   * @throws RunFault when it could not be done
   */
  public int run() {
    try {
      RateTables rates = rates();
      OpenBook open = OpenBook.read(request.book(), machine, terminal).withVisits();
      starts = request.year().isPresent() ? request.year().get() : lastEnded(open, rates);
      List<BilledDocument> register = register(open);
      open.warnOfLaterDates(machine.today(), terminal);
      open.tellAssumptions(terminal);
      terminal.progress(Message.of("commands.progress.year", name()));
      YearEndFindings found = YearEnd.of(input(open, register, rates));
      YearReports reports = YearReports.of(open, found, taxYear(open, rates));
      write(open, found, reports);
      int code = outcome(open, found);
      terminal.say(NextStep.of(next(found, code)));
      return code;
    } finally {
      terminal.clear();
    }
  }

  private Message next(YearEndFindings found, int code) {
    if (code != MonthEndRun.DONE) {
      return Message.of("commands.yearEnd.nextHeld", NextStep.command("check", request.book()));
    }
    if (!found.coverage().whole()) {
      return Message.of("commands.yearEnd.nextNotWhole");
    }
    return Message.of("commands.yearEnd.next");
  }

  private List<BilledDocument> register(OpenBook open) {
    Path file = request.register().in(open, Places.reports(request.book(), request.out()));
    List<BilledDocument> documents = Register.read(file);
    request.register().checkBook(open, file, documents);
    return documents;
  }

  private String name() {
    return starts + request.quarter().map(quarter -> "-Q" + quarter).orElse("");
  }

  private RateTables rates() {
    Path folder = request.rates().orElseGet(() -> OpenBook.folder(request.book()).resolve("rates"));
    try {
      return RateFiles.withOverlay(folder);
    } catch (RefusedRatesException refused) {
      throw new RunFault(refused.message(), refused);
    }
  }

  /** The last year, or the last time of the quarter asked for, that was over before today. */
  private int lastEnded(OpenBook open, RateTables rates) {
    int candidate = machine.today().getYear() + 1;
    while (!lastDay(taxYear(open, rates, candidate)).isBefore(machine.today())) {
      candidate--;
    }
    Period days = period(taxYear(open, rates, candidate));
    String label = taxYear(open, rates, candidate).label();
    terminal.say(
        request
            .quarter()
            .map(
                quarter ->
                    Message.of(
                        "commands.yearEnd.lastQuarter",
                        label,
                        quarter,
                        days.first(),
                        days.last(),
                        machine.today()))
            .orElseGet(
                () ->
                    Message.of(
                        "commands.yearEnd.lastYear",
                        label,
                        days.first(),
                        days.last(),
                        machine.today())));
    return candidate;
  }

  private LocalDate lastDay(TaxYear year) {
    return period(year).last();
  }

  private Period period(TaxYear year) {
    return request.quarter().map(year::quarter).orElse(year.days());
  }

  private TaxYear taxYear(OpenBook open, RateTables rates) {
    return taxYear(open, rates, starts);
  }

  private TaxYear taxYear(OpenBook open, RateTables rates, int first) {
    Settings settings = open.book().settings();
    Regime regime = regime(settings);
    TaxYear year = TaxYear.of(regime, first, YearStart.of(regime, settings, rates));
    return request.calendarQuarters() ? year.withCalendarQuarters() : year;
  }

  /** The regime of the book; no other ever stands in for one that is not known. */
  private static Regime regime(Settings settings) {
    String word = settings.text(Setting.TAX_REGIME);
    if (settings.unusable(Setting.TAX_REGIME).isEmpty()) {
      Optional<Jurisdiction> found = Jurisdictions.find(word);
      if (found.isPresent()) {
        return found.get().regime();
      }
    }
    String cell =
        settings
            .unusable(Setting.TAX_REGIME)
            .or(() -> settings.cell(Setting.TAX_REGIME))
            .map(at -> at.sheet() + "!" + at.cell() + ": ")
            .orElse("");
    throw new RunFault(
        Message.of("commands.yearEnd.regimeUnknown", cell, List.copyOf(Jurisdictions.words())));
  }

  private YearEndInput input(OpenBook open, List<BilledDocument> register, RateTables rates) {
    TaxYear taxYear = taxYear(open, rates);
    StockValue stock =
        StockValue.of(open.jobs(), request.quarter().map(taxYear::quarter).orElse(taxYear.days()));
    return new YearEndInput(open.jobs(), register, taxYear, request.quarter(), rates, stock);
  }

  private void write(OpenBook open, YearEndFindings year, YearReports reports) {
    Map<String, OutputFile> files = new LinkedHashMap<>();
    files.put("mileage-log.csv", MonthFiles.csv(year.mileageLog()));
    year.accountant()
        .forEach(table -> files.put("accountant/" + table.name() + ".csv", MonthFiles.csv(table)));
    year.files()
        .forEach(
            file ->
                files.put(
                    file.name(), OutputFile.of(file.text().getBytes(StandardCharsets.UTF_8))));
    addFigures(files, year.figures());
    addFigures(files, reports.figures());
    files.putAll(MonthFiles.understood(open));
    PdfDocuments documents =
        Printing.documents(open.book().settings(), request.book(), year.period().last());
    try (Printing printing = new Printing()) {
      Map<String, byte[]> printed = printing.all(printing(year, reports, documents), terminal);
      files.putAll(MonthFiles.files(List.of(printed)));
    }
    terminal.progress(Message.of("commands.progress.writing"));
    Path folder = Places.reports(request.book(), request.out()).resolve(name());
    try {
      OutputFolder.write(folder, files, RunFacts.of("year-end", asked(year), open));
    } catch (IOException e) {
      throw DiskTrouble.writing(
          Message.of("commands.disk.reports"), folder, e, Message.of("commands.disk.nothingLost"));
    }
    terminal.say(
        Message.of("commands.yearEnd.done", name(), folder.resolve("tax-summary.pdf").toString()));
  }

  private static void addFigures(Map<String, OutputFile> files, List<FigureTable> tables) {
    tables.forEach(table -> files.put("figures/" + table.name() + ".csv", MonthFiles.csv(table)));
  }

  private static Map<String, Callable<byte[]>> printing(
      YearEndFindings year, YearReports reports, PdfDocuments documents) {
    Map<String, Callable<byte[]>> work = new LinkedHashMap<>();
    year.reports().forEach(report -> add(work, report, documents));
    reports.reports().forEach(report -> add(work, report, documents));
    return work;
  }

  private static void add(
      Map<String, Callable<byte[]>> work, Report report, PdfDocuments documents) {
    report.files().forEach(file -> work.put(file.file(), () -> documents.report(file)));
  }

  private Map<String, Object> asked(YearEndFindings year) {
    Map<String, Object> asked = new LinkedHashMap<>();
    asked.put("year", starts);
    asked.put("quarter", request.quarter().map(String::valueOf).orElse(""));
    if (request.calendarQuarters()) {
      asked.put("calendar_quarters", true);
    }
    if (!year.coverage().whole()) {
      asked.put("months", year.coverage().covered());
    }
    return asked;
  }

  private int outcome(OpenBook open, YearEndFindings year) {
    year.errors().forEach(terminal::warn);
    boolean held =
        open.problems().stream().anyMatch(problem -> problem.severity() == Severity.HELD);
    if (held) {
      terminal.warn(Message.of("commands.heldNoFigure"));
    }
    return held || !year.errors().isEmpty() ? MonthEndRun.ROWS_HELD : MonthEndRun.DONE;
  }
}
