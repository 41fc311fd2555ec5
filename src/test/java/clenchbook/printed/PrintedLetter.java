package clenchbook.printed;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * An English invoice or credit note as its reader sees it: the amounts of its lines, and the sums
 * beneath with their labels. Read back by PDFBox from the printed page alone.
 *
 * @param text everything on its pages
 * @param heading the heading of the amounts
 * @param lines the amounts of the lines, free visits as 0
 * @param sums the sums in order
 */
record PrintedLetter(String text, String heading, List<BigDecimal> lines, List<Sum> sums) {
  private static final Pattern AMOUNT =
      Pattern.compile("(?:^|.* )(?:£)?([-\u2013\u2212]?)£?(\\d{1,3}(?:,\\d{3})*\\.\\d{2})$");

  /** A sum with its label. */
  record Sum(String label, BigDecimal amount) {}

  static PrintedLetter of(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper reader = new PDFTextStripper();
      reader.setSortByPosition(true);
      return read(reader.getText(document));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static PrintedLetter read(String text) {
    String heading = "";
    List<BigDecimal> lines = new ArrayList<>();
    List<Sum> sums = new ArrayList<>();
    boolean inLines = false;
    String before = "";
    for (String line : text.lines().toList()) {
      if (line.startsWith("Date Horse Work")) {
        // A long heading begins on the line above.
        heading = heading.isEmpty() ? before + " " + line : heading;
        inLines = true;
      } else if (line.startsWith("Net ") || line.matches("Total( credit)? £.*")) {
        inLines = false;
      }
      Matcher amount = AMOUNT.matcher(line);
      if (inLines && line.endsWith(" no charge")) {
        lines.add(BigDecimal.ZERO);
      } else if (!heading.isEmpty() && amount.matches()) {
        BigDecimal value = new BigDecimal(amount.group(2).replace(",", ""));
        value = amount.group(1).isEmpty() ? value : value.negate();
        if (inLines) {
          lines.add(value);
        } else if (!line.contains("Please pay")) {
          sums.add(new Sum(line, value));
        }
      }
      before = line;
    }
    return new PrintedLetter(text, heading, lines, sums);
  }

  BigDecimal ofLines() {
    return lines.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** The sum of that label; 0 where there is none. */
  BigDecimal sum(String label) {
    return sums.stream()
        .filter(sum -> sum.label().startsWith(label))
        .map(Sum::amount)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  boolean has(String label) {
    return sums.stream().anyMatch(sum -> sum.label().startsWith(label));
  }

  /** The taxes, which stand between the net and the total. */
  BigDecimal taxes() {
    BigDecimal taxes = BigDecimal.ZERO;
    boolean after = false;
    for (Sum sum : sums) {
      if (sum.label().startsWith("Total")) {
        return taxes;
      }
      taxes = after ? taxes.add(sum.amount()) : taxes;
      after = after || sum.label().startsWith("Net ");
    }
    return taxes;
  }

  /** What stands between the total and the last sum. */
  BigDecimal settled() {
    BigDecimal settled = BigDecimal.ZERO;
    boolean after = false;
    for (Sum sum : sums.subList(0, sums.size() - 1)) {
      settled = after ? settled.add(sum.amount()) : settled;
      after = after || sum.label().startsWith("Total");
    }
    return settled;
  }

  Sum last() {
    return sums.get(sums.size() - 1);
  }
}
