package clenchbook.strangers;

import static clenchbook.strangers.Kept.march;
import static clenchbook.strangers.Kept.money;

import java.util.List;
import java.util.Locale;

/** Books of farriers in Spain and Mexico. */
final class SpanishBooks {
  private static final Locale SPAIN = new Locale("es", "ES");

  private SpanishBooks() {}

  static List<StrangersBook> all() {
    return List.of(year(), export(), months(), clients());
  }

  /** One table for the year, with the prices typed and a column for what was paid. */
  private static StrangersBook year() {
    Kept kept =
        Kept.xlsx("Herrajes 2026")
            .sheet("Hoja1")
            .row("HERRADOR - TRABAJOS DEL AÑO 2026")
            .blank()
            .head(
                "FECHA|CLIENTE|CUADRA|CABALLO|TRABAJO REALIZADO|PRECIO (€)|PAGADO|FORMA DE PAGO|"
                    + "OBSERVACIONES")
            .row(
                march(2),
                "Doña Encina",
                "El Roble",
                "Lucero",
                "Herraje completo",
                80,
                "SÍ",
                "efectivo")
            .row(march(2), "Doña Encina", "El Roble", "Canela", "Recorte", 35, "SÍ", "efectivo")
            .row(
                march(12),
                "Yeguada Fresno",
                "Fresno",
                "Trueno",
                "Herraje de manos",
                money("52.5"),
                "NO")
            .row(march(12), "Yeguada Fresno", "Fresno", "Rayo", "Recorte", 35, "NO")
            .row(
                march(26),
                "Yeguada Fresno",
                "Fresno",
                "Trueno",
                "Herradura perdida",
                20,
                "",
                "",
                "mano derecha")
            .blank()
            .row("", "", "", "", "TOTAL", money("222.5"));
    return StrangersBook.atOnce(
        "es, capital headings, paid sí",
        SPAIN,
        kept,
        "Doña Encina 115.00",
        "Yeguada Fresno 107.50");
  }

  /** Semicolons, the day first, decimal commas. */
  private static StrangersBook export() {
    String text =
        """
        Fecha;Dueño;Caballo;Servicio;Importe;Cobrado;Notas
        03/03/2026;Íñigo Olmo;Tordo;Herrado en caliente;85,00;85,00;
        17/03/2026;Íñigo Olmo;Tordo;Visita por cojera;30,00;;
        18/03/2026;Picadero Sauce;Nube;Recorte;35,50;;
        19/03/2026;Picadero Sauce;Brisa;Recorte;35,50;;
        19/03/2026;Picadero Sauce;Luna;Herrado en caliente;1.085,00;;ortopédico
        """;
    return StrangersBook.atOnce(
        "es, semicolons, what was taken",
        SPAIN,
        Kept.csv("servicios", "UTF-8", text),
        "Íñigo Olmo 115.00",
        "Picadero Sauce 1156.00");
  }

  /** A sheet a month whose title gives the year. */
  private static StrangersBook months() {
    Kept kept = Kept.xls("Libreta");
    String head = "Día|Propietario|Nombre del caballo|Concepto|Importe|Tiempo";
    kept.sheet("Marzo")
        .row("Mes de marzo de 2026")
        .head(head)
        .row(3, "Rancho Álamo", "Chispa", "Herraje completo", "$950.00", "60 min")
        .row(3, "Rancho Álamo", "Pinto", "Recorte", "$350.00", "25 min")
        .blank()
        .row(21, "Sra. Nogal", "Azabache", "Herraje completo", "$1,250.00", "75 min")
        .row("", "", "", "Suma", "$2,550.00");
    kept.sheet("Abril")
        .row("Mes de abril de 2026")
        .head(head)
        .row(2, "Sra. Nogal", "Azabache", "Recorte", "$350.00", "30 min");
    return StrangersBook.atOnce(
        "es, a sheet a month, money with points",
        new Locale("es", "MX"),
        kept,
        "Rancho Álamo 1300.00",
        "Sra. Nogal 1250.00");
  }

  /** A sheet for each client. */
  private static StrangersBook clients() {
    Kept kept = Kept.ods("Cuentas");
    String head = "Fecha|Caballo|Trabajo|Precio|Pagado|Saldo";
    kept.sheet("Marta Haya")
        .head(head)
        .row(march(5), "Duende", "Herraje completo", 75, 75, 0)
        .row(march(5), "Gitana", "Recorte", 30, "", 30);
    kept.sheet("Club Hípico Pinar")
        .head(head)
        .row(march(11), "Sultán", "Herraje de manos", 48, "", 48)
        .row(march(25), "Reina", "Recorte", 30, "", 78)
        .row(march(25), "Duque", "Recorte", 30, "", 108);
    return StrangersBook.proposed(
        "es, a sheet for each client",
        SPAIN,
        kept,
        "Club Hípico Pinar 108.00",
        "Marta Haya 105.00");
  }
}
