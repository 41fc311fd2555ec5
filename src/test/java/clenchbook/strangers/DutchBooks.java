package clenchbook.strangers;

import static clenchbook.strangers.Kept.march;
import static clenchbook.strangers.Kept.money;

import java.util.List;
import java.util.Locale;

/** Books of farriers in the Netherlands and Belgium. */
final class DutchBooks {
  private static final Locale NETHERLANDS = new Locale("nl", "NL");

  private DutchBooks() {}

  static List<StrangersBook> all() {
    return List.of(table(), balance(), export(), below());
  }

  /** One table, hours and minutes, and what was settled. */
  private static StrangersBook table() {
    Kept kept =
        Kept.xlsx("Agenda hoefsmid")
            .sheet("2026")
            .head(
                "Dag|Datum|Klant|Adres stal|Paard|Werkzaamheden|Tijd|Prijs incl.|Betaald ja/nee|"
                    + "Opmerkingen")
            .row(
                "ma",
                march(2),
                "Fam. Es",
                "Dorpsweg 1",
                "Bles",
                "4 ijzers",
                "1u10",
                "€ 110,00",
                "ja")
            .row(
                "ma",
                march(2),
                "Fam. Es",
                "Dorpsweg 1",
                "Sproet",
                "bekappen",
                "25 min",
                "€ 42,50",
                "ja")
            .row(
                "wo",
                march(11),
                "Manege Beuk",
                "Laan 9",
                "Vos",
                "2 ijzers",
                "40 min",
                "€ 67,50",
                "nee")
            .row(
                "wo",
                march(11),
                "Manege Beuk",
                "Laan 9",
                "Mier",
                "bekappen",
                "25 min",
                "€ 42,50",
                "nee",
                "hoefzweer LA")
            .row("", "", "", "", "", "Totaal", "", "€ 262,50");
    return StrangersBook.atOnce(
        "nl, one table, paid ja", NETHERLANDS, kept, "Fam. Es 152.50", "Manege Beuk 110.00");
  }

  /** A running balance beside charges and money taken. */
  private static StrangersBook balance() {
    Kept kept =
        Kept.ods("Kasboek")
            .sheet("Kasboek")
            .row("Kasboek hoefsmederij")
            .head("Datum|Eigenaar|Paard|Behandeling|Bedrag|Ontvangen|Saldo|Opmerking")
            .row(march(4), "Wil Linde", "Joep", "Bekappen", 40, 40, 0)
            .row(march(4), "Wil Linde", "Saar", "Rondom beslaan", 105, "", 105)
            .row(march(18), "J. Wilg", "Pien", "Bekappen", money("40.00"), "", 145)
            .row(
                march(18),
                "J. Wilg",
                "Pien",
                "IJzer verloren",
                money("22.50"),
                "",
                money("167.50"),
                "spoed")
            .row(LIKE_NOTHING);
    return StrangersBook.atOnce(
        "nl, a running balance", NETHERLANDS, kept, "J. Wilg 62.50", "Wil Linde 145.00");
  }

  private static final Object[] LIKE_NOTHING = {};

  /** Dashes between day, month and year. */
  private static StrangersBook export() {
    String text =
        """
        datum;naam klant;naam paard;locatie;soort werk;bedrag excl. btw;opm.
        3-3-2026;De Olmhoeve;Wodan;Olmweg 2;beslaan voor;60,00;
        3-3-2026;De Olmhoeve;Freya;Olmweg 2;bekappen;38,75;
        24-3-2026;Griet Plataan;Tobber;Kade 7;beslaan rondom;115,00;
        25-3-2026;Griet Plataan;Tobber;Kade 7;ijzer los;20,00;
        31-3-2026;Griet Plataan;Dot;Kade 7;bekappen;38,75;
        """;
    return StrangersBook.atOnce(
        "nl, semicolons and dashes",
        NETHERLANDS,
        Kept.csv("werklijst", "UTF-8", text),
        "De Olmhoeve 98.75",
        "Griet Plataan 173.75");
  }

  /** Prices above, the log below, on one sheet. */
  private static StrangersBook below() {
    Kept kept =
        Kept.xls("Hoefsmid")
            .sheet("Blad1")
            .row("Prijzen 2026")
            .head("Werk|Prijs")
            .row("Bekappen", 40)
            .row("Rondom", 108)
            .row("Voor", 65)
            .blank()
            .row("Bezoeken")
            .head("Datum|Eigenaar|Paard|Plaats|Werk|Min.")
            .row(march(7), "Stal Berk", "Noor", "Peer", "Bekappen", 25)
            .row(march(7), "Stal Berk", "Kees", "Peer", "Rondom", 70)
            .blank()
            .row(march(14), "An Hazelaar", "Tijger", "Bree", "Voor", 40);
    return StrangersBook.atOnce(
        "nl, prices above and log below on one sheet",
        new Locale("nl", "BE"),
        kept,
        "An Hazelaar 65.00",
        "Stal Berk 148.00");
  }
}
