package clenchbook.samples;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * A farrier in an invented German valley who began small: one calendar year, fourteen horses, a
 * book in German with prices that include value-added tax.
 */
final class LindenauSmall {
  static final String FILE = "lindenau-small.xlsx";
  private static final long SEED = 20250119L;
  private static final LocalDate FIRST = LocalDate.of(2025, 1, 7);
  private static final LocalDate LAST = LocalDate.of(2025, 12, 19);

  /** Name; owner; place; interval in weeks; work. */
  private static final List<String> HORSES =
      List.of(
          "Wolke;Runa Tannhofer;Hof Ulmental;7;Beschlag",
          "Falke;Runa Tannhofer;Hof Ulmental;8;Ausschneiden",
          "Nelke;Jost Grünwedel;Hof Ulmental;7;Beschlag",
          "Sturm;Ilka Moosbrand;Mühlenstall;6;Beschlag",
          "Perle;Ilka Moosbrand;Mühlenstall;8;Ausschneiden",
          "Brise;Henning Auerlohe;Mühlenstall;7;Vorne beschlagen",
          "Quarz;Reitverein Lindgrund;Lindgrund;6;Beschlag",
          "Mohn;Reitverein Lindgrund;Lindgrund;6;Beschlag",
          "Taiga;Reitverein Lindgrund;Lindgrund;7;Vorne beschlagen",
          "Ulme;Reitverein Lindgrund;Lindgrund;8;Ausschneiden",
          "Krokus;Wiebke Sandforth;Am Rehbach;8;Ausschneiden",
          "Amsel;Wiebke Sandforth;Am Rehbach;7;Beschlag",
          "Nebel;Torben Hasselrode;Steinkuhle;7;Beschlag",
          "Linde;Torben Hasselrode;Steinkuhle;8;Ausschneiden");

  private static final String WORK =
      """
      # Arbeit|Preis|Steuer|Hufeisen|Anzahl Eisen|Warm/kalt|Nagel|Nägel je Eisen|Ausschneiden min|Richten min|Nageln min|Esse min
      Beschlag|165|U|Stahleisen|4|warm|Hufnagel 5|7|20|24|20|18
      Vorne beschlagen|110|U|Stahleisen|2|warm|Hufnagel 5|7|20|12|10|9
      # Arbeit|Preis|Steuer|Ausschneiden min
      Ausschneiden|48|U|22
      """;

  private static final String MATERIALS =
      """
      # Artikel|Art|Größe|Einheit|Stückkosten
      Stahleisen|keg||piece|4.20
      # Artikel|Art|Einheit|Je Packung|Packungskosten
      Hufnagel 5|nail|pack|250|31
      # Artikel|Art|Einheit|Stückkosten
      Propan|gas|kg|2.90
      """;

  private static final String SETTINGS =
      """
      Betriebsname|Hufbeschlag Lindenau
      Adresse|Werkstatt 3\\n00000 Lindenau
      Steuernummer|000/000/00000
      Land|DE
      Währung|EUR
      Sprache|de
      Steuersystem|de
      Entfernungseinheit|km
      Preise inklusive Steuer|ja
      Stundenlohn|32
      Fahrzeugkosten je km|0.42
      Gaskosten je kg|2.90
      Kleinmaterial je Pferd|2.10
      Gewinnermittlung|cash
      """;

  private static final String ASSETS =
      """
      Transporter|2023-04-18|10800|Transporter|82||
      Gasesse|2025-03-03|1440|Esse|100||
      Amboss|2022-09-12|960|12 Jahre|100||
      Aufhalterbock|2025-06-10|310|Werkzeug|100||
      Rechner|2025-09-01|890|Laptop|100||
      Alte Presse|2021-05-20|1800|Presse|100|2025-10-02|700
      """;

