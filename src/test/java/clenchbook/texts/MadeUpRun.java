package clenchbook.texts;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Every command over a German book under the made-up language, and what each place then says to the
 * farrier: the parts of the page, each report, each command's lines, problems and marked copy.
 */
final class MadeUpRun {
  private static final Pattern SECTION =
      Pattern.compile("(?s)<section (?:class=\"(problems)|id=\"([a-z0-9]+)\").*?</section>");
  private static final Pattern SAID_BY_ATTRIBUTE =
      Pattern.compile("(?:title|aria-label|data-label|alt)=\"([^\"]*)\"");

  private final MadeUpBook book;
  private final Path out;
  private final Map<String, String> said = new TreeMap<>();

  private MadeUpRun(MadeUpBook book, Path out) {
    this.book = book;
    this.out = out;
  }

  /** What is said, by place, of every command over a book, whose reports go into a folder. */
  static Map<String, String> of(MadeUpBook book, Path out) throws IOException {
    MadeUpRun run = new MadeUpRun(book, out);
    EveryCommand.over(book, out, new MadeUpTexts())
        .forEach((command, text) -> run.said.put("terminal " + command, text));
    run.files();
    return run.said;
  }

  /** What the month's {@code understood.csv} says that the book's headings mean. */
  static List<String> meanings(MadeUpBook book, Path out) throws IOException {
    Path month = out.resolve(book.month().toString());
    return column(month.resolve("figures/understood.csv"), "meaning");
  }

  static List<String> column(Path file, String name) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser rows = CSVParser.parse(file, StandardCharsets.UTF_8, format)) {
      return rows.stream().map(row -> row.get(name)).toList();
    }
  }

  private void files() throws IOException {
    Path month = out.resolve(book.month().toString());
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

  /** A summary for a preparer who reads English is in English on purpose. */
  private static boolean isJudged(Path file) {
    return file.toString().endsWith(".pdf") && !file.toString().endsWith(".en.pdf");
  }

  private static List<Path> pdfs(Path folder) throws IOException {
    List<Path> found = new ArrayList<>();
    for (Path each : List.of(folder, folder.resolve("annex"))) {
      if (Files.isDirectory(each)) {
        try (Stream<Path> files = Files.list(each)) {
          files.filter(MadeUpRun::isJudged).sorted().forEach(found::add);
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
      for (String text : MadeUpBook.texts(workbook.getSheetAt(0))) {
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
}
