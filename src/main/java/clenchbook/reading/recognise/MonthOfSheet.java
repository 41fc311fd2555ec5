package clenchbook.reading.recognise;

import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.Row;
import clenchbook.reading.words.DateWords;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The month that days of a sheet belong to where they are numbers alone: the sheet's name or a
 * title gives it, or one of them the month and the other the year. What names two months is no
 * title of one.
 */
public final class MonthOfSheet {
  private static final Pattern WORD = Pattern.compile("\\p{L}+|\\d+");
  private static final Pattern NUMBERS =
      Pattern.compile("(?<!\\d)(?:(20\\d{2})[-./ ](\\d{1,2})|(\\d{1,2})[-./ ](20\\d{2}))(?!\\d)");

  private static final int LONGEST_TURN = 40;

  private final String sheet;
  private final List<Row> titles;
  private boolean looked;
  private Optional<YearMonth> found = Optional.empty();

  /**
   * The month of a sheet, looked for when it is first asked for.
   *
   * @param sheet its name
   * @param titles the rows above its headings
   */
  MonthOfSheet(String sheet, List<Row> titles) {
    this.sheet = sheet;
    this.titles = List.copyOf(titles);
  }

  /** The month; empty where nothing gives it. */
  public Optional<YearMonth> get() {
    if (!looked) {
      looked = true;
      found = of(sheet, titles);
    }
    return found;
  }

  /**
   * A title between the rows, from which on another month counts.
   *
   * @param month the month; empty where the title leaves its year open
   */
  public record Turn(Optional<YearMonth> month) {}

  /**
   * The month that a row among the days names in its first cell, no words being beside it.
   *
   * @param row the row
   * @param leftmost the table's first column
   * @param before the month of the rows above it
   * @return empty for a row that is no such title
   */
  public Optional<Turn> turn(Row row, int leftmost, Optional<YearMonth> before) {
    List<Cell> cells = row.cells();
    boolean titled =
        !cells.isEmpty()
            && cells.get(0).column() <= leftmost
            && cells.stream().skip(1).noneMatch(cell -> cell instanceof Cell.Text);
    if (titled && cells.size() == 1 && cells.get(0) instanceof Cell.Moment moment) {
      boolean month = !moment.format().showsDay();
      return month
          ? Optional.of(new Turn(Optional.of(YearMonth.from(moment.at()))))
          : Optional.empty();
    }
    return titled && cells.get(0) instanceof Cell.Text text
        ? turn(text.text(), before)
        : Optional.empty();
  }

  private Optional<Turn> turn(String text, Optional<YearMonth> before) {
    if (text.length() > LONGEST_TURN) {
      return Optional.empty();
    }
    Named named = Named.in(text);
    int figures = named.numbers ? 2 : named.year.isPresent() ? 1 : 0;
    boolean alone = WORD.matcher(text).results().filter(MonthOfSheet::isFigure).count() == figures;
    return named.month.isPresent() && !named.several && alone
        ? Optional.of(turn(named, before))
        : Optional.empty();
  }

  private static boolean isFigure(MatchResult word) {
    return Character.isDigit(word.group().charAt(0));
  }

  private Turn turn(Named named, Optional<YearMonth> before) {
    if (named.year.isPresent()) {
      return new Turn(named.both());
    }
    int month = named.month.get();
    Optional<Integer> year =
        before.isPresent() ? yearAfter(before.get(), month) : all(titles, sheet).year;
    return new Turn(year.map(known -> YearMonth.of(known, month)));
  }

  /** Books go forward or back from month to month; from January to December either may be. */
  private static Optional<Integer> yearAfter(YearMonth before, int month) {
    if (before.getMonthValue() == 12 && month == 1) {
      return Optional.of(before.getYear() + 1);
    }
    return before.getMonthValue() == 1 && month == 12
        ? Optional.empty()
        : Optional.of(before.getYear());
  }

  private static Named all(List<Row> titles, String sheet) {
    Named all = new Named();
    List<String> texts = new ArrayList<>(List.of(sheet));
    titles.forEach(row -> row.cells().forEach(cell -> texts.add(cell.shown())));
    for (String text : texts) {
      Named.in(text).year.ifPresent(all::year);
    }
    return all.several ? new Named() : all;
  }

  private static Optional<YearMonth> of(String sheet, List<Row> titles) {
    List<String> texts = new ArrayList<>(List.of(sheet));
    List<Optional<YearMonth>> days = new ArrayList<>();
    for (Row row : titles) {
      for (Cell cell : row.cells()) {
        if (cell instanceof Cell.Moment moment && !moment.format().showsDay()) {
          days.add(Optional.of(YearMonth.from(moment.at())));
        } else if (cell instanceof Cell.Text || cell instanceof Cell.Number) {
          texts.add(cell.shown());
        }
      }
    }
    for (String text : texts) {
      Optional<YearMonth> found = Named.in(text).both();
      if (found.isPresent()) {
        return found;
      }
    }
    return days.stream().findFirst().orElseGet(() -> together(texts));
  }

  /** The month from one text and the year from another, where there is one of each. */
  private static Optional<YearMonth> together(List<String> texts) {
    Named all = new Named();
    for (String text : texts) {
      Named one = Named.in(text);
      all.several |= one.several;
      one.month.ifPresent(all::month);
      one.year.ifPresent(all::year);
    }
    return all.both();
  }

  /** The month and the year that texts name. */
  private static final class Named {
    private Optional<Integer> month = Optional.empty();
    private Optional<Integer> year = Optional.empty();
    private boolean several;
    private boolean numbers;

    static Named in(String text) {
      Named found = new Named();
      if (text.length() > 120) {
        return found;
      }
      Matcher numbers = NUMBERS.matcher(text);
      if (numbers.find()) {
        found.numbers = true;
        boolean yearFirst = numbers.group(1) != null;
        found.year(Integer.parseInt(numbers.group(yearFirst ? 1 : 4)));
        found.month(Integer.parseInt(numbers.group(yearFirst ? 2 : 3)));
        return found;
      }
      Matcher words = WORD.matcher(text);
      while (words.find()) {
        found.take(words.group());
      }
      return found;
    }

    private void take(String word) {
      if (Character.isDigit(word.charAt(0))) {
        if (word.matches("(19|20)\\d{2}")) {
          year(Integer.parseInt(word));
        } else if (word.matches("\\d{2}") && month.isPresent() && year.isEmpty()) {
          year(2000 + Integer.parseInt(word));
        }
      } else {
        DateWords.monthByName(word).ifPresent(this::month);
      }
    }

    private void month(int number) {
      several |= number < 1 || number > 12 || month.filter(one -> one != number).isPresent();
      month = Optional.of(number);
    }

    private void year(int number) {
      several |= year.filter(one -> one != number).isPresent();
      year = Optional.of(number);
    }

    private Optional<YearMonth> both() {
      return several || month.isEmpty() || year.isEmpty()
          ? Optional.empty()
          : Optional.of(YearMonth.of(year.get(), month.get()));
    }
  }
}
