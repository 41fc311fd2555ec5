package clenchbook.commands.opening;

/** A number with its noun. */
public final class Count {
  private Count() {}

  /** {@code 1 mail}, {@code 2 mails}. */
  public static String of(long number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }
}
