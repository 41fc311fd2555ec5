package clenchbook.stock;

import java.io.InputStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A second count of a sample workbook's stock, straight from its cells and with nothing of the
 * program: its own reading, its own tables, its own walk through the days.
 */
final class CellRecount {

  private static final LocalDate ALWAYS = LocalDate.of(1900, 1, 1);

  private final Map<String, List<Map<String, String>>> sheets = new HashMap<>();
  private final DateTimeFormatter textDate;
  private final Map<String, BigDecimal> onHand = new TreeMap<>();

  private record Event(LocalDate date, int order, String shelf, BigDecimal pieces) {}

  private final List<Event> events = new ArrayList<>();

  private CellRecount(Path file, String textDatePattern) throws Exception {
    textDate = DateTimeFormatter.ofPattern(textDatePattern, Locale.ROOT);
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      for (Sheet sheet : workbook) {
        sheets.put(sheet.getSheetName(), rows(sheet));
      }
    }
  }

  /** Gives pieces on hand by {@code item|size} after a day. */
  static Map<String, BigDecimal> of(Path file, String textDatePattern, LocalDate last)
      throws Exception {
    CellRecount recount = new CellRecount(file, textDatePattern);
    recount.purchases();
    recount.visits();
    recount.counts();
    recount.walk(last);
    return recount.onHand;
  }

  private void walk(LocalDate last) {
    for (LocalDate day = ALWAYS.plusYears(120); !day.isAfter(last); day = day.plusDays(1)) {
      for (int order = 0; order < 3; order++) {
        for (Event event : events) {
          if (event.date().equals(day) && event.order() == order) {
            BigDecimal before = onHand.getOrDefault(event.shelf(), BigDecimal.ZERO);
            onHand.put(
                event.shelf(),
                order == 0
                    ? before.add(event.pieces())
                    : order == 1
                        ? before.subtract(event.pieces()).max(BigDecimal.ZERO)
                        : event.pieces());
          }
        }
      }
    }
  }

  private void purchases() {
    for (Map<String, String> row : sheets.get("Purchases")) {
      if (!text(row, "Item").isEmpty()) {
        String shelf = shelf(text(row, "Item"), text(row, "Size"));
        Map<String, String> material = anyMaterial(shelf);
        BigDecimal each =
            switch (text(row, "Unit")) {
              case "pair" -> BigDecimal.valueOf(2);
              case "pack" -> new BigDecimal(material.get("Per pack"));
              default -> BigDecimal.ONE;
            };
        events.add(
            new Event(
                date(text(row, "Date")),
                0,
                shelf,
                new BigDecimal(text(row, "Quantity")).multiply(each)));
      }
    }
  }

  private void counts() {
    Map<String, BigDecimal> sums = new TreeMap<>();
    for (Map<String, String> row : sheets.get("Counts")) {
      String key = date(text(row, "Date")) + "#" + shelf(text(row, "Item"), text(row, "Size"));
      sums.merge(key, new BigDecimal(text(row, "Quantity")), BigDecimal::add);
    }
    sums.forEach(
        (key, sum) ->
            events.add(
                new Event(LocalDate.parse(key.substring(0, 10)), 2, key.substring(11), sum)));
  }

  private void visits() {
    for (Map<String, String> row : sheets.get("Visits")) {
      LocalDate day = date(text(row, "Date"));
      boolean held = day == null || text(row, "Charge").startsWith("#");
      if (!held && !text(row, "Reason").equals("cancelled")) {
        Map<String, String> work = inForce(rowsOf("Work", "Work", text(row, "Work")), day);
        boolean noPrice = work == null && text(row, "Charge").isEmpty();
        if (!noPrice && !"fee".equals(work == null ? "" : text(work, "Kind"))) {
          visit(row, work == null ? Map.of() : work, day);
        }
      }
    }
  }

  private void visit(Map<String, String> row, Map<String, String> work, LocalDate day) {
    int shoes = shoes(row, work);
    String fresh = text(row, "New shoes");
    int newShoes = fresh.isEmpty() ? shoes : Math.min(shoes, whole(fresh));
    String shoe = text(row, "Shoe").isEmpty() ? text(work, "Shoe") : text(row, "Shoe");
    List<String> items = laidOut(shoe, shoes);
    List<String> sizes = laidOut(text(row, "Size"), shoes);
    for (int n = 0; n < newShoes; n++) {
      if (!items.get(n).isEmpty()) {
        shoe(items.get(n), sizes.get(n), day);
      }
    }
    String perShoe = text(work, "Nails per shoe");
    int nails =
        !text(row, "Nails").isEmpty()
            ? whole(text(row, "Nails"))
            : perShoe.isEmpty() ? 0 : (int) Math.floor(Double.parseDouble(perShoe) * shoes + 0.5);
    String nail = text(row, "Nail").isEmpty() ? text(work, "Nail") : text(row, "Nail");
    if (nails > 0 && !nail.isEmpty()) {
      use(day, shelf(nail, ""), BigDecimal.valueOf(nails));
    }
    for (String extra : text(row, "Extras").split(";")) {
      String words = extra.strip();
      if (!words.isEmpty()) {
        String count = words.replaceAll("^.*?(\\d+)$", "$1");
        boolean counted = count.matches("\\d+");
        String item = counted ? words.substring(0, words.length() - count.length()) : words;
        use(
            day,
            shelf(item.replace(":", "").strip(), ""),
            counted ? new BigDecimal(count) : BigDecimal.ONE);
      }
    }
  }

  private void shoe(String item, String size, LocalDate day) {
    String shelf = shelf(item, size);
    use(day, shelf, BigDecimal.ONE);
    Map<String, String> shoe = inForce(materials(shelf), day);
    if (shoe != null && !text(shoe, "Bar").isEmpty()) {
      String barShelf = shelf(text(shoe, "Bar"), "");
      Map<String, String> bar = inForce(materials(barShelf), day);
      BigDecimal mm = length(shoe).add(number(text(shoe, "Cut mm")));
      use(day, barShelf, text(bar, "Unit").equals("kg") ? mass(bar, mm) : ofBar(bar, mm));
    }
  }

  private static BigDecimal length(Map<String, String> shoe) {
    return text(shoe, "Length mm").isEmpty()
        ? inches(text(shoe, "Length in"))
        : number(text(shoe, "Length mm"));
  }

  private static BigDecimal inches(String text) {
    BigDecimal sum = BigDecimal.ZERO;
    for (String word : text.strip().split("\\s+")) {
      String[] fraction = word.split("/");
      BigDecimal part = new BigDecimal(fraction[0]);
      sum =
          sum.add(
              fraction.length == 1
                  ? part
                  : part.divide(new BigDecimal(fraction[1]), MathContext.DECIMAL128));
    }
    return sum.multiply(new BigDecimal("25.4"));
  }

  private static BigDecimal ofBar(Map<String, String> bar, BigDecimal mm) {
    return mm.divide(number(text(bar, "Bar length mm")), MathContext.DECIMAL128);
  }

  private static BigDecimal mass(Map<String, String> bar, BigDecimal mm) {
    String section = text(bar, "Section").toLowerCase(Locale.ROOT);
    String[] sides = section.replaceAll("[a-wyz\"]", "").split("x");
    BigDecimal area = BigDecimal.ONE;
    for (String side : sides) {
      boolean inch = section.contains("in") || section.contains("/");
      area = area.multiply(inch ? inches(side) : new BigDecimal(side.strip()));
    }
    return area.multiply(mm).multiply(new BigDecimal("0.00000785"));
  }

  private int shoes(Map<String, String> row, Map<String, String> work) {
    if (!text(row, "Shoes").isEmpty()) {
      return whole(text(row, "Shoes"));
    }
    for (String column : List.of("Size", "Shoe")) {
      int sum = 0;
      boolean all = !text(row, column).isEmpty();
      for (String part : text(row, column).split(";")) {
        boolean counted = part.contains(":");
        all = all && counted;
        sum += counted ? whole(part.substring(part.indexOf(':') + 1)) : 0;
      }
      if (all) {
        return sum;
      }
    }
    return text(work, "Shoes").isEmpty() ? 0 : whole(text(work, "Shoes"));
  }

  private static List<String> laidOut(String list, int shoes) {
    List<String> out = new ArrayList<>();
    String last = "";
    for (String part : list.split(";")) {
      String[] words = part.strip().split(":");
      last = words[0].strip();
      int count = words.length > 1 ? whole(words[1]) : shoes - out.size();
      for (int n = 0; n < count && out.size() < shoes; n++) {
        out.add(last);
      }
    }
    while (out.size() < shoes) {
      out.add(last);
    }
    return out;
  }

  private void use(LocalDate day, String shelf, BigDecimal pieces) {
    events.add(new Event(day, 1, shelf, pieces));
  }

  private String shelf(String item, String size) {
    String wanted = item.toLowerCase(Locale.ROOT);
    for (String name : List.of(wanted, wanted + "s", wanted.replaceAll("s$", ""))) {
      boolean known = false;
      for (Map<String, String> row : sheets.get("Materials")) {
        boolean same = text(row, "Item").toLowerCase(Locale.ROOT).equals(name);
        known = known || same;
        if (same && text(row, "Size").equalsIgnoreCase(size)) {
          return text(row, "Item") + "|" + text(row, "Size");
        }
      }
      if (known) {
        return rowsOf("Materials", "Item", name).get(0).get("Item") + "|";
      }
    }
    return item + "|" + size;
  }

  private List<Map<String, String>> materials(String shelf) {
    String item = shelf.substring(0, shelf.indexOf('|'));
    String size = shelf.substring(shelf.indexOf('|') + 1);
    return rowsOf("Materials", "Item", item).stream()
        .filter(row -> text(row, "Size").equals(size))
        .toList();
  }

  private Map<String, String> anyMaterial(String shelf) {
    List<Map<String, String>> rows = materials(shelf);
    return rows.isEmpty() ? Map.of() : rows.get(0);
  }

  private List<Map<String, String>> rowsOf(String sheet, String heading, String name) {
    return sheets.get(sheet).stream()
        .filter(row -> text(row, heading).equalsIgnoreCase(name))
        .toList();
  }

  private Map<String, String> inForce(List<Map<String, String>> rows, LocalDate day) {
    Map<String, String> best = null;
    LocalDate bestFrom = ALWAYS;
    for (Map<String, String> row : rows) {
      LocalDate from = text(row, "From").isEmpty() ? ALWAYS : date(text(row, "From"));
      if (!from.isAfter(day) && !from.isBefore(bestFrom)) {
        best = row;
        bestFrom = from;
      }
    }
    return best;
  }

  private LocalDate date(String text) {
    try {
      return text.matches("\\d{4}-.*") ? LocalDate.parse(text) : LocalDate.parse(text, textDate);
    } catch (java.time.DateTimeException unreadable) {
      return null;
    }
  }

  private static List<Map<String, String>> rows(Sheet sheet) {
    List<Map<String, String>> rows = new ArrayList<>();
    Map<Integer, String> headings = new HashMap<>();
    for (Row row : sheet) {
      Map<String, String> cells = new HashMap<>();
      for (Cell cell : row) {
        String text = text(cell);
        if (rows.isEmpty() && row.getRowNum() == 0) {
          headings.put(cell.getColumnIndex(), text);
        } else if (!text.isEmpty()) {
          cells.put(headings.getOrDefault(cell.getColumnIndex(), ""), text);
        }
      }
      if (!cells.isEmpty()) {
        rows.add(cells);
      }
    }
    return rows;
  }

  private static String text(Cell cell) {
    CellType type =
        cell.getCellType() == CellType.FORMULA
            ? cell.getCachedFormulaResultType()
            : cell.getCellType();
    if (type == CellType.NUMERIC) {
      return DateUtil.isCellDateFormatted(cell)
          ? cell.getLocalDateTimeCellValue().toLocalDate().toString()
          : BigDecimal.valueOf(cell.getNumericCellValue()).stripTrailingZeros().toPlainString();
    }
    return type == CellType.STRING
        ? cell.getStringCellValue().strip()
        : type == CellType.ERROR ? "#error" : "";
  }

  private static String text(Map<String, String> row, String heading) {
    return row.getOrDefault(heading, "");
  }

  private static BigDecimal number(String text) {
    return text.isEmpty() ? BigDecimal.ZERO : new BigDecimal(text);
  }

  private static int whole(String text) {
    return new BigDecimal(text.strip()).intValueExact();
  }
}