  /** Category; supplier; net; rate of tax; first day of the year; every so many days. */
  private static final List<String> COSTS =
      List.of(
          "Diesel;Tankhof Ulmental;58.40;19;9;24",
          "Versicherung;Talversicherung;48;0;15;90",
          "Kfz-Versicherung;Talversicherung;146;0;20;180",
          "Telefon;Netzwerk Tal;24.37;19;5;30",
          "Miete;Gemeinde Lindenau;45;0;3;30",
          "Strom;Talwerke;31.20;19;28;60",
          "Werkzeug;Schmiedebedarf Hagen & Ost;54.90;19;33;75",
          "Arbeitskleidung;Schmiedebedarf Hagen & Ost;71.50;19;60;150",
          "Fortbildung;Schmiedeschule am Moor;220;19;95;400",
          "Steuerberater;Kanzlei Birkenau;180;19;130;400",
          "Werbung;Druckerei Lindgrund;64;19;70;200",
          "Kontoführung;Talbank;6.90;0;30;30",
          "Propan;Gasdepot Rehbach;43.50;19;22;45",
          "Bewirtung;Gasthof zur Linde;38.60;19;88;160",
          "Geschenke;Hofladen Steinkuhle;26.90;7;345;400",
          "Parken;Stadt Lindgrund;2.52;19;48;100",
          "Privat;Tankhof Ulmental;40;19;200;400");

  /** What was paid to the tax office: day, amount; below zero a refund. */
  private static final List<String> TAX_OFFICE =
      List.of("2025-04-10;402.15", "2025-07-10;511.80", "2025-10-10;468.25", "2025-11-05;-37.40");

  private final Random random = new Random(SEED);
  private final Tab visits =
      new Tab("Besuche", "Datum|Ort|Kunde|Pferd|Arbeit|Größe|Nägel|Gesamt min|Bezahlt|Bemerkung");
  private final Tab trips =
      new Tab(
          "Fahrten",
          "Datum|Von|Nach|Strecke|Kilometerstand Beginn|Kilometerstand Ende|Zweck|Fahrzeug");
  private final Tab purchases =
      new Tab(
          "Einkäufe",
          "Datum|Lieferant|Artikel|Menge|Einheit|Kategorie|Netto|Steuer|Brutto|Bezahlt am");
  private final Tab payments = new Tab("Zahlungen", "Datum|Kunde|Betrag|Art");
  private int odometer = 84210;

  private LindenauSmall() {}

  /** The book's sheets, the same at every call. */
  static List<Tab> tabs() {
    return new LindenauSmall().made();
  }

  private List<Tab> made() {
    Map<LocalDate, List<String[]>> days = days();
    days.forEach(this::work);
    goods();
    COSTS.forEach(this::costs);
    TAX_OFFICE.forEach(this::taxOffice);
    sort(purchases);
    sort(payments);
    List<Tab> tabs = new ArrayList<>(List.of(visits));
    tabs.add(
        filled(
            "Preisliste",
            "Arbeit|Preis|Steuer|Hufeisen|Anzahl Eisen|Warm/kalt|Nagel"
                + "|Nägel je Eisen|Ausschneiden min|Richten min|Nageln min|Esse min",
            WORK));
    tabs.add(
        filled(
            "Material",
            "Artikel|Art|Größe|Einheit|Stückkosten|Je Packung|Packungskosten",
            MATERIALS));
    tabs.addAll(List.of(horses(), places(), trips, purchases, payments));
    tabs.add(
        filled(
            "Anlagevermögen",
            "Anlagegut|Gekauft am|Kosten|Klasse|Betriebliche Nutzung %|Verkauft am|Erlös",
            ASSETS));
    tabs.add(filled("Steuern", "Kürzel|Bezeichnung|Satz %|Art", "U|USt|19|standard\n"));
    tabs.add(filled("Einstellungen", "Einstellung|Wert", SETTINGS));
    return tabs;
  }

  /** Horses due by day: each place on its own day of the week. */
  private Map<LocalDate, List<String[]>> days() {
    List<String> places = HORSES.stream().map(line -> line.split(";")[2]).distinct().toList();
    Map<LocalDate, List<String[]>> days = new LinkedHashMap<>();
    Map<String, LocalDate> due = new LinkedHashMap<>();
    HORSES.forEach(line -> due.put(line, FIRST.plusDays(random.nextInt(35))));
    for (LocalDate day = FIRST; !day.isAfter(LAST); day = day.plusDays(1)) {
      int weekday = day.getDayOfWeek().getValue();
      if (day.getDayOfWeek() == DayOfWeek.SUNDAY || weekday > places.size()) {
        continue;
      }
      for (String line : HORSES) {
        String[] horse = line.split(";");
        if (horse[2].equals(places.get(weekday - 1)) && !due.get(line).isAfter(day)) {
          days.computeIfAbsent(day, unused -> new ArrayList<>()).add(horse);
          due.put(line, day.plusWeeks(Long.parseLong(horse[3])).minusDays(2));
        }
      }
    }
    return days;
  }

