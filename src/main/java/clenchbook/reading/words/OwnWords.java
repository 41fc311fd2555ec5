package clenchbook.reading.words;

import clenchbook.book.SheetKind;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The farrier's own words for sheets and headings, from the sheet or file Headings. */
public final class OwnWords {
  private static final String EVERY = "";
  private static final String VISITS = SheetKind.VISITS.title();

  private final Map<String, SheetKind> sheets = new HashMap<>();
  private final Map<String, OwnMeaning> headings = new HashMap<>();
  private final Map<String, String> names = new HashMap<>();

  /** Says that a sheet of this name is of this kind. */
  public void rename(String sheet, SheetKind kind) {
    sheets.put(SameWords.bare(sheet), kind);
  }

  /**
   * Says that a heading means another.
   *
   * @param sheet the sheet's own or the program's name; empty or a star for every sheet
   * @param mine the farrier's heading, or "(sheet name)"
   * @param means one of the program's headings, perhaps ", carried down" behind it; or "not read"
   */
  public void add(String sheet, String mine, String means) {
    if (OwnMeaning.isSheetName(mine)) {
      names.put(SameWords.bare(sheet), means);
    } else {
      headings.put(key(sheet, mine), OwnMeaning.of(means));
    }
  }

  private static String key(String sheet, String mine) {
    WordForms forms = WordForms.of(mine);
    return SameWords.bare(sheet)
        + "\n"
        + (forms.bare().isEmpty() ? mine.strip() : forms.writtenOut());
  }

  public Optional<SheetKind> kindOf(String sheet) {
    return Optional.ofNullable(sheets.get(SameWords.bare(sheet)));
  }

  /** What the farrier's heading means on a sheet, by the sheet's own name or the program's. */
  public Optional<OwnMeaning> meaning(String sheet, String title, String mine) {
    if (headings.isEmpty()) {
      return Optional.empty();
    }
    return Optional.ofNullable(headings.get(key(sheet, mine)))
        .or(() -> Optional.ofNullable(headings.get(key(title, mine))))
        .or(() -> Optional.ofNullable(headings.get(key(EVERY, mine))));
  }

  /**
   * The heading that a sheet's own name is given to. What holds for every sheet holds for sheets of
   * visits: the name of a price list is nobody's.
   */
  public Optional<String> sheetName(String sheet, String title) {
    if (names.isEmpty()) {
      return Optional.empty();
    }
    return Optional.ofNullable(names.get(SameWords.bare(sheet)))
        .or(() -> Optional.ofNullable(names.get(SameWords.bare(title))))
        .or(() -> Optional.ofNullable(title.equals(VISITS) ? names.get(EVERY) : null));
  }
}
