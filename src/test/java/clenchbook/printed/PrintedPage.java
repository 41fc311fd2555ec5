package clenchbook.printed;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * The words of a PDF, from which what is accounted for is struck out. What differs from the figures
 * and what is left over at the end are faults.
 */
final class PrintedPage {
  private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(?:[.][0-9]+)?");
  private static final Pattern DATE = Pattern.compile("\\b[0-9]{4}-[0-9]{2}(?:-[0-9]{2})?\\b");
  private static final Pattern SENTENCE_END = Pattern.compile("[.](?= |$)");

  /** Words that start a table stand this near before its first row, with the head between. */
  private static final int LONGEST_HEAD = 220;

  private final StringBuilder text;
  private final List<String> faults = new ArrayList<>();
  private int from;

  private PrintedPage(String text) {
    this.text = new StringBuilder(text);
  }

  /** Reads a PDF; its page numbers must run from 1 to the last. */
  static PrintedPage of(Path pdf, String footStart, String title) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      String all = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
      PrintedPage page = new PrintedPage("");
      for (int number = 1; number <= document.getNumberOfPages(); number++) {
        String foot =
            Pattern.quote(footStart)
                + "[^0-9]*"
                + Pattern.quote(title + " Page " + number + " of " + document.getNumberOfPages())
                + " m measured · s standard · d default";
        Matcher found = Pattern.compile(foot).matcher(all);
        if (found.find()) {
          all = found.replaceFirst("");
        } else {
          page.faults.add("page " + number + " has no foot");
        }
      }
      page.text.append(all.replaceAll(" +", " ").strip());
      return page;
    }
  }

  /** Looks on only after these words. */
  void after(String words) {
    int found = text.indexOf(words, from);
    if (found < 0) {
      faults.add("missing: " + words);
    } else {
      from = found;
    }
  }

  /** A few words with figures behind them, such as a label and its figure. */
  void figure(String words, String... values) {
    Matcher found = line(words, List.of(values)).matcher(text);
    if (found.find()) {
      strike(found.start(), found.end());
    } else {
      faults.add("missing: " + words + " " + List.of(values));
    }
  }

  /**
   * A sentence with exactly these numbers in this order, dates apart; {@code a|b} where either will
   * do.
   */
  void sentence(String start, String... numbers) {
    int begin = text.indexOf(start);
    if (begin < 0) {
      faults.add("missing: " + start + " " + List.of(numbers));
      return;
    }
    Matcher end = SENTENCE_END.matcher(text);
    int stop = end.find(begin) ? end.end() : text.length();
    String words = DATE.matcher(text.substring(begin, stop)).replaceAll("");
    List<String> printed = NUMBER.matcher(words).results().map(each -> each.group()).toList();
    List<String> expected = Stream.of(numbers).filter(each -> !each.isEmpty()).toList();
    if (!fit(printed, expected)) {
      faults.add("figures " + expected + " but printed: " + words);
    }
    strike(begin, stop);
  }

  private static boolean fit(List<String> printed, List<String> expected) {
    boolean fits = printed.size() == expected.size();
    for (int i = 0; fits && i < printed.size(); i++) {
      fits = List.of(expected.get(i).split("[|]")).contains(printed.get(i));
    }
    return fits;
  }

  /** A row of a table: its words, then its figures. */
  record Row(String words, List<String> values) {}

  static Row row(String words, String... values) {
    return new Row(words, List.of(values));
  }

  /**
   * A table with exactly these rows in this order; between them stands nothing with a number but
   * the caption and head again after a page's end.
   */
  void table(String caption, List<Row> rows) {
    after(caption);
    int end = from + caption.length();
    for (Row row : rows) {
      Matcher found = line(row.words(), row.values()).matcher(text);
      if (!found.find(end)) {
        faults.add("missing in " + caption + ": " + row);
        continue;
      }
      String between = text.substring(end, found.start()).replace(caption, "");
      if (between.length() > LONGEST_HEAD || NUMBER.matcher(head(between)).find()) {
        faults.add("before " + row + " stands: " + between);
      }
      strike(found.start(), found.end());
      end = found.start() + 1;
      from = end;
    }
  }

  private static String head(String words) {
    return words.replace("5 % more brings", "");
  }

  /** Words the program always prints, with what their number is. */
  void fixed(String words) {
    int begin = text.indexOf(words);
    if (begin < 0) {
      faults.add("missing: " + words);
    } else {
      strike(begin, begin + words.length());
    }
  }

  List<String> faults() {
    List<String> all = new ArrayList<>(faults);
    String rest = DATE.matcher(head(text.toString())).replaceAll("");
    Matcher number = NUMBER.matcher(rest);
    while (number.find()) {
      int begin = Math.max(0, number.start() - 60);
      int end = Math.min(rest.length(), number.end() + 40);
      all.add("in no file: " + number.group() + " in: " + rest.substring(begin, end));
    }
    return all;
  }

  private static Pattern line(String words, List<String> values) {
    return Pattern.compile(
        "(?<![^ ¦])"
            + broken(words)
            + values.stream()
                .filter(value -> !value.isEmpty())
                .map(value -> " " + Pattern.quote(value) + "(?: [msd](?= |$))?")
                .collect(Collectors.joining())
            + "(?![0-9.-])");
  }

  /** Lines may break after a hyphen too. */
  private static String broken(String words) {
    return Stream.of(words.split("(?<=-)")).map(Pattern::quote).collect(Collectors.joining(" ?"));
  }

  private void strike(int begin, int end) {
    text.replace(begin, end, "¦");
  }
}
