package clenchbook.bankfiles;

import clenchbook.texts.Message;
import java.io.IOException;
import java.io.Reader;
import java.util.Locale;

/**
 * Reads OFX 1, which is SGML: a value ends where the next tag begins, and only aggregates must end
 * with a tag. Three entities exist and are replaced; others stay as written.
 */
final class OfxSgmlReader {
  private static final int LONGEST_TAG = 60;

  private final Reader reader;
  private final OfxStatements statements;
  private int at;

  private OfxSgmlReader(Reader reader, OfxStatements statements) {
    this.reader = reader;
    this.statements = statements;
  }

  static void read(Reader reader, OfxStatements statements) throws IOException {
    new OfxSgmlReader(reader, statements).read();
  }

  private void read() throws IOException {
    at = reader.read();
    text();
    while (at >= 0) {
      String tag = tag();
      String value = text();
      if (tag.startsWith("!") || tag.startsWith("?")) {
        refuse(tag);
      } else if (tag.startsWith("/")) {
        if (OfxStatements.isAggregate(tag.substring(1))) {
          statements.end(tag.substring(1));
        }
      } else if (OfxStatements.isAggregate(tag)) {
        statements.begin(tag);
      } else {
        statements.value(tag, unescaped(value));
      }
    }
    statements.done();
  }

  private static void refuse(String tag) {
    if (tag.startsWith("!DOCTYPE") || tag.startsWith("!ENTITY")) {
      throw new UnreadableStatement(Message.of("bankfiles.refused.entity"));
    }
  }

  /** From behind {@code <} to {@code >}, in capitals; the reader is at {@code <}. */
  private String tag() throws IOException {
    StringBuilder tag = new StringBuilder();
    at = reader.read();
    while (at >= 0 && at != '>') {
      if (tag.length() >= LONGEST_TAG) {
        throw new UnreadableStatement(Message.of("bankfiles.damaged.tag"));
      }
      tag.append((char) at);
      at = reader.read();
    }
    if (at < 0) {
      throw new UnreadableStatement(Message.of("bankfiles.cut.tag"));
    }
    at = reader.read();
    return tag.toString().strip().toUpperCase(Locale.ROOT);
  }

  /** Up to the next {@code <}, cut where it is longer than any value. */
  private String text() throws IOException {
    StringBuilder text = new StringBuilder();
    while (at >= 0 && at != '<') {
      if (text.length() < Texts.MOST) {
        text.append((char) at);
      }
      at = reader.read();
    }
    return text.toString();
  }

  private static String unescaped(String value) {
    if (value.indexOf('&') < 0) {
      return value;
    }
    return value
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&nbsp;", " ")
        .replace("&amp;", "&");
  }
}
