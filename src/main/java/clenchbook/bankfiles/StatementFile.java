package clenchbook.bankfiles;

import clenchbook.texts.Message;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Pattern;

/** Reads one bank file of any accepted format, known by its content, not by its name. */
public final class StatementFile {
  private static final int START = 8_192;
  private static final Pattern FIELD = Pattern.compile("(?m)^:(20|25P?|28C?|60[FM]|61):");

  private StatementFile() {}

  /**
   * Reads a file into an intake.
   *
   * @param file the file
   * @param shown how files and messages name it
   * @param hints what the book knows where the file leaves a choice
   * @param intake takes statements and entries
   * @throws UnreadableStatement when it is none of the formats, damaged or hostile
   * @throws IOException when the disk fails
   */
  public static void read(Path file, String shown, Hints hints, Intake intake) throws IOException {
    if (!Files.isRegularFile(file)) {
      throw new UnreadableStatement(
          Files.exists(file) ? Message.of("bankfiles.noFile") : Message.of("bankfiles.noSuchFile"));
    }
    try {
      byte[] start = start(file);
      refuseOthers(start);
      read(file, start, shown, hints, intake);
    } catch (UncheckedIOException e) {
      throw new UnreadableStatement(Message.of("bankfiles.breaksOff"), e);
    } catch (OutOfMemoryError tooLarge) {
      throw new UnreadableStatement(Message.of("bankfiles.tooLarge"));
    }
  }

  private static void read(Path file, byte[] start, String shown, Hints hints, Intake intake)
      throws IOException {
    StatementText text = StatementText.of(file, start);
    String head = text.decoded(start);
    String first = head.stripLeading();
    String upper = first.toUpperCase(Locale.ROOT);
    if (upper.startsWith("OFXHEADER:") || (upper.startsWith("<OFX>") && !first.startsWith("<?"))) {
      try (BufferedReader reader = text.openOfx(head)) {
        OfxSgmlReader.read(reader, new OfxStatements(shown, intake));
      }
    } else if (first.startsWith("<")) {
      try (XmlPass xml = text.openXml(head)) {
        readXml(xml, shown, intake);
      }
    } else if (FIELD.matcher(head).find()) {
      try (BufferedReader reader = text.open()) {
        new Mt940Reader(shown, intake).read(reader);
      }
    } else {
      BankCsvReader.read(text, shown, hints, intake);
    }
  }

  private static void readXml(XmlPass xml, String shown, Intake intake) throws IOException {
    while (xml.next()) {
      if (xml.starts("OFX")) {
        OfxXmlReader.read(xml, new OfxStatements(shown, intake));
        return;
      }
      if (xml.starts() && CamtReader.isMessage(xml.name())) {
        new CamtReader(xml, shown, intake).read();
        return;
      }
      if (xml.starts() && xml.depth() > 3) {
        break;
      }
    }
    throw new UnreadableStatement(Message.of("bankfiles.kind.otherXml"));
  }

  private static byte[] start(Path file) throws IOException {
    try (InputStream stream = Files.newInputStream(file)) {
      byte[] start = stream.readNBytes(START);
      if (start.length == 0) {
        throw new UnreadableStatement(Message.of("bankfiles.empty"));
      }
      return start;
    }
  }

  private static void refuseOthers(byte[] start) {
    if (begins(start, 'P', 'K', 3, 4)) {
      throw new UnreadableStatement(Message.of("bankfiles.kind.zip"));
    }
    if (begins(start, 0x1f, 0x8b)) {
      throw new UnreadableStatement(Message.of("bankfiles.kind.gzip"));
    }
    if (begins(start, '%', 'P', 'D', 'F')) {
      throw new UnreadableStatement(Message.of("bankfiles.kind.portable"));
    }
    if (begins(start, 0xd0, 0xcf, 0x11, 0xe0)) {
      throw new UnreadableStatement(Message.of("bankfiles.kind.oldSpreadsheet"));
    }
  }

  private static boolean begins(byte[] start, int... marks) {
    for (int at = 0; at < marks.length; at++) {
      if (at >= start.length || (start[at] & 0xff) != marks[at]) {
        return false;
      }
    }
    return true;
  }
}
