package clenchbook.strangers;

import java.util.List;
import java.util.Locale;

/**
 * A book as some farrier keeps it, and what a person would bill from it.
 *
 * @param name a few words that tell it from the others
 * @param machine the farrier's machine, which says what no setting says
 * @param month the month to bill
 * @param needs whether it is read as it is or after {@code check --propose}
 * @param kept its sheets
 * @param invoices owner and gross, typed by hand, in the order of owners' names
 * @param told kind and cell of the problems that it should bring; none of a sound book
 */
record StrangersBook(
    String name,
    Locale machine,
    String month,
    Needs needs,
    Kept kept,
    List<String> invoices,
    List<String> told) {

  /** What the farrier has to do before the month's end. */
  enum Needs {
    /** Nothing. */
    NOTHING,
    /** To let {@code check --propose} write its guess beside the book. */
    PROPOSE
  }

  StrangersBook {
    invoices = List.copyOf(invoices);
    told = List.copyOf(told);
  }

  static StrangersBook atOnce(String name, Locale machine, Kept kept, String... invoices) {
    return new StrangersBook(
        name, machine, "2026-03", Needs.NOTHING, kept, List.of(invoices), List.of());
  }

  static StrangersBook proposed(String name, Locale machine, Kept kept, String... invoices) {
    return new StrangersBook(
        name, machine, "2026-03", Needs.PROPOSE, kept, List.of(invoices), List.of());
  }

  StrangersBook telling(String... problems) {
    return new StrangersBook(name, machine, month, needs, kept, invoices, List.of(problems));
  }

  @Override
  public String toString() {
    return name;
  }
}
