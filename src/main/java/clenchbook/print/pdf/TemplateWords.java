package clenchbook.print.pdf;

import clenchbook.print.fonts.Typefaces;
import java.io.IOException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What the report library finds wrong with a template, in one plain line. */
final class TemplateWords {
  private static final Pattern FONT = Pattern.compile("Font \"([^\"]*)\" is not available");
  private static final Pattern VALUE = Pattern.compile("from String \"([^\"]*)\"");
  private static final Pattern LINE = Pattern.compile("\\bline: (\\d+)");

  /** What speaks of the library's own classes and streams. */
  private static final Pattern INSIDE = Pattern.compile("(?s) \\(class .*|\\s*at \\[Source.*");

  private static final Pattern COUNT = Pattern.compile("^\\d+\\.\\s+");

  private static final int MOST_NAMED = 3;
  private static final int LONGEST = 300;

  private TemplateWords() {}

  /**
   * Says it.
   *
   * @param template the template's name without its ending
   * @param fault what the library threw
   * @return the fault, its message beginning with the file's name
   */
  static TemplateException of(String template, Exception fault) {
    return new TemplateException(template + ".jrxml: " + words(fault), fault);
  }

  private static String words(Exception fault) {
    if (fault instanceof IOException) {
      return String.valueOf(fault.getMessage());
    }
    Throwable root = fault;
    while (root.getCause() != null) {
      root = root.getCause();
    }
    String said = String.valueOf(root.getMessage());
    Matcher font = FONT.matcher(said);
    if (font.find()) {
      return "there is no font '"
          + font.group(1)
          + "'; the program has "
          + Typefaces.TEXT
          + " and "
          + Typefaces.DISPLAY;
    }
    Matcher value = VALUE.matcher(said);
    if (value.find()) {
      Matcher line = LINE.matcher(said);
      return (line.find() ? "line " + line.group(1) + ": " : "")
          + "'"
          + value.group(1)
          + "' is no value that can stand there";
    }
    String all =
        INSIDE
            .matcher(said)
            .replaceAll("")
            .lines()
            .map(String::strip)
            .filter(each -> !each.isEmpty() && !each.startsWith("Report design not valid"))
            .map(each -> COUNT.matcher(each).replaceFirst(""))
            .limit(MOST_NAMED)
            .collect(Collectors.joining("; "));
    return all.length() <= LONGEST ? all : all.substring(0, LONGEST) + " …";
  }
}
