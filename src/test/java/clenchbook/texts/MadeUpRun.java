package clenchbook.texts;

import clenchbook.commands.BookCheck;
import clenchbook.commands.CompareRun;
import clenchbook.commands.MonthEndRequest;
import clenchbook.commands.MonthEndRun;
import clenchbook.commands.PaymentsRun;
import clenchbook.commands.SendRun;
import clenchbook.commands.YearEndRequest;
import clenchbook.commands.YearEndRun;
import clenchbook.commands.mailing.SendRequest;
import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.RegisterChoice;
import clenchbook.commands.opening.Terminal;
import clenchbook.delivery.CredentialReader;
import clenchbook.delivery.SmtpServer.Protection;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Every command over a German book under the made-up language, and what each place then says to the
 * farrier: the parts of the page, each report, each command's lines, problems and marked copy.
 */
final class MadeUpRun {
  private static final YearMonth MONTH = YearMonth.of(2025, 9);
  private static final Pattern SECTION =
      Pattern.compile("(?s)<section (?:class=\"(problems)|id=\"([a-z0-9]+)\").*?</section>");
  private static final Pattern SAID_BY_ATTRIBUTE =
      Pattern.compile("(?:title|aria-label|data-label|alt)=\"([^\"]*)\"");

  private final Path book;
  private final Path out;
  private final Machine machine =
      new Machine(
          LocalDate.of(2026, 10, 5),
          Locale.GERMANY,
          Optional.empty(),
          Optional.empty(),
          new MadeUpTexts());
  private final Map<String, String> said = new TreeMap<>();

  private MadeUpRun(Path book, Path out) {
    this.book = book;
    this.out = out;
  }

  /** What is said, by place, of every command over a book. */
  static Map<String, String> of(Path book, Path folder) throws IOException {
    MadeUpRun run = new MadeUpRun(book, folder.resolve("out"));
    run.commands();
    run.files();
    return run.said;
  }

  private void commands() {
    terminal(
        "check",
        terminal ->
            new BookCheck(book, Optional.empty(), Optional.empty(), machine, terminal).run());
    terminal(
        "month-end",
        terminal ->
            new MonthEndRun(
                    new MonthEndRequest(
                        book,
                        MONTH,
                        Optional.of(out),
                        RegisterChoice.USUAL,
                        false,
                        Optional.empty(),
                        Optional.empty()),
                    machine,
                    terminal)
                .run());
    terminal("send", terminal -> send(terminal));
    terminal(
        "year-end",
        terminal ->
            new YearEndRun(
                    new YearEndRequest(
                        book,
                        Optional.empty(),
                        Optional.empty(),
                        false,
                        Optional.of(out),
                        RegisterChoice.USUAL,
                        Optional.empty()),
                    machine,
                    terminal)
                .run());
    terminal(
        "compare",
        terminal ->
            new CompareRun(
                    book,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(out.resolve("compared")),
                    machine,
                    terminal)
                .run());
    terminal("payments", terminal -> payments(terminal));
  }

