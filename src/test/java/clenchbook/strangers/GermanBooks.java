package clenchbook.strangers;

import static clenchbook.strangers.Kept.march;
import static clenchbook.strangers.Kept.money;

import java.util.List;
import java.util.Locale;

/** Books of farriers in Germany, Austria and Switzerland. */
final class GermanBooks {
  private GermanBooks() {}

  static List<StrangersBook> all() {
    return List.of(dates(), prices(), export(), days());
  }

  /** Days typed as text with dots, money with its sign. */
  private static StrangersBook dates() {
    Kept kept =
        Kept.xlsx("Hufbeschlag 2026")
            .sheet("Beschläge")
            .row("Hufbeschlag 2026 - Übersicht")
            .blank()
            .head(
                "lfd. Nr.|Datum|Wochentag|Pferdebesitzer|Stall|Pferd|Leistung|Preis|bezahlt|"
                    + "Bemerkung")
            .row(
                1,
                "2.3.2026",
                "Mo",
                "Familie Eschner",
                "Lindenhof",
                "Falada",
                "Neubeschlag",
                "145,00 €",
                "ja")
            .row(
                2,
                "2.3.2026",
                "Mo",
                "Familie Eschner",
                "Lindenhof",
                "Momo",
                "Ausschneiden",
                "45,00 €",
                "ja")
            .row(3, "03.04.2026", "Fr", "H. Birke", "Lindenhof", "Ajax", "Umbeschlag", "110,00 €")
            .row(
                4,
                "09.03.26",
                "Mo",
                "H. Birke",
                "Lindenhof",
                "Ajax",
                "Eisen verloren",
                "30 EUR",
                "nein",
                "vorne links")
            .row(5, "12.3.2026", "Do", "Kati Ulme", "zu Hause", "Nele", "Ausschneiden", "45,-")
            .blank()
            .row("", "", "", "", "", "", "Summe", "375,00 €");
    return StrangersBook.atOnce(
        "de, dotted days and money as text",
        Locale.GERMANY,
        kept,
        "Familie Eschner 190.00",
        "H. Birke 30.00",
        "Kati Ulme 45.00");
  }

  /** A price list, a list of horses with their owners, and a log without owners. */
  private static StrangersBook prices() {
    Kept kept =
        Kept.xls("Kundenbuch")
            .sheet("Arbeitsbuch")
            .head("Tag|Pferd|Arbeit|Dauer|Fahrt km")
            .row(march(3), "Falada", "Beschlag komplett", "70 min", "12 km")
            .row(march(3), "Momo", "Ausschneiden", "25 min", "")
            .row(march(10), "Ajax", "Beschlag vorne", "40 min", "31 km")
            .row(march(10), "Ajax", "Anfahrt", "", "")
            .sheet("Pferde")
            .head("Name des Pferdes|Besitzer|Standort|Intervall (Wochen)")
            .row("Falada", "Eva Eschner", "Lindenhof", 8)
            .row("Momo", "Eva Eschner", "Lindenhof", 7)
            .row("Ajax", "H. Birke", "Hof Au", 8)
            .sheet("Preisliste")
            .head("Leistung|Preis in €|Steuersatz")
            .row("Ausschneiden", 45, "")
            .row("Beschlag komplett", money("138.50"), "")
            .row("Beschlag vorne", 85, "")
            .row("Anfahrt", 15, "");
    return StrangersBook.atOnce(
        "de, a price list, horses with their owners",
        Locale.GERMANY,
        kept,
        "Eva Eschner 183.50",
        "H. Birke 100.00");
  }

  /** Semicolons, decimal commas, an old character set, the currency in the heading. */
  private static StrangersBook export() {
    String text =
        """
        Datum;Kunde;Pferdename;Tätigkeit;Betrag (EUR);Zahlungsart;Notiz
        02.03.2026;Müller, Jörg;Größe;Vollbeschlag heiß;149,90;bar;
        02.03.2026;Müller, Jörg;Süße;Barhufpflege;42,50;bar;
        16.03.2026;Reitverein Öd;Änne;Vollbeschlag heiß;1.149,90;Überweisung;Sonderbeschlag
        31.03.2026;Reitverein Öd;Max;Barhufpflege;42,50;;
        ;;;Summe;1.384,80;;
        """;
    return StrangersBook.atOnce(
        "de, semicolons and decimal commas",
        new Locale("de", "AT"),
        Kept.csv("Aufträge 2026", "windows-1252", text),
        "Müller, Jörg 192.40",
        "Reitverein Öd 1192.40");
  }

  /** The day and the customer written once above their horses. */
  private static StrangersBook days() {
    Kept kept =
        Kept.ods("Tagebuch")
            .sheet("Tagebuch")
            .head("Datum|Kunde|Pferd|Arbeit|CHF")
            .row(march(4), "Rita Tanner")
            .row("", "", "Lisa", "Eisen rundum", 190)
            .row("", "", "Gin", "Ausschneiden", 70)
            .row(march(5), "Stall Weid")
            .row("", "", "Zorro", "Eisen vorne", 120)
            .row("", "", "Ella", "Ausschneiden", 70)
            .row("", "", "Bella", "Ausschneiden", 70);
    return StrangersBook.proposed(
        "de, day and customer once above their horses",
        new Locale("de", "CH"),
        kept,
        "Rita Tanner 260.00",
        "Stall Weid 260.00");
  }
}
