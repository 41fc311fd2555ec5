package clenchbook.print.scripts;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Puts tables together to a file of a face (ISO/IEC 14496-22, 4.5). */
final class TrueTypeWriter {
  private static final int VERSION = 0x00010000;
  private static final int WHOLE = 0xB1B0AFBA;
  private static final int HEAD_ADJUSTMENT = 8;

  private final SortedMap<String, byte[]> tables;

  TrueTypeWriter(Map<String, byte[]> tables) {
    this.tables = new TreeMap<>(tables);
  }

  byte[] file() {
    int directory = 12 + 16 * tables.size();
    int size = directory + tables.values().stream().mapToInt(each -> padded(each.length)).sum();
    ByteBuffer file = ByteBuffer.allocate(size);
    int power = Integer.highestOneBit(tables.size());
    file.putInt(VERSION).putShort((short) tables.size());
    file.putShort((short) (16 * power));
    file.putShort((short) Integer.numberOfTrailingZeros(power));
    file.putShort((short) (16 * (tables.size() - power)));
    int at = directory;
    int head = 0;
    for (Map.Entry<String, byte[]> each : tables.entrySet()) {
      byte[] table = each.getValue();
      if (each.getKey().equals("head")) {
        head = at;
        ByteBuffer.wrap(table).putInt(HEAD_ADJUSTMENT, 0);
      }
      file.put(each.getKey().getBytes(StandardCharsets.US_ASCII));
      file.putInt(sum(table)).putInt(at).putInt(table.length);
      file.put(at, table);
      at += padded(table.length);
    }
    file.putInt(head + HEAD_ADJUSTMENT, WHOLE - sum(file.array()));
    return file.array();
  }

  private static int padded(int length) {
    return (length + 3) / 4 * 4;
  }

  private static int sum(byte[] bytes) {
    int sum = 0;
    for (int i = 0; i < bytes.length; i++) {
      sum += (bytes[i] & 0xFF) << (24 - 8 * (i % 4));
    }
    return sum;
  }
}
