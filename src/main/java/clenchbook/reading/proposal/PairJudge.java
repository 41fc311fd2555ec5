package clenchbook.reading.proposal;

import clenchbook.book.SheetKind;
import clenchbook.reading.words.ExpectedContents;
import clenchbook.reading.words.GuessWords;
import clenchbook.reading.words.LeftOut;
import clenchbook.reading.words.SheetWords;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Judges what speaks for each meaning of a column of one kind of sheet. */
final class PairJudge {
  private static final int RARE = -8;
  private static final int UNNAMED_RARE = -14;
  private static final int NEEDED = 9;
  private static final int NO_COLUMN = 26;
  private static final int OTHER_DAY = 50;
  private static final int MADE = 20;
  private static final int NO_PRICE = 40;
  private static final int OFTEN_BLANK = 30;
  private static final int UNNAMED_PAYMENT = 10;
  private static final int NOTHING = 50;
  private static final int MADE_MONEY = 55;
  private static final int UNNAMED_MONEY = 74;
  private static final int OTHER_MONEY = 80;

  private final SheetKind kind;
  private final SheetWords words;
  private final Map<String, List<Likeness.Word>> spelled = new LinkedHashMap<>();
  private final Map<Likeness.Word, String> written = new LinkedHashMap<>();

  private final Map<String, Map<String, Like>> likes = new HashMap<>();

  /** How much a heading is like the words of a meaning, and like which most. */
  private record Like(int points, Optional<String> word) {}

  PairJudge(SheetKind kind, SheetWords words) {
    this.kind = kind;
    this.words = words;
    words
        .spelled()
        .forEach(
            (word, heading) -> {
              Likeness.Word known = Likeness.Word.of(word);
              spelled.computeIfAbsent(heading, unused -> new ArrayList<>()).add(known);
              written.putIfAbsent(known, word);
            });
  }

  SheetWords words() {
    return words;
  }

  /** The meanings that are still free where others are known. */
  List<String> free(Set<String> taken) {
    return words.canonicalHeadings().stream()
        .filter(heading -> !taken.contains(heading))
        .filter(heading -> ExpectedContents.of(kind, heading).isPresent())
        .toList();
  }

  /** The points of a heading that likely means nothing that the sheet still lacks. */
  int none(Column column, Set<String> taken) {
    int like =
        taken.stream().mapToInt(each -> like(column.heading(), each).points()).max().orElse(0);
    boolean sum = GuessWords.isOtherMoney(column.heading()) && taken.contains("Charge");
    return Math.max(like >= Pair.LIKE ? like : 0, isOwn(column) || sum ? NO_COLUMN : 0);
  }

  /** Whether the program can do without a column by what it is called. */
  static boolean isOwn(Column column) {
    return LeftOut.isHarmless(column.heading())
        || LeftOut.isBalance(column.heading())
        || GuessWords.isNoColumn(column.heading());
  }

  private Like like(String heading, String meaning) {
    return likes
        .computeIfAbsent(heading, unused -> new HashMap<>())
        .computeIfAbsent(meaning, unused -> most(Likeness.Word.of(heading), meaning));
  }

  private Like most(Likeness.Word heading, String meaning) {
    Like most = new Like(0, Optional.empty());
    for (Likeness.Word known : spelled.getOrDefault(meaning, List.of())) {
      int points = Likeness.points(heading, known);
      if (points > most.points()) {
        most = new Like(points, Optional.ofNullable(written.get(known)));
      }
    }
    return most;
  }

  /** Whether the program's list does not say what the column holds. */
  boolean isUnexpected(String meaning) {
    return ExpectedContents.of(kind, meaning).isEmpty();
  }

  /** What speaks for a meaning. */
  Pair pair(Column column, Evidence evidence, String meaning, Set<String> taken) {
    ExpectedContents.Expected expected = ExpectedContents.of(kind, meaning).orElseThrow();
    Contents contents = Contents.of(expected.contents());
    Like like = like(column.heading(), meaning);
    int name = like.points();
    int fit = contents.points(evidence);
    int rare = name == 0 ? UNNAMED_RARE : RARE;
    int needed = isNeeded(meaning, taken) ? NEEDED : 0;
    int prior = (expected.rare() ? rare : 0) + needed;
    int against = against(column, evidence, contents, meaning, name);
    int points = name + fit + prior - against;
    int most = most(column, evidence, contents, name, fit);
    return new Pair(meaning, contents, name, like.word(), fit, points, needed, most);
  }

  private boolean isNeeded(String meaning, Set<String> taken) {
    boolean owner = kind == SheetKind.VISITS && meaning.equals("Owner");
    return owner || words.missing(taken).stream().anyMatch(need -> need.contains(meaning));
  }

  private int against(
      Column column, Evidence evidence, Contents contents, String meaning, int name) {
    boolean otherDay = contents == Contents.DAY && GuessWords.isOtherDay(column.heading());
    int against = otherDay && name < Likeness.SAME ? OTHER_DAY : 0;
    if (contents.isMoney() && evidence.sum()) {
      against += MADE;
    }
    if (contents.isMoney() && name < Likeness.SAME && GuessWords.isNoPrice(column.heading())) {
      against += NO_PRICE;
    }
    boolean once = kind == SheetKind.VISITS && evidence.leads();
    if (meaning.equals("Date") && evidence.filled() < 50 && !once) {
      against += OFTEN_BLANK;
    }
    boolean payment = meaning.equals("Paid") || meaning.equals("Opening balance");
    if (payment && name < Pair.LIKE) {
      against += UNNAMED_PAYMENT;
    }
    return against + (evidence.profile().isEmpty() ? 6 : 0);
  }

  private static int most(Column column, Evidence evidence, Contents contents, int name, int fit) {
    boolean strong = name >= Pair.STRONG;
    if (name < Pair.LIKE && fit <= 0) {
      return NOTHING;
    }
    if (contents.isMoney()) {
      boolean other = GuessWords.isOtherMoney(column.heading());
      return evidence.sum()
          ? MADE_MONEY
          : other ? OTHER_MONEY : strong ? 97 : name >= Pair.LIKE ? 88 : UNNAMED_MONEY;
    }
    if (contents == Contents.MINUTES && name < Pair.LIKE) {
      return UNNAMED_MONEY;
    }
    if (evidence.profile().filled() < 3) {
      return name >= 32 ? 92 : 78;
    }
    if (strong) {
      return fit > 0 || name >= 32 ? Sureness.MOST : 89;
    }
    return fit >= Pair.STRONG ? 93 : name >= Pair.LIKE && fit > 0 ? 89 : 84;
  }

  /** The headings that stand for known words of a row, the left one of two alike. */
  Set<String> taken(List<Column> columns) {
    Set<String> taken = new HashSet<>();
    columns.forEach(column -> taken.add(column.meaning()));
    taken.remove("");
    return taken;
  }
}
