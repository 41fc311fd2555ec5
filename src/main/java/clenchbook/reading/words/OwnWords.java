package clenchbook.reading.words;

import clenchbook.book.SheetKind;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The farrier's own words for sheets and headings, from the sheet Headings. */
public final class OwnWords {
  private final Map<String, SheetKind> sheets = new HashMap<>();
  private final Map<String, String> headings = new HashMap<>();

  /** Says that a sheet of this name is of this kind. */
  public void rename(String sheet, SheetKind kind) {
    sheets.put(SameWords.bare(sheet), kind);
  }

  /**
   * Says that a heading means another.
   *
   * @param sheet the sheet's own or the program's name; empty for every sheet
   */
  public void add(String sheet, String mine, String means) {
    headings.put(key(sheet, mine), means);
  }

  private static String key(String sheet, String mine) {
    return SameWords.bare(sheet) + "\n" + SameWords.bare(mine);
  }

  public Optional<SheetKind> kindOf(String sheet) {
    return Optional.ofNullable(sheets.get(SameWords.bare(sheet)));
  }

  /** What the farrier's heading means on a sheet, by the sheet's own name or the program's. */
  public Optional<String> meaning(String sheet, String title, String mine) {
    if (headings.isEmpty()) {
      return Optional.empty();
    }
    return Optional.ofNullable(headings.get(key(sheet, mine)))
        .or(() -> Optional.ofNullable(headings.get(key(title, mine))))
        .or(() -> Optional.ofNullable(headings.get(key("", mine))));
  }
}
