package clenchbook.jobs;

import clenchbook.book.Counted;
import clenchbook.book.SourceRow;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** A row of a {@link WrittenBook}: its cells by their headings. */
public record WrittenRow(SourceRow source, Map<String, String> cells) {

  public WrittenRow(String sheet, int sheetIndex, int before, String text) {
    this(new SourceRow(sheet, sheetIndex, before + 2, Map.of()), cells(text));
  }

  private static Map<String, String> cells(String text) {
    Map<String, String> cells = new HashMap<>();
    for (String cell : text.split(",")) {
      int colon = cell.indexOf(':');
      cells.put(cell.substring(0, colon).strip(), cell.substring(colon + 1).strip());
    }
    return cells;
  }

  public String text(String heading) {
    return cells.getOrDefault(heading, "");
  }

  private Optional<String> find(String heading) {
    return Optional.of(text(heading)).filter(value -> !value.isEmpty());
  }

  public Optional<BigDecimal> number(String heading) {
    return find(heading).map(BigDecimal::new);
  }

  public Optional<Integer> whole(String heading) {
    return find(heading).map(Integer::valueOf);
  }

  public Optional<LocalDate> day(String heading) {
    return find(heading).map(LocalDate::parse);
  }

  public <E extends Enum<E>> Optional<E> choice(Class<E> type, String heading) {
    return find(heading)
        .map(
            v ->
                Enum.valueOf(type, v.toUpperCase(Locale.ROOT).replace(' ', '_').replace('-', '_')));
  }

  public List<Counted> list(String heading) {
    List<Counted> list = new ArrayList<>();
    for (String part : text(heading).split(";")) {
      String[] words = part.strip().split(":");
      if (!words[0].isEmpty()) {
        Optional<Integer> count =
            words.length < 2 ? Optional.empty() : Optional.of(Integer.valueOf(words[1].strip()));
        list.add(new Counted(words[0].strip(), count));
      }
    }
    return list;
  }
}
