package clenchbook.reading.proposal;

import clenchbook.book.SheetKind;
import clenchbook.reading.SmallBook;
import clenchbook.reading.words.LeftOut;
import clenchbook.reading.words.SheetWords;
import clenchbook.reading.words.Vocabulary;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/**
 * A book whose sheets and headings are renamed at random by a seed: words of other farriers,
 * misspelt, shortened, of another language, or nonsense; with columns that tempt among them.
 */
final class RenamedBook {
  private static final Path SYNONYMS =
      Path.of("src", "test", "resources", "renamed-books", "synonyms.txt");
  private static final List<String> NONSENSE =
      List.of(
          "Quid", "Doodle", "Wibble", "Blip", "Xq", "Zorp", "Flurm", "Kram", "Dings", "Truc",
          "Cosa", "Spul", "Hm", "Zzz", "Foo", "Sprig", "Lumen", "Brolly", "Knick", "Plonk");
  private static final Map<String, List<String>> WORDS = words();

  /** How a heading was changed. */
  enum Way {
    SYNONYM,
    MISSPELT,
    SHORTENED,
    NONSENSE,
    TEMPTING
  }

  /** What a heading or sheet truly means, and how it came to its name. */
  record Truth(String meaning, Way way) {}

  private final Random random;
  private final boolean heldOut;
  final SmallBook book = new SmallBook();
  final Map<String, Truth> truths = new LinkedHashMap<>();
  private final Set<String> names = new HashSet<>();

  /**
   * Renames a book.
   *
   * @param heldOut whether to use the half of the words that nothing was tuned on
   */
  RenamedBook(PlainBook plain, long seed, boolean heldOut) {
    this.random = new Random(seed);
    this.heldOut = heldOut;
    plain.sheets().forEach(this::sheet);
  }

