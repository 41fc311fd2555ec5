package clenchbook.tax.year;

import java.util.Locale;

/** The tax regime the summary is made for; its word is the folder of its rate tables. */
public enum Regime {
  /** Categories and value-added tax by rate, in any country. */
  PLAIN("lines"),
  /** Schedule C and Schedule SE of the United States. */
  US("schedule-c"),
  /** The self-employment pages and VAT of the United Kingdom. */
  UK("sa103f");

  private final String lines;

  Regime(String lines) {
    this.lines = lines;
  }

  /** The regime written as {@code plain}, {@code us} or {@code uk}; throws for any other word. */
  public static Regime of(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT));
  }

  /** The word of the setting and of the first column of the summary. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The table of its lines or boxes. */
  public String lineTable() {
    return word() + "/" + lines;
  }

  /** One of its other tables, as {@code us/mileage}. */
  public String table(String subject) {
    return word() + "/" + subject;
  }
}