  private void work(LocalDate day, List<String[]> horses) {
    for (String[] horse : horses) {
      boolean shod = !horse[4].equals("Ausschneiden");
      boolean association = horse[1].startsWith("Reitverein");
      boolean atTruck = !association && random.nextInt(100) < 55;
      int price = horse[4].equals("Beschlag") ? 165 : shod ? 110 : 48;
      int minutes = (horse[4].equals("Beschlag") ? 68 : shod ? 45 : 22) + random.nextInt(9) - 4;
      visits.add(
          day,
          horse[2],
          horse[1],
          horse[0],
          horse[4],
          shod ? String.valueOf(random.nextInt(3)) : "",
          shod ? (horse[4].equals("Beschlag") ? 28 : 14) : null,
          minutes,
          atTruck ? price : null,
          random.nextInt(25) == 0 ? "vorn rechts kurz, nächstes Mal prüfen" : "");
      if (!atTruck) {
        payments.add(day.plusDays(9 + random.nextInt(18)), horse[1], price, "");
      }
    }
    drive(day, horses.get(0)[2]);
  }

  private void drive(LocalDate day, String place) {
    int distance = 2 * distance(place) + random.nextInt(6);
    trips.add(
        day, "Lindenau", place, null, odometer, odometer + distance, "Beschlag", "Transporter");
    odometer += distance;
    if (random.nextInt(5) == 0) {
      int home = 18 + random.nextInt(40);
      trips.add(day, "Lindenau", "", null, odometer, odometer + home, "privat", "Transporter");
      odometer += home;
    }
  }

  private static int distance(String place) {
    return 11 + Math.floorMod(place.length() * 7, 23);
  }

  private void goods() {
    for (int month = 1; month <= 12; month++) {
      LocalDate day = LocalDate.of(2025, month, 4);
      purchases.add(
          day,
          "Schmiedebedarf Hagen & Ost",
          "Stahleisen",
          24,
          "piece",
          "",
          money("100.80"),
          money("19.15"),
          money("119.95"),
          day.plusDays(10));
      if (month % 2 == 1) {
        purchases.add(
            day,
            "Schmiedebedarf Hagen & Ost",
            "Hufnagel 5",
            1,
            "pack",
            "",
            money("31.00"),
            money("5.89"),
            money("36.89"),
            day.plusDays(10));
      }
    }
  }

  private void costs(String line) {
    String[] part = line.split(";");
    BigDecimal net = money(part[2]);
    BigDecimal rate = money(part[3]).movePointLeft(2);
    int every = Integer.parseInt(part[5]);
    for (int on = Integer.parseInt(part[4]); on <= 365; on += every) {
      LocalDate day = LocalDate.ofYearDay(2025, on);
      BigDecimal tax = net.multiply(rate).setScale(2, java.math.RoundingMode.HALF_UP);
      purchases.add(
          day,
          part[1],
          "",
          null,
          "",
          part[0],
          net,
          tax.signum() == 0 ? null : tax,
          net.add(tax),
          day);
    }
  }

  private void taxOffice(String line) {
    String[] part = line.split(";");
    LocalDate day = LocalDate.parse(part[0]);
    purchases.add(
        day, "Finanzamt Lindgrund", "", null, "", "Umsatzsteuer", null, null, money(part[1]), day);
  }

  private static BigDecimal money(String text) {
    return new BigDecimal(text);
  }

  private static void sort(Tab tab) {
    tab.rows.sort(
        (one, other) -> ((LocalDate) one.get("Datum")).compareTo((LocalDate) other.get("Datum")));
  }

  private static Tab horses() {
    Tab tab = new Tab("Pferde", "Pferd|Kunde|Ort|Intervall Wochen");
    for (String line : HORSES) {
      String[] horse = line.split(";");
      tab.add(horse[0], horse[1], horse[2], Integer.valueOf(horse[3]));
    }
    return tab;
  }

  private static Tab places() {
    Tab tab = new Tab("Orte", "Ort|Adresse|Entfernung|Fahrzeit min");
    HORSES.stream()
        .map(line -> line.split(";")[2])
        .distinct()
        .forEach(
            place ->
                tab.add(place, place + "\n00000 Lindenau", distance(place), 8 + distance(place)));
    return tab;
  }

  private static Tab filled(String name, String headings, String lines) {
    Tab tab = new Tab(name, headings);
    tab.lines(lines);
    return tab;
  }
}
