package clenchbook.strangers;

import static clenchbook.strangers.Kept.march;
import static clenchbook.strangers.Kept.money;

import java.util.List;
import java.util.Locale;

/** Books of farriers in France, Belgium and Quebec. */
final class FrenchBooks {
  private static final String EUROS = "#,##0.00\\ \"€\"";

  private FrenchBooks() {}

  static List<StrangersBook> all() {
    return List.of(merged(), export(), months(), beside());
  }

  /** Merged cells for the day, the client and the stable. */
  private static StrangersBook merged() {
    Kept kept =
        Kept.xlsx("Carnet maréchal")
            .sheet("Carnet")
            .row("Carnet de ferrure - année 2026")
            .merge("A1:H1")
            .head("Date|Client|Écurie|Cheval|Prestation|Prix TTC|Réglé|Observations")
            .row(
                march(3),
                "Mme Frênaie",
                "Haras du Lac",
                "Jasmin",
                "Ferrure 4 fers",
                euros("95"),
                "oui")
            .row("", "", "", "Ulysse", "Parage", euros("40"), "oui")
            .row("", "", "", "Tornade", "Ferrure 2 fers", euros("62.5"), "non", "à surveiller")
            .merge("A3:A5")
            .merge("B3:B5")
            .merge("C3:C5")
            .row(march(10), "Éric Saulaie", "Les Prés", "Caramel", "Parage", euros("40"), "")
            .row(march(24), "Éric Saulaie", "Les Prés", "Caramel", "Déplacement", euros("15"), "")
            .row("", "", "", "", "TOTAL", euros("252.5"));
    return StrangersBook.atOnce(
        "fr, merged cells, paid oui",
        Locale.FRANCE,
        kept,
        "Éric Saulaie 55.00",
        "Mme Frênaie 197.50");
  }

  private static Kept.Shown euros(String amount) {
    return new Kept.Shown(amount, EUROS);
  }

  /** Day first with slashes: the column's own days settle it. */
  private static StrangersBook export() {
    String text =
        """
        Jour;Propriétaire;Nom du cheval;Travail effectué;Durée;Montant;Payé le;Mode de règlement
        02/03/2026;Dubois-Hêtre;Câline;Parage;30 min;40,00 €;;chèque
        02/03/2026;Dubois-Hêtre;Rêveuse;Ferrage complet;1 h 10;98,50 €;;chèque
        13/03/2026;Centre équestre du Val;Pomme;Parage;35 min;40,00 €;;
        18/03/2026;Centre équestre du Val;Poire;Parage;35 min;40,00 €;;
        27/03/2026;Centre équestre du Val;Kiwi;Ferrage complet;1 h 05;1 098,50 €;;virement
        """;
    return StrangersBook.atOnce(
        "fr, slashes settled by the column, money with spaces",
        Locale.FRANCE,
        Kept.csv("interventions", "UTF-8", text),
        "Centre équestre du Val 1178.50",
        "Dubois-Hêtre 138.50");
  }

  /** A sheet a month, the owner and the place written once. */
  private static StrangersBook months() {
    Kept kept = Kept.xls("2026");
    String head = "Jour|Propriétaire|Lieu|Cheval|Intervention|Tarif|Solde";
    kept.sheet("Février 2026").head(head).row(26, "Lise Noyer", "Arlon", "Bijou", "Parage", 45, 45);
    kept.sheet("Mars 2026")
        .head(head)
        .row(5, "Lise Noyer", "Arlon", "Bijou", "Ferrure", 105, 105)
        .row("", "", "", "Opale", "Parage", 45, 150)
        .row(19, "Manège Verviers", "Verviers", "Saphir", "Parage", 45, 195)
        .row("", "", "", "Rubis", "Parage", 45, 240)
        .row("", "", "", "Perle", "Ferrure", money("105.75"), money("345.75"));
    return StrangersBook.proposed(
        "fr, a sheet a month, owner and place once",
        new Locale("fr", "BE"),
        kept,
        "Lise Noyer 150.00",
        "Manège Verviers 195.75");
  }

  /** The log and the prices side by side on one sheet. */
  private static StrangersBook beside() {
    Kept kept =
        Kept.xlsx("Ferrage")
            .sheet("Feuille1")
            .row("Visites", "", "", "", "", "", "", "Mes tarifs")
            .head("Date|Propriétaire|Cheval|Acte|Supplément|||Acte|Prix")
            .row("2026-03-02", "Paul Tilleul", "Neige", "Parage", "", "", "", "Parage", 60)
            .row(
                "2026-03-02",
                "Paul Tilleul",
                "Suie",
                "Ferrure à chaud",
                "",
                "",
                "",
                "Ferrure à chaud",
                160)
            .row(
                "2026-03-09",
                "Anne Érable",
                "Loup",
                "Ferrure à froid",
                "",
                "",
                "",
                "Ferrure à froid",
                150)
            .row("2026-03-30", "Anne Érable", "Loup", "Parage");
    return StrangersBook.atOnce(
        "fr, log and prices side by side",
        Locale.CANADA_FRENCH,
        kept,
        "Anne Érable 210.00",
        "Paul Tilleul 220.00");
  }
}
