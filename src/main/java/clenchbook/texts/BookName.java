package clenchbook.texts;

import java.util.function.UnaryOperator;

/**
 * A sheet, heading or setting in a sentence, by the program's name for it: {@code Settings}, {@code
 * Visits/Charge}, {@code Settings/Hourly wage}. Said as the farrier's own book calls it; texts name
 * it within square brackets.
 *
 * @param name the sheet's name, alone or before a slash and the heading's or setting's
 */
public record BookName(String name) {
  /** The program's own names, which are those of an English book. */
  public static final UnaryOperator<String> PLAIN = name -> name.substring(name.indexOf('/') + 1);

  /** The name of a heading or setting of a sheet. */
  public static BookName of(String sheet, String heading) {
    return new BookName(sheet + "/" + heading);
  }
}
