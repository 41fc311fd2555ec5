package clenchbook.print.invoice;

import clenchbook.reports.letters.PrintedLine;
import clenchbook.reports.letters.PrintedLine.Note;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The smaller print beneath the lines, in which nothing is said twice of one visit: a discount, a
 * share and what was nailed on stand at the first line they are true of.
 *
 * <p>Not thread-safe; made anew for each document, and asked line after line.
 */
final class LineNotes {
  private static final BigDecimal ALL = new BigDecimal(100);

  private final LetterWording wording;
  private final PrintFormats formats;
  private final Optional<BigDecimal> usualDiscount;
  private Optional<PrintedLine> before = Optional.empty();
  private Optional<BigDecimal> discount = Optional.empty();
  private Optional<BigDecimal> share = Optional.empty();

  /**
   * Notes for one document.
   *
   * @param usualDiscount the discount that the page says once for all lines; empty for none
   */
  LineNotes(LetterWording wording, PrintFormats formats, Optional<BigDecimal> usualDiscount) {
    this.wording = wording;
    this.formats = formats;
    this.usualDiscount = usualDiscount;
  }

  /**
   * The discount that a page can say once for all: the only one there is, borne by more lines than
   * not; a line without it is said to be so.
   *
   * @param lines the document's lines
   * @return in percent
   */
  static Optional<BigDecimal> usualDiscount(List<PrintedLine> lines) {
    List<PrintedLine> paid = lines.stream().filter(line -> !line.free()).toList();
    List<BigDecimal> all =
        paid.stream()
            .flatMap(line -> line.discountPercent().stream())
            .map(BigDecimal::stripTrailingZeros)
            .toList();
    boolean one = all.stream().distinct().count() == 1;
    return one && 2 * all.size() > paid.size() ? Optional.of(all.get(0)) : Optional.empty();
  }

  /** All that can be said of a line by itself. */
  static List<String> alone(PrintedLine line, LetterWording wording, PrintFormats formats) {
    return new LineNotes(wording, formats, Optional.empty()).of(line);
  }

  /** What is still to be said of the next line. */
  List<String> of(PrintedLine line) {
    boolean sameVisit = before.filter(other -> sameVisit(other, line)).isPresent();
    if (!sameVisit) {
      discount = usualDiscount;
      share = Optional.empty();
    }
    List<String> notes = new ArrayList<>();
    if (!(sameVisit && isRest(line))) {
      notes.addAll(line.details());
    }
    line.notes().stream()
        .filter(note -> isPart(note) || !(sameVisit && said(note)))
        .forEach(note -> notes.add(wording.say("note." + note)));
    discount(line).ifPresent(notes::add);
    share(line).ifPresent(notes::add);
    before = Optional.of(line);
    return notes;
  }

  private static boolean sameVisit(PrintedLine one, PrintedLine other) {
    return one.date().equals(other.date()) && one.horse().equals(other.horse());
  }

  /** The rest of the line before, whose goods stand there. */
  private boolean isRest(PrintedLine line) {
    return line.notes().contains(Note.WORK_PART)
        && before
            .filter(other -> other.notes().contains(Note.GOODS))
            .filter(other -> other.work().equals(line.work()))
            .isPresent();
  }

  private static boolean isPart(Note note) {
    return note == Note.GOODS || note == Note.WORK_PART;
  }

  private boolean said(Note note) {
    return before.filter(other -> other.notes().contains(note)).isPresent();
  }

  private Optional<String> discount(PrintedLine line) {
    Optional<BigDecimal> own = line.discountPercent().map(BigDecimal::stripTrailingZeros);
    if (line.free() || own.equals(discount)) {
      return Optional.empty();
    }
    discount = own;
    return Optional.of(
        own.map(percent -> wording.say("line.discount", formats.percent(percent)))
            .orElseGet(() -> wording.say("line.noDiscount")));
  }

  private Optional<String> share(PrintedLine line) {
    Optional<BigDecimal> own = line.sharePercent().map(BigDecimal::stripTrailingZeros);
    if (own.equals(share)) {
      return Optional.empty();
    }
    share = own;
    return Optional.of(wording.say("line.share", formats.percent(own.orElse(ALL))));
  }
}
