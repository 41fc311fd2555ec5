package clenchbook.print.pdf;

import clenchbook.print.files.RefusedFile;
import clenchbook.print.fonts.Typefaces;
import clenchbook.texts.Message;
import clenchbook.texts.Told;
import java.io.IOException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What is wrong with a template, in one plain line; what the report library says of itself stays in
 * its own words.
 */
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
    return new TemplateException(
        Message.of("print.template.fault", template + ".jrxml", words(fault)), fault);
  }

  private static Message words(Exception fault) {
    Throwable root = fault;
    while (!(root instanceof Told) && root.getCause() != null) {
      root = root.getCause();
    }
    if (root instanceof Told told) {
      return told.message();
    }
    if (fault instanceof IOException trouble) {
      return RefusedFile.why(trouble);
    }
    return ofLibrary(root);
  }

  private static Message ofLibrary(Throwable root) {
    String said = String.valueOf(root.getMessage());
    Matcher font = FONT.matcher(said);
    if (font.find()) {
      return Message.of("print.template.noFont", font.group(1), Typefaces.TEXT, Typefaces.DISPLAY);
    }
    Matcher value = VALUE.matcher(said);
    if (value.find()) {
      Matcher line = LINE.matcher(said);
      return line.find()
          ? Message.of("print.template.noValueInLine", line.group(1), value.group(1))
          : Message.of("print.template.noValue", value.group(1));
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
    return Message.literal(all.length() <= LONGEST ? all : all.substring(0, LONGEST) + " …");
  }
}
