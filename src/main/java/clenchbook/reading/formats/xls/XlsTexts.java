package clenchbook.reading.formats.xls;

import java.io.UnsupportedEncodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.apache.poi.hssf.record.RecordInputStream;
import org.apache.poi.hssf.record.SSTRecord;
import org.apache.poi.hssf.record.common.UnicodeString;
import org.apache.poi.util.CodePageUtil;

/** How a binary book writes its texts: from 1997 on in Unicode, before in its code page. */
final class XlsTexts {
  private static final int VERSION_8 = 0x0600;
  private static final int WIDE = 1;
  private static final int MAC = 0x8000;
  private static final int WINDOWS = 0x8001;

  private boolean unicode = true;
  private Charset narrow = Charset.forName("windows-1252");
  private Optional<SSTRecord> shared = Optional.empty();

  void version(int version) {
    unicode = version >= VERSION_8;
  }

  /** Takes the number of a code page; one that nobody knows leaves the usual one of the West. */
  void codePage(int number) {
    try {
      String name =
          number == WINDOWS
              ? "windows-1252"
              : number == MAC ? "x-MacRoman" : CodePageUtil.codepageToEncoding(number, true);
      narrow = Charset.forName(name);
    } catch (UnsupportedEncodingException | IllegalArgumentException unknown) {
      narrow = Charset.forName("windows-1252");
    }
  }

  void shared(SSTRecord texts) {
    shared = Optional.of(texts);
  }

  /** The shared text of a number; empty where there is none of that number. */
  Optional<String> shared(int index) {
    return shared
        .filter(texts -> index >= 0 && index < texts.getNumUniqueStrings())
        .map(texts -> texts.getString(index).getString());
  }

  /** A text with two bytes for its length, which may go on in records that follow. */
  String longText(RecordInputStream in) {
    return unicode ? new UnicodeString(in).getString() : narrow(in, in.readUShort());
  }

  /** A text with one byte for its length. */
  String shortText(RecordInputStream in) {
    int length = in.readUByte();
    return unicode ? unicode(in, length) : narrow(in, length);
  }

  /** The code of a format, which is no longer than its record; older ones have a short length. */
  String formatCode(RecordInputStream in) {
    return unicode ? unicode(in, in.readUShort()) : shortText(in);
  }

  /** As much of a text as its record holds. */
  private static String unicode(RecordInputStream in, int length) {
    boolean wide = (in.readUByte() & WIDE) != 0;
    Charset characters = wide ? StandardCharsets.UTF_16LE : StandardCharsets.ISO_8859_1;
    return new String(bytes(in, wide ? 2 * length : length), characters);
  }

  private String narrow(RecordInputStream in, int length) {
    return new String(bytes(in, length), narrow);
  }

  private static byte[] bytes(RecordInputStream in, int length) {
    byte[] bytes = new byte[Math.min(length, in.remaining())];
    in.readFully(bytes);
    return bytes;
  }
}
