package clenchbook.printed;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * All numbers in the files of a run, each rounded half up to as many decimals as people read; a
 * printed number that is none of them is a fault.
 */
final class FigureUniverse {
  private static final int MOST_DECIMALS = 4;
  private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");
  private static final String MONTH =
      "(?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)[a-z]*\\.?";
  private static final Pattern DATE =
      Pattern.compile(
          "\\b\\d{4}-\\d{2}(?:-\\d{2})?\\b"
              + ("|\\b\\d{1,2} " + MONTH + "(?: \\d{4})?\\b")
              + ("|\\b" + MONTH + " \\d{1,2}(?:, \\d{4})?\\b")
              + ("|\\b" + MONTH + " \\d{4}\\b"));
  private static final Pattern HOURS =
      Pattern.compile("(\\d[\\d,]*) h(?: (\\d\\d)(?!\\d|[.,]\\d| h\\b))?(?![A-Za-z])");
  private static final Pattern MINUTES = Pattern.compile("(\\d+) min(?![A-Za-z])");
  private static final Pattern PRINTED = Pattern.compile("\\d[\\d,]*(?:\\.\\d+)?");

  private final Set<String> rounded = new HashSet<>();
  private final Set<Long> minutes = new HashSet<>();

  FigureUniverse(Path run) throws IOException {
    try (Stream<Path> files = Files.walk(run)) {
      for (Path file : files.filter(path -> path.toString().endsWith(".csv")).toList()) {
        Matcher number = NUMBER.matcher(Files.readString(file, StandardCharsets.UTF_8));
        while (number.find()) {
          add(new BigDecimal(number.group()));
        }
      }
    }
  }

  private void add(BigDecimal number) {
    for (int decimals = 0; decimals <= MOST_DECIMALS; decimals++) {
      rounded.add(number.setScale(decimals, RoundingMode.HALF_UP).toPlainString());
    }
    if (number.compareTo(BigDecimal.valueOf(1_000_000)) < 0) {
      minutes.add(minutes(number));
      minutes.add(number.setScale(0, RoundingMode.HALF_UP).longValue());
    }
  }

  /** Files have hours; pages have hours and minutes, from the file's digits. */
  private static long minutes(BigDecimal hours) {
    return hours.multiply(BigDecimal.valueOf(60)).setScale(0, RoundingMode.HALF_UP).longValue();
  }

  /** What of a text's numbers stands in no file, each with the words about it; dates apart. */
  List<String> missing(String text, List<String> fixed) {
    String rest = text;
    for (String words : fixed) {
      rest = rest.replace(words, " ");
    }
    List<String> missing = new ArrayList<>();
    rest = DATE.matcher(rest).replaceAll(" ");
    rest = strike(rest, HOURS, this::hasHours, missing);
    rest = strike(rest, MINUTES, found -> minutes.contains(whole(found.group(1))), missing);
    strike(rest, PRINTED, found -> rounded.contains(plain(found.group())), missing);
    return missing;
  }

  private boolean hasHours(MatchResult found) {
    String whole = found.group(1).replace(",", "");
    return found.group(2) == null
        ? rounded.contains(whole)
        : minutes.contains(60 * Long.parseLong(whole) + Long.parseLong(found.group(2)));
  }

  private static String plain(String printed) {
    return new BigDecimal(printed.replace(",", "")).toPlainString();
  }

  private static long whole(String digits) {
    return Long.parseLong(digits.replace(",", ""));
  }

  private static String strike(
      String text, Pattern pattern, Predicate<MatchResult> known, List<String> missing) {
    return pattern
        .matcher(text)
        .replaceAll(
            found -> {
              if (!known.test(found)) {
                int begin = Math.max(0, found.start() - 50);
                int end = Math.min(text.length(), found.end() + 30);
                missing.add(found.group() + " in: " + text.substring(begin, end));
              }
              return " ";
            });
  }
}
