package clenchbook.bankfiles;

import clenchbook.texts.Message;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How the letters of a bank file are written: by its mark, else by what it declares, else UTF-8
 * where all its bytes are, else the code page of Windows.
 *
 * @param file the file
 * @param charset of its mark; empty without one
 */
record StatementText(Path file, Optional<Charset> charset) {
  private static final Charset WINDOWS = Charset.forName("windows-1252");
  private static final char MARK = '\uFEFF';
  private static final Pattern DECLARED =
      Pattern.compile("^\\s*<\\?xml[^>]*?encoding\\s*=\\s*[\"']([A-Za-z0-9._:-]{2,40})[\"']");
  private static final Pattern OFX_CHARSET = Pattern.compile("(?i)CHARSET:\\s*([A-Za-z0-9-]+)");
  private static final Pattern OFX_UTF8 = Pattern.compile("(?i)ENCODING:\\s*(UTF-?8|UNICODE)");

  static StatementText of(Path file, byte[] start) {
    int first = start.length > 1 ? (start[0] & 0xff) << 8 | (start[1] & 0xff) : 0;
    boolean utf8 = first == 0xefbb && start.length > 2 && (start[2] & 0xff) == 0xbf;
    Optional<Charset> marked =
        first == 0xfffe
            ? Optional.of(StandardCharsets.UTF_16LE)
            : first == 0xfeff
                ? Optional.of(StandardCharsets.UTF_16BE)
                : utf8 ? Optional.of(StandardCharsets.UTF_8) : Optional.empty();
    return new StatementText(file, marked);
  }

  /** The beginning as text, whatever letters beyond ASCII stand for, without the mark. */
  String decoded(byte[] start) {
    String text = new String(start, charset.orElse(StandardCharsets.ISO_8859_1));
    if (text.indexOf('\0') >= 0) {
      throw new UnreadableStatement(Message.of("bankfiles.kind.noText"));
    }
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  /** Opens it as lines, behind its mark. */
  BufferedReader open() throws IOException {
    Charset chosen = charset.orElse(isUtf8() ? StandardCharsets.UTF_8 : WINDOWS);
    return behindMark(chosen);
  }

  /** Opens OFX 1, whose header may name its letters. */
  BufferedReader openOfx(String head) throws IOException {
    if (charset.isPresent() || isUtf8() || OFX_UTF8.matcher(head).find()) {
      return behindMark(charset.orElse(StandardCharsets.UTF_8));
    }
    Matcher named = OFX_CHARSET.matcher(head);
    String name = named.find() ? named.group(1) : "1252";
    return behindMark(found(name.matches("\\d+") ? "windows-" + name : name).orElse(WINDOWS));
  }

  /** Opens XML; a byte that its encoding does not have ends the reading. */
  XmlPass openXml(String head) throws IOException {
    Matcher named = DECLARED.matcher(head);
    String name = named.find() ? named.group(1) : "UTF-8";
    Charset declared =
        found(name)
            .orElseThrow(() -> new UnreadableStatement(Message.of("bankfiles.encoding", name)));
    InputStream stream = Files.newInputStream(file);
    boolean plain = charset.isEmpty() && declared.equals(StandardCharsets.UTF_8);
    return plain ? XmlPass.open(stream) : XmlPass.open(strict(stream, charset.orElse(declared)));
  }

  private static BufferedReader strict(InputStream stream, Charset charset) throws IOException {
    return skipMark(
        new BufferedReader(
            new InputStreamReader(
                stream,
                charset
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)),
            1 << 16));
  }

  private BufferedReader behindMark(Charset chosen) throws IOException {
    return skipMark(
        new BufferedReader(new InputStreamReader(Files.newInputStream(file), chosen), 1 << 16));
  }

  private static BufferedReader skipMark(BufferedReader reader) throws IOException {
    reader.mark(1);
    if (reader.read() != MARK) {
      reader.reset();
    }
    return reader;
  }

  private static Optional<Charset> found(String name) {
    try {
      return Optional.of(Charset.forName(name));
    } catch (IllegalCharsetNameException | UnsupportedCharsetException unknown) {
      return Optional.empty();
    }
  }

  private boolean isUtf8() throws IOException {
    var decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    char[] part = new char[1 << 16];
    try (InputStreamReader reader = new InputStreamReader(Files.newInputStream(file), decoder)) {
      while (reader.read(part) >= 0) {
        // Only whether it decodes matters.
      }
      return true;
    } catch (CharacterCodingException otherCodePage) {
      return false;
    }
  }
}
