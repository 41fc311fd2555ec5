package clenchbook.delivery.message;

import java.util.List;
import java.util.stream.Collectors;

/**
 * What a mail says: its subject and its paragraphs, once as plain text and once as HTML.
 *
 * @param language the language it is written in, a code such as {@code de}
 * @param subject one line
 * @param paragraphs in the order they are read; a line break inside one is kept
 */
public record MailText(String language, String subject, List<String> paragraphs) {
  private static final String PAGE =
      "<!DOCTYPE html>\r\n"
          + "<html lang=\"%s\">\r\n"
          + "<head><meta charset=\"utf-8\"><title>%s</title></head>\r\n"
          + "<body style=\"font-family: sans-serif; line-height: 1.45; max-width: 40em\">\r\n"
          + "%s\r\n"
          + "</body>\r\n"
          + "</html>\r\n";

  /**
   * @throws IllegalArgumentException where the subject could not stand in a header
   */
  public MailText {
    HeaderText.requireSafe("the language", language);
    HeaderText.requireSafe("the subject", subject);
    paragraphs = List.copyOf(paragraphs);
  }

  /** The paragraphs with an empty line between them, lines ended by CR LF. */
  public String plain() {
    return paragraphs.stream()
        .map(paragraph -> paragraph.lines().collect(Collectors.joining("\r\n")))
        .collect(Collectors.joining("\r\n\r\n", "", "\r\n"));
  }

  /** A page with one paragraph each; names and amounts are escaped, https addresses are links. */
  public String html() {
    String body =
        paragraphs.stream().map(MailText::htmlParagraph).collect(Collectors.joining("\r\n"));
    return PAGE.formatted(escaped(language), escaped(subject), body);
  }

  private static String htmlParagraph(String paragraph) {
    return paragraph
        .lines()
        .map(MailText::htmlLine)
        .collect(Collectors.joining("<br>\r\n", "<p>", "</p>"));
  }

  private static String htmlLine(String line) {
    return escaped(line).replaceAll("https://[^\\s\"'<>]+", "<a href=\"$0\">$0</a>");
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }
}
