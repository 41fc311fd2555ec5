package clenchbook.einvoice;

import java.util.Locale;
import java.util.Map;

/**
 * The unit in which a line is counted.
 *
 * <p>Source: UN/ECE Recommendation 20, revision 17 (2021), as EN 16931 takes it for BT-130.
 */
final class UnitCode {
  /** One of something. */
  static final String PIECE = "C62";

  private static final String HOUR = "HUR";
  private static final String KILOMETRE = "KMT";
  private static final String MILE = "SMI";

  /** Items that are measured rather than counted, in the five languages of the invoice. */
  private static final Map<String, String> MEASURED =
      Map.ofEntries(
          Map.entry("hour", HOUR),
          Map.entry("hours", HOUR),
          Map.entry("hr", HOUR),
          Map.entry("hrs", HOUR),
          Map.entry("stunde", HOUR),
          Map.entry("stunden", HOUR),
          Map.entry("std", HOUR),
          Map.entry("heure", HOUR),
          Map.entry("heures", HOUR),
          Map.entry("hora", HOUR),
          Map.entry("horas", HOUR),
          Map.entry("uur", HOUR),
          Map.entry("uren", HOUR),
          Map.entry("km", KILOMETRE),
          Map.entry("kms", KILOMETRE),
          Map.entry("kilometre", KILOMETRE),
          Map.entry("kilometres", KILOMETRE),
          Map.entry("kilometer", KILOMETRE),
          Map.entry("kilometers", KILOMETRE),
          Map.entry("kilomètre", KILOMETRE),
          Map.entry("kilomètres", KILOMETRE),
          Map.entry("kilómetro", KILOMETRE),
          Map.entry("kilómetros", KILOMETRE),
          Map.entry("mile", MILE),
          Map.entry("miles", MILE));

  private UnitCode() {}

  /**
   * The unit of an extra.
   *
   * @param item the extra's name
   * @return hours, kilometres or miles where the name is that word or begins with it, else pieces
   */
  static String of(String item) {
    String first = item.strip().toLowerCase(Locale.ROOT).split("[\\s,.()/]+", 2)[0];
    return MEASURED.getOrDefault(first, PIECE);
  }
}