  private static Map<String, List<String>> words() {
    Map<String, List<String>> words = new HashMap<>();
    try {
      for (String line : Files.readAllLines(SYNONYMS)) {
        int equals = line.indexOf(" = ");
        if (equals > 0) {
          words.put(line.substring(0, equals), List.of(line.substring(equals + 3).split(", ")));
        }
      }
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
    return words;
  }

  /** The key of a heading's truth; that of the sheet itself without heading. */
  static String key(String sheet, String heading) {
    return sheet + "\n" + heading;
  }

  private void sheet(PlainBook.Sheet sheet) {
    String name = random.nextInt(100) < 45 ? sheetName(sheet) : sheet.name();
    SheetWords words = Vocabulary.load().of(sheet.kind());
    Set<String> used = new HashSet<>(sheet.headings());
    List<Object> headings = new ArrayList<>();
    for (int i = 0; i < sheet.headings().size(); i++) {
      String heading = sheet.headings().get(i);
      String meaning = sheet.meanings().get(i);
      if (!meaning.isEmpty() && random.nextInt(100) < 50) {
        heading = renamed(name, sheet.kind(), words, heading, meaning, used);
      } else if (!meaning.isEmpty()) {
        truths.put(key(name, heading), new Truth(meaning, Way.SYNONYM));
      }
      headings.add(heading);
    }
    List<Object[]> rows = new ArrayList<>(sheet.rows());
    if (sheet.kind() == SheetKind.VISITS) {
      tempt(name, sheet, headings, rows);
    }
    sheet.title().forEach(row -> book.rows(name, row));
    book.rows(name, headings.toArray());
    rows.forEach(row -> book.rows(name, row));
  }

  private String sheetName(PlainBook.Sheet sheet) {
    String found = pick("sheet " + sheet.kind().title(), sheet.name());
    String name = found.replace("'", "");
    if (!names.add(name)) {
      return sheet.name();
    }
    truths.put(key(name, ""), new Truth(sheet.kind().title(), Way.SYNONYM));
    return name;
  }

  /** One of the words in use for a heading, of the half that is asked for. */
  private String pick(String key, String otherwise) {
    List<String> words =
        WORDS.getOrDefault(key, List.of()).stream()
            .filter(word -> (Math.floorMod(word.hashCode(), 2) == 1) == heldOut)
            .toList();
    return words.isEmpty() ? otherwise : words.get(random.nextInt(words.size()));
  }

  private String renamed(
      String sheet,
      SheetKind kind,
      SheetWords words,
      String heading,
      String meaning,
      Set<String> used) {
    for (int trial = 0; trial < 8; trial++) {
      Way way = way();
      String found =
          switch (way) {
            case SYNONYM -> pick(kind.title() + " " + meaning, heading);
            case MISSPELT -> misspelt(base(words, meaning));
            case SHORTENED -> shortened(base(words, meaning));
            default -> NONSENSE.get(random.nextInt(NONSENSE.size()));
          };
      boolean known = words.heading(found).isPresent() || LeftOut.isHarmless(found);
      boolean fresh = !found.isBlank() && used.add(found);
      boolean itself = words.weakHeadings(clenchbook.reading.words.WordForms.of(found)).isEmpty();
      if (!known && fresh && itself) {
        truths.put(key(sheet, found), new Truth(meaning, way));
        return found;
      }
    }
    truths.put(key(sheet, heading), new Truth(meaning, Way.SYNONYM));
    return heading;
  }

  private Way way() {
    int chance = random.nextInt(100);
    return chance < 40
        ? Way.SYNONYM
        : chance < 60 ? Way.MISSPELT : chance < 80 ? Way.SHORTENED : Way.NONSENSE;
  }

  /** A known word of the heading in one of the five languages. */
  private String base(SheetWords words, String meaning) {
    String language = List.of("en", "en", "de", "fr", "es", "nl").get(random.nextInt(6));
    return words.headingIn(language, meaning);
  }

  private String misspelt(String word) {
    StringBuilder changed = new StringBuilder(word);
    int times = word.length() > 7 ? 1 + random.nextInt(2) : 1;
    for (int i = 0; i < times && changed.length() > 2; i++) {
      int at = 1 + random.nextInt(changed.length() - 1);
      switch (random.nextInt(4)) {
        case 0 -> changed.deleteCharAt(at);
        case 1 -> changed.insert(at, (char) ('a' + random.nextInt(26)));
        case 2 -> changed.setCharAt(at, (char) ('a' + random.nextInt(26)));
        default -> {
          char before = changed.charAt(at - 1);
          changed.setCharAt(at - 1, changed.charAt(at));
          changed.setCharAt(at, before);
        }
      }
    }
    return changed.toString().strip();
  }

  private String shortened(String word) {
    return switch (random.nextInt(3)) {
      case 0 -> word.substring(0, Math.min(word.length(), 3 + random.nextInt(2))).strip() + ".";
      case 1 -> word.charAt(0) + word.substring(1).replaceAll("[aeiouäöüéèíóú]", "");
      default -> {
        StringBuilder parts = new StringBuilder();
        for (String part : word.split(" ")) {
          parts.append(part, 0, Math.min(part.length(), 3)).append(". ");
        }
        yield parts.toString().strip();
      }
    };
  }

  /** Columns that are nothing of the program's, or not what they seem. */
  private void tempt(
      String name, PlainBook.Sheet sheet, List<Object> headings, List<Object[]> rows) {
    int many = random.nextInt(4);
    int date = sheet.meanings().indexOf("Date");
    int charge = sheet.meanings().indexOf("Charge");
    BigDecimal running = BigDecimal.ZERO;
    for (int i = 0; i < many; i++) {
      Tempting tempting = Tempting.values()[random.nextInt(Tempting.values().length)];
      String heading = tempting.names.get(random.nextInt(tempting.names.size()));
      boolean known = Vocabulary.load().of(SheetKind.VISITS).heading(heading).isPresent();
      if (known || headings.contains(heading)) {
        continue;
      }
      headings.add(heading);
      truths.put(key(name, heading), new Truth("", Way.TEMPTING));
      for (int row = 0; row < rows.size(); row++) {
        Object[] cells = java.util.Arrays.copyOf(rows.get(row), headings.size());
        Object day = date >= 0 && date < cells.length ? cells[date] : "";
        BigDecimal money = money(charge >= 0 ? cells[charge] : null);
        running = running.add(money);
        boolean filled = cells[0] != null && !cells[0].toString().isEmpty();
        cells[headings.size() - 1] = filled ? value(tempting, day, money, running, row) : null;
        rows.set(row, cells);
      }
    }
  }

  private BigDecimal money(Object cell) {
    String digits =
        cell instanceof SmallBook.Styled styled
            ? styled.number()
            : String.valueOf(cell).replaceAll("[^\\d.]", "");
    boolean number = digits.matches("\\d+(\\.\\d+)?");
    return number ? new BigDecimal(digits) : BigDecimal.valueOf(40 + random.nextInt(30));
  }

  private Object value(Tempting tempting, Object day, BigDecimal money, BigDecimal sum, int row) {
    return switch (tempting) {
      case TOTAL -> money(money.multiply(new BigDecimal("1.2")));
      case BALANCE -> money(sum);
      case PHONE -> "0" + (7_000_000_000L + random.nextInt(99_999_999));
      case INVOICE -> BigDecimal.valueOf(1_001L + row);
      case MILEAGE -> BigDecimal.valueOf(5 + random.nextInt(60));
      case DUE -> day instanceof LocalDate date ? date.plusDays(14) : LocalDate.of(2026, 5, 1);
      case NEXT -> day instanceof LocalDate date ? date.plusDays(42) : LocalDate.of(2026, 6, 1);
      case COLOUR -> List.of("bay", "grey", "chestnut", "black").get(random.nextInt(4));
      case WEATHER -> List.of("rain", "sun", "wind").get(random.nextInt(3));
      case AGE -> BigDecimal.valueOf(4 + random.nextInt(20));
      case TAX -> money(money.multiply(new BigDecimal("0.2")));
      case START -> java.time.LocalTime.of(8 + row % 9, 15);
    };
  }

  private static Object money(BigDecimal value) {
    return new SmallBook.Styled(
        value.setScale(2, java.math.RoundingMode.HALF_UP).toPlainString(), "#,##0.00");
  }

  /** What tempts. */
  private enum Tempting {
    TOTAL("Total", "Amount due", "Grand total", "Gesamt", "Total TTC", "Suma", "Totaal"),
    BALANCE("Running balance", "Balance so far", "Saldo", "Solde", "Openstaand"),
    PHONE("Phone", "Mobile no", "Handy", "Tél.", "Móvil", "Mobiel"),
    INVOICE("Invoice no", "Inv.", "Rechnung Nr", "No facture", "Factura nº", "Factuurnr"),
    MILEAGE("Mileage", "Km driven", "Miles there", "gefahren", "kilometraje"),
    DUE("Due date", "Payment due", "Fällig am", "Échéance", "Vencimiento", "Vervaldatum"),
    NEXT("Next visit", "Next due", "Nächster Termin", "Prochain passage", "Próxima visita"),
    COLOUR("Colour", "Coat", "Farbe", "Robe", "Capa", "Kleur"),
    WEATHER("Weather", "Wetter", "Météo", "Sky"),
    AGE("Age", "Yrs", "Alter", "Âge", "Edad"),
    TAX("VAT", "MwSt", "TVA", "IVA", "Btw"),
    START("Start", "Arrived", "Beginn", "Arrivée", "Began at");

    private final List<String> names;

    Tempting(String... names) {
      this.names = List.of(names);
    }
  }

  /** A short account of the truths. */
  String told() {
    StringBuilder told = new StringBuilder();
    truths.forEach(
        (key, truth) ->
            told.append(String.format(Locale.ROOT, "%s -> %s%n", key.replace('\n', '!'), truth)));
    return told.toString();
  }
}
