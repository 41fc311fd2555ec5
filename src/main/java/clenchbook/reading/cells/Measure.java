package clenchbook.reading.cells;

import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The unit that a column has of its own, and the other units of its kind that may be typed in its
 * cells. Inch, foot, yard and mile by the international yard and pound agreement of 1959, the pound
 * likewise (NIST Handbook 44, appendix C, section 4, the digits from memory); propane by the gallon
 * of the United States as {@link clenchbook.book.Settings#LB_PER_GALLON} has it.
 */
public enum Measure {
  MM(Kind.LENGTH, "mm"),
  INCH(Kind.LENGTH, "in"),
  FOOT(Kind.LENGTH, "ft"),
  KM(Kind.DISTANCE, "km"),
  MILE(Kind.DISTANCE, "miles", Message.of("cells.number.ofMiles")),
  SECOND(Kind.TIME, "s"),
  MINUTE(Kind.TIME, "min"),
  HOUR(Kind.TIME, "h"),
  DAY(Kind.PERIOD, "days", Message.of("cells.number.ofDays")),
  WEEK(Kind.PERIOD, "weeks", Message.of("cells.number.ofWeeks")),
  KG(Kind.MASS, "kg"),
  LB(Kind.MASS, "lb"),
  /** Kilograms of propane, which is sold by the gallon too. */
  KG_OF_PROPANE(Kind.PROPANE, "kg"),
  LB_OF_PROPANE(Kind.PROPANE, "lb"),
  GALLON_OF_PROPANE(Kind.PROPANE, "gallons", Message.of("cells.number.ofGallons")),
  PIECE(Kind.COUNT, "pieces", Message.of("cells.number.some")),
  PAIR(Kind.COUNT, "pairs", Message.of("cells.number.ofPairs")),
  PACK(Kind.PACKS, "packs", Message.of("cells.number.ofPacks")),
  BAR(Kind.BARS, "bars", Message.of("cells.number.ofBars")),
  DEGREE(Kind.ANGLE, "deg"),
  METRES_PER_SECOND_SQUARED(Kind.ACCELERATION, "m/s2"),
  DECIBEL(Kind.NOISE, "dba");

  private static final int DECIMALS = 10;

  /** Units that turn into each other: how many of the base each is, and its words. */
  private enum Kind {
    LENGTH(
        "1 mm millimeter millimeters millimetre millimetres millimètre millimètres milímetro"
            + " milímetros",
        "10 cm centimeter centimeters centimetre centimetres",
        "1000 m meter meters metre metres metros",
        "25.4 in ins inch inches \" ″ ” zoll pouce pouces pulgada pulgadas duim inch",
        "304.8 ft foot feet ' ′ ’ fuß fuss pied pieds pie pies voet",
        "914.4 yd yds yard yards"),
    DISTANCE(
        "1 km kms kilometer kilometers kilometre kilometres kilomètre kilomètres kilómetro"
            + " kilómetros",
        "1.609344 mi mile miles meile meilen mille milles milla millas mijl mijlen"),
    TIME(
        "1 s sec secs second seconds sek sekunde sekunden seconde secondes segundo segundos seg"
            + " seconden ″ \"",
        "60 m min mins minute minutes minuten minuto minutos minuut ' ′ ’",
        "3600 h hr hrs hour hours std stunde stunden heure heures hora horas uur uren u"),
    PERIOD(
        "1 d day days tag tage tagen jour jours día días dia dias dag dagen",
        "7 w wk wks week weeks wo woche wochen sem semaine semaines semana semanas weken"),
    MASS(
        "1 kg kgs kilo kilos kilogram kilograms kilogramm kilogramme kilogrammes kilogramo"
            + " kilogramos",
        "0.001 g gram grams gramm gramme grammes gramo gramos",
        "0.45359237 lb lbs pound pounds",
        "0.028349523125 oz ounce ounces"),
    PROPANE(
        "1 kg kgs kilo kilos kilogram kilograms kilogramm kilogramme kilogrammes kilogramo"
            + " kilogramos",
        "0.45359237 lb lbs pound pounds",
        "1.9232316488 gal gals gallon gallons"),
    COUNT(
        "1 pc pcs piece pieces shoe shoes nail nails pad pads stud studs x ea each stk stück stücke"
            + " pièce pièces pce pces pieza piezas ud uds stuk stuks eisen nägel fers clous"
            + " herradura herraduras clavo clavos ijzers nagels",
        "2 pair pairs pr prs paar paare paire paires par pares"),
    PACKS(
        "1 pack packs packet packets box boxes packung packungen paket pakete boîte boîtes paquet"
            + " paquets caja cajas paquete paquetes doos dozen pak pakken"),
    BARS("1 bar bars length lengths stange stangen barre barres barra barras staaf staven"),
    ANGLE("1 deg degs degree degrees ° grad degré degrés grado grados graad graden"),
    ACCELERATION("1 m/s2 m/s² m/s^2"),
    NOISE("1 db dba db(a)");

    private final Map<String, BigDecimal> ofWord = new HashMap<>();

    Kind(String... units) {
      for (String unit : units) {
        String[] words = unit.split(" ");
        for (int i = 1; i < words.length; i++) {
          ofWord.put(words[i], new BigDecimal(words[0]));
        }
      }
    }
  }

  private final Kind kind;
  private final String word;
  private final Message expected;

  Measure(Kind kind, String word) {
    this(kind, word, Message.of("cells.number.inUnit", word));
  }

  Measure(Kind kind, String word, Message expected) {
    this.kind = kind;
    this.word = word;
    this.expected = expected;
  }

  /** What is expected of a cell whose numbers have this unit. */
  Message expected() {
    return expected;
  }

  /** The unit's own word, in English. */
  public String word() {
    return word;
  }

  /** The unit of distance that a heading names, as {@code Miles} and {@code Distance (km)} do. */
  static Optional<Measure> distanceIn(String heading) {
    for (String word : heading.split("[^\\p{L}]+")) {
      for (Measure unit : List.of(KM, MILE)) {
        if (unit.convert(BigDecimal.ONE, word).filter(BigDecimal.ONE::equals).isPresent()) {
          return Optional.of(unit);
        }
      }
    }
    return Optional.empty();
  }

  /** Whether a word names a unit of this kind; its end may have a full stop. */
  boolean knows(String unit) {
    return of(unit).isPresent();
  }

  private Optional<BigDecimal> of(String unit) {
    String bare = unit.toLowerCase(Locale.ROOT).strip();
    String word = bare.endsWith(".") ? bare.substring(0, bare.length() - 1) : bare;
    return Optional.ofNullable(kind.ofWord.get(word));
  }

  /**
   * A number of another unit in this one.
   *
   * @return exact where it has up to ten decimals, else rounded half-up to them; empty for a unit
   *     of another kind
   */
  public Optional<BigDecimal> convert(BigDecimal number, String unit) {
    BigDecimal own = kind.ofWord.getOrDefault(word, BigDecimal.ONE);
    return of(unit).map(base -> base.compareTo(own) == 0 ? number : rounded(number, base, own));
  }

  private static BigDecimal rounded(BigDecimal number, BigDecimal base, BigDecimal own) {
    BigDecimal value = number.multiply(base).divide(own, MathContext.DECIMAL128);
    BigDecimal bare = value.setScale(DECIMALS, RoundingMode.HALF_UP).stripTrailingZeros();
    return bare.scale() < 0 ? bare.setScale(0) : bare;
  }
}
