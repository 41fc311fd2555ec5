package clenchbook.matching.evidence;

import java.util.ArrayList;
import java.util.List;

/**
 * A text as runs of letters and runs of digits, in capitals, with what stands between them left
 * out: {@code Rg.2026-0001} is RG, 2026, 0001.
 */
public final class Segments {
  private static final int WIDEST_GAP = 3;
  private static final int MOST = 400;

  private final List<String> runs = new ArrayList<>();
  private final List<Boolean> nearNext = new ArrayList<>();

  private Segments() {}

  /**
   * Parts a text.
   *
   * @param text any text; beyond 400 runs it is not read
   * @return its runs
   */
  public static Segments of(String text) {
    Segments segments = new Segments();
    int at = 0;
    int end = 0;
    while (at < text.length() && segments.runs.size() < MOST) {
      char c = text.charAt(at);
      if (!Character.isLetterOrDigit(c)) {
        at++;
        continue;
      }
      boolean digit = isDigit(c);
      int from = at;
      while (at < text.length() && belongs(text.charAt(at), digit)) {
        at++;
      }
      if (!segments.runs.isEmpty()) {
        segments.nearNext.add(from - end <= WIDEST_GAP);
      }
      segments.runs.add(upper(text, from, at));
      end = at;
    }
    segments.nearNext.add(false);
    return segments;
  }

  private static boolean belongs(char c, boolean digits) {
    return digits ? isDigit(c) : Character.isLetter(c);
  }

  private static boolean isDigit(char c) {
    return (c >= '0' && c <= '9') || (!Character.isLetter(c) && Character.isDigit(c));
  }

  private static String upper(String text, int from, int to) {
    char[] run = new char[to - from];
    for (int at = from; at < to; at++) {
      char c = text.charAt(at);
      int digit = Character.isDigit(c) ? Character.digit(c, 10) : -1;
      run[at - from] = digit >= 0 ? (char) ('0' + digit) : Character.toUpperCase(c);
    }
    return new String(run);
  }

  int size() {
    return runs.size();
  }

  String run(int place) {
    return runs.get(place);
  }

  boolean digits(int place) {
    char first = runs.get(place).charAt(0);
    return first >= '0' && first <= '9';
  }

  /** Whether at most three marks stand between a run and the next. */
  boolean nearNext(int place) {
    return nearNext.get(place);
  }

  /**
   * All runs without anything between.
   *
   * @return letters and digits; empty for a text without
   */
  public String compact() {
    return String.join("", runs);
  }

  /** How many runs of digits there are. */
  int digitRuns() {
    int count = 0;
    for (int place = 0; place < runs.size(); place++) {
      count += digits(place) ? 1 : 0;
    }
    return count;
  }

  /** The runs with hyphens between, digits without leading noughts: {@code 2026-1}. */
  String loose() {
    StringBuilder loose = new StringBuilder();
    for (int place = 0; place < runs.size(); place++) {
      loose.append(place == 0 ? "" : "-").append(withoutNoughts(run(place)));
    }
    return loose.toString();
  }

  static String withoutNoughts(String run) {
    int first = 0;
    while (first < run.length() - 1 && run.charAt(first) == '0') {
      first++;
    }
    return run.substring(first);
  }
}
