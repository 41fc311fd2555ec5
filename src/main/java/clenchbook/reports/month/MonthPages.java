package clenchbook.reports.month;

import clenchbook.billing.accounts.Account;
import clenchbook.billing.accounts.PaidState;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Names;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemLines;
import clenchbook.problem.Severity;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Block.Column;
import clenchbook.reports.blocks.Block.Heading;
import clenchbook.reports.blocks.Block.Paragraph;
import clenchbook.reports.blocks.Block.Row;
import clenchbook.reports.blocks.Block.Table;
import clenchbook.reports.blocks.MonthPage;
import clenchbook.reports.blocks.MonthPage.FileGroup;
import clenchbook.reports.blocks.MonthPage.FileLink;
import clenchbook.reports.blocks.MonthPage.Section;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Puts a month on one page: problems first, then what matters most, then links to all the rest. */
public final class MonthPages {
  private static final int MOST_PROBLEMS = 12;

  private final MonthFindings month;
  private final Map<String, String> documentFiles;

  private MonthPages(MonthFindings month, Map<String, String> documentFiles) {
    this.month = month;
    this.documentFiles = documentFiles;
  }

  /**
   * The page.
   *
   * @param month the month
   * @param documentFiles the file of each invoice and credit note, by number
   * @param files every other file of the run, as paths
   * @return the page
   */
  public static MonthPage of(
      MonthFindings month, Map<String, String> documentFiles, Collection<String> files) {
    MonthPages pages = new MonthPages(month, documentFiles);
    Settings settings = month.jobs().index().book().settings();
    return new MonthPage(
        MonthWords.of(month.month()),
        settings.text(Setting.BUSINESS_NAME),
        "en",
        pages.problems(),
        pages.problemsNote(files),
        pages.sections(),
        pages.groups(files));
  }

  private List<String> problems() {
    List<Problem> worst =
        Stream.of(Severity.HELD, Severity.WARNING, Severity.NOTE)
            .flatMap(
                severity ->
                    month.problems().stream().filter(problem -> problem.severity() == severity))
            .toList();
    List<String> lines = new ArrayList<>();
    month.workload().warnings().forEach(lines::add);
    lines.addAll(month.differencesInWords());
    lines.addAll(ProblemLines.of(worst, List.of()).stream().filter(MonthPages::ofASheet).toList());
    return lines.stream().limit(MOST_PROBLEMS).toList();
  }

  /** A line about a cell or row, not a title or the counts. */
  private static boolean ofASheet(String line) {
    return line.indexOf(": ") > 0
        && !line.startsWith("Rows held back: ")
        && !line.startsWith("Warnings: ");
  }

  private String problemsNote(Collection<String> files) {
    if (month.problems().isEmpty()) {
      return "";
    }
    long held = month.problems().stream().filter(p -> p.severity() == Severity.HELD).count();
    String copy = files.contains("marked-copy.xlsx") ? " and are coloured in marked-copy.xlsx" : "";
    return (held == 0 ? "No row is held back. " : "Rows held back are neither billed nor counted. ")
        + "All "
        + month.problems().size()
        + " problems of the book stand in problems.csv"
        + copy
        + ".";
  }

  private List<Section> sections() {
    List<Section> sections = new ArrayList<>();
    sections.add(
        new Section(
            "What the work brought and left", "margins.pdf", MarginsReport.page(month.margins())));
    sections.add(new Section("Invoices and balances", "", invoices()));
    sections.add(
        new Section("Does it pay?", "comparisons.pdf", body(month.comparisons().pageBlocks())));
    sections.add(new Section("The body", "workload.pdf", body(month.workload().page())));
    sections.add(new Section("Stock", "stock.pdf", body(month.stock().pageBlocks())));
    sections.add(new Section("Who is due", "horses.pdf", body(month.due().pageBlocks())));
    return sections;
  }

  /** The section has its own heading; a first heading in the blocks would say it twice. */
  private static List<Block> body(List<Block> blocks) {
    boolean headed = !blocks.isEmpty() && blocks.get(0) instanceof Heading;
    return headed ? blocks.subList(1, blocks.size()) : blocks;
  }

  private List<Block> invoices() {
    List<BilledDocument> documents =
        month.billing().month().stream().filter(BilledDocument::counts).toList();
    if (documents.isEmpty()) {
      return List.of(new Paragraph("No invoice in this month."));
    }
    List<Row> rows = new ArrayList<>();
    for (BilledDocument document : documents) {
      Account account = account(document.owner());
      rows.add(
          Row.of(
              document.number(),
              document.owner(),
              Figures.money(document.gross()),
              PaidState.of(document, account),
              Figures.money(account.balance())));
    }
    rows.add(Row.total("", "All", Figures.money(sum(documents)), "", Figures.money(balances())));
    return List.of(
        new Table(
            "",
            List.of(
                Column.words("Number", 3),
                Column.words("Owner", 6),
                Column.number("Total", 3),
                Column.words("State", 3),
                Column.number("Balance", 3)),
            rows),
        new Paragraph(
            "Balances of all owners, as at "
                + month.month().atEndOfMonth()
                + ", stand in figures/balances.csv; the total here is over all of them."));
  }

  private Account account(String owner) {
    return month.accounts().stream()
        .filter(account -> Names.same(account.owner(), owner))
        .findFirst()
        .orElseThrow();
  }

  private static BigDecimal sum(List<BilledDocument> documents) {
    return documents.stream().map(BilledDocument::gross).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private BigDecimal balances() {
    return month.accounts().stream().map(Account::balance).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private List<FileGroup> groups(Collection<String> files) {
    List<FileGroup> groups = new ArrayList<>();
    groups.add(new FileGroup("Reports", reports(files)));
    List<FileLink> invoices = new ArrayList<>();
    for (BilledDocument document : month.billing().month()) {
      String path = documentFiles.get(document.number());
      if (path != null) {
        invoices.add(
            new FileLink(
                path,
                document.number() + " " + document.owner(),
                document.invoice() ? "" : "credit note for " + document.corrects()));
      }
    }
    groups.add(new FileGroup("Invoices and credit notes", invoices));
    groups.add(new FileGroup("Statements", under("statements/", files)));
    groups.add(new FileGroup("Figures", under("figures/", files)));
    return groups.stream().filter(group -> !group.files().isEmpty()).toList();
  }

  private static List<FileLink> reports(Collection<String> files) {
    Map<String, String> labels =
        new TreeMap<>(
            Map.of(
                "margins.pdf", "Margins",
                "comparisons.pdf", "Does it pay?",
                "workload.pdf", "The body",
                "stock.pdf", "Stock, bar and the round",
                "horses.pdf", "What each horse had on, by place",
                "due.ics", "Due dates for the calendar",
                "problems.csv", "All problems",
                "marked-copy.xlsx", "The book's copy with problems marked",
                "run.json", "The run's record"));
    return labels.entrySet().stream()
        .filter(entry -> files.contains(entry.getKey()) || entry.getKey().equals("run.json"))
        .map(entry -> new FileLink(entry.getKey(), entry.getValue(), ""))
        .toList();
  }

  private static List<FileLink> under(String folder, Collection<String> files) {
    return files.stream()
        .filter(file -> file.startsWith(folder))
        .sorted(Names.ORDER)
        .map(file -> new FileLink(file, file.substring(folder.length()), ""))
        .toList();
  }
}
