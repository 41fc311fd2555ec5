package clenchbook.run;

/** A number with its noun. */
final class Count {
  private Count() {}

  /** {@code 1 mail}, {@code 2 mails}. */
  static String of(long number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }
}