  /** Money in that names an invoice, that nobody knows, that names an owner alone; money out. */
  private void payments(Terminal terminal) {
    try {
      Path statement = book.resolveSibling("bank.csv");
      Files.writeString(
          statement,
          """
          Date,Name,Description,Amount,Balance
          2026-10-01,Unbekannt,2026-0003,1.00,101.00
          2026-10-01,Unbekannt,xy,7777.77,7878.77
          2026-10-02,%s,,3.33,7882.10
          2026-10-02,Unbekannt,xy,-5.00,8000.00
          """
              .formatted(owner()));
      new PaymentsRun(
              book, List.of(statement), Optional.of(out), RegisterChoice.USUAL, machine, terminal)
          .run();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** One who had an invoice this month. */
  private String owner() throws IOException {
    return column(out.resolve(MONTH.toString()).resolve("figures/invoices.csv"), "owner").get(0);
  }

  private void send(Terminal terminal) {
    SendRequest request =
        new SendRequest(
            book,
            MONTH,
            Optional.of(out),
            RegisterChoice.USUAL,
            true,
            false,
            true,
            Set.of(),
            Protection.CHECKED,
            Duration.ZERO);
    new SendRun(request, machine, new CredentialReader(Map.of(), book), terminal).run();
  }

  private void terminal(String command, Consumer<Terminal> run) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream lines = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    Terminal terminal = new Terminal(lines, lines, true, () -> Optional.of("ja"));
    terminal.speak(machine.words());
    run.accept(terminal);
    String text = bytes.toString(StandardCharsets.UTF_8);
    said.put(
        "terminal " + command,
        text.replace(out.toString(), "")
            .replace(book.toString(), "")
            .replace("\u001b[K", "")
            .replace(book.resolveSibling("").toString(), ""));
  }

  /** What the month's {@code understood.csv} says that the book's headings mean. */
  static List<String> meanings(Path folder) throws IOException {
    Path month = folder.resolve("out").resolve(MONTH.toString());
    return column(month.resolve("figures/understood.csv"), "meaning");
  }

  private static List<String> column(Path file, String name) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser rows = CSVParser.parse(file, StandardCharsets.UTF_8, format)) {
      return rows.stream().map(row -> row.get(name)).toList();
    }
  }

  private void files() throws IOException {
    Path month = out.resolve(MONTH.toString());
    page(Files.readString(month.resolve("index.html")));
    for (Path folder : List.of(month, out.resolve("2025"), out.resolve("compared"))) {
      for (Path file : pdfs(folder)) {
        said.merge(folder.relativize(file).toString(), pdf(file), String::concat);
      }
    }
    for (String name : List.of("payments-to-add.csv", "unmatched.csv")) {
      List<String> why = column(out.resolve("payments").resolve(name), "why");
      said.put("why of " + name, String.join("\n", why));
    }
    said.put("marked copy", marked(month.resolve("marked-copy.xlsx")));
  }

  private static List<Path> pdfs(Path folder) throws IOException {
    List<Path> found = new ArrayList<>();
    for (Path each : List.of(folder, folder.resolve("annex"))) {
      if (Files.isDirectory(each)) {
        try (Stream<Path> files = Files.list(each)) {
          files.filter(file -> file.toString().endsWith(".pdf")).sorted().forEach(found::add);
        }
      }
    }
    return found;
  }

  /** The page by its parts; what lies in none of them is its head and foot. */
  private void page(String html) {
    String rest = html.replaceAll("(?s)<style>.*?</style>", "");
    for (MatchResult section : SECTION.matcher(rest).results().toList()) {
      String name = section.group(1) == null ? section.group(2) : section.group(1);
      said.put("page " + name, words(section.group()));
    }
    said.put("page head and foot", words(SECTION.matcher(rest).replaceAll("")));
  }

  private static String words(String html) {
    StringBuilder words = new StringBuilder(html.replaceAll("(?s)<[^>]*>", " "));
    SAID_BY_ATTRIBUTE
        .matcher(html)
        .results()
        .forEach(found -> words.append(' ').append(found.group(1)));
    return words.toString().replace("&nbsp;", " ").replace("&#39;", "'").replace("&amp;", "&");
  }

  private static String pdf(Path file) {
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      return new PDFTextStripper().getText(document);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** The first sheet of the marked copy, and every note. */
  private static String marked(Path copy) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(copy))) {
      StringBuilder words = new StringBuilder(workbook.getSheetName(0));
      for (String text : texts(workbook.getSheetAt(0))) {
        words.append('\n').append(text);
      }
      for (Sheet sheet : workbook) {
        sheet
            .getCellComments()
            .values()
            .forEach(note -> words.append('\n').append(note.getString()));
      }
      return words.toString();
    }
  }

  /** Every text of a workbook and the names of its sheets. */
  static List<String> texts(Path book) throws IOException {
    List<String> texts = new ArrayList<>();
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(book))) {
      for (Sheet sheet : workbook) {
        texts.add(sheet.getSheetName());
        texts.addAll(texts(sheet));
      }
    }
    return texts;
  }

  private static List<String> texts(Sheet sheet) {
    DataFormatter formatter = new DataFormatter(Locale.ROOT);
    List<String> texts = new ArrayList<>();
    for (Row row : sheet) {
      for (Cell cell : row) {
        texts.add(formatter.formatCellValue(cell));
      }
    }
    return texts;
  }
}
