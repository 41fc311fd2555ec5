package clenchbook.billing.numbering;

import clenchbook.book.Setting;
import clenchbook.book.Settings;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.OptionalInt;

/**
 * The numbers of a register that is begun.
 *
 * @param first the first number it gives
 * @param again numbers that are known already and that it would give again, in order
 * @param next the setting Next invoice number that would prevent that; 0 where nothing is given
 *     again
 */
public record BegunNumbers(String first, List<String> again, int next) {
  /** Copies its list. */
  public BegunNumbers {
    again = List.copyOf(again);
  }

  /**
   * What a register begun with a month gives.
   *
   * @param settings the book's settings
   * @param seen numbers that are known, or texts that begin with one: those that Payments name, and
   *     the files of invoices that earlier runs have left
   * @param month the month that is run
   * @return its numbers
   */
  public static BegunNumbers of(Settings settings, List<String> seen, YearMonth month) {
    NumberPattern pattern = pattern(settings);
    LocalDate date = month.atEndOfMonth();
    int first = Math.max(1, settings.whole(Setting.NEXT_INVOICE_NUMBER));
    List<String> again =
        seen.stream()
            .map(text -> pattern.sequence(text, date.getYear()))
            .filter(sequence -> sequence.orElse(0) >= first)
            .map(OptionalInt::getAsInt)
            .distinct()
            .sorted()
            .map(sequence -> pattern.number(date, sequence))
            .toList();
    return new BegunNumbers(
        pattern.number(date, first), again, after(pattern, again, date.getYear()));
  }

  /**
   * The pattern of a book's numbers.
   *
   * @param settings the book's settings
   * @return the one given, else the usual one
   */
  public static NumberPattern pattern(Settings settings) {
    return NumberPattern.parse(settings.text(Setting.INVOICE_PATTERN))
        .orElse(NumberPattern.DEFAULT);
  }

  /**
   * The sequence after the highest of some numbers.
   *
   * @param pattern their pattern
   * @param numbers numbers, or texts that begin with one
   * @param year the year that counts, where the pattern holds it
   * @return one more than the highest; 0 where none is a number of the pattern and year
   */
  public static int after(NumberPattern pattern, List<String> numbers, int year) {
    return numbers.stream()
        .map(number -> pattern.sequence(number, year))
        .filter(OptionalInt::isPresent)
        .mapToInt(sequence -> sequence.getAsInt() + 1)
        .max()
        .orElse(0);
  }
}
