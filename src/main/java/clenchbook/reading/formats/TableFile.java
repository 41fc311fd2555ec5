package clenchbook.reading.formats;

import clenchbook.reading.formats.cells.TableSource;
import clenchbook.reading.formats.cells.UnreadableWorkbook;
import clenchbook.reading.formats.csv.CsvSource;
import clenchbook.reading.formats.ods.OdsSource;
import clenchbook.reading.formats.parts.Parts;
import clenchbook.reading.formats.parts.ZipParts;
import clenchbook.reading.formats.xls.OleFile;
import clenchbook.reading.formats.xlsx.XlsxSource;
import clenchbook.texts.Message;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;

/** Opens a workbook of any accepted format, known by its content, not by its name. */
public final class TableFile {
  private static final int OLE = 0xD0CF11E0;
  private static final int ZIP = 0x504B0304;

  /** How the single sheets of Excel 2, 3 and 4 begin, and what some programs write without more. */
  private static final Set<Integer> OLD_SHEETS =
      Set.of(0x0900_0400, 0x0902_0600, 0x0904_0600, 0x0908_0800, 0x0908_1000);

  private TableFile() {}

  /**
   * Opens a workbook for reading.
   *
   * @param file a workbook, a CSV file, or a folder of CSV files
   * @param password for an encrypted one; empty when none is known
   * @throws UnreadableWorkbook when it is none, with the reason in one line
   */
  public static TableSource open(Path file, Optional<String> password) throws IOException {
    if (!Files.exists(file)) {
      throw new UnreadableWorkbook(Message.of("formats.notThere"));
    }
    if (!Files.isRegularFile(file) && !Files.isDirectory(file)) {
      throw new UnreadableWorkbook(Message.of("formats.noFile"));
    }
    return Files.isDirectory(file) ? new CsvSource(file) : byContent(file, password);
  }

  private static TableSource byContent(Path file, Optional<String> password) throws IOException {
    int first = firstFourBytes(file);
    if (first == ZIP) {
      return zipped(file);
    }
    if (first == OLE) {
      return OleFile.open(file, password);
    }
    if (OLD_SHEETS.contains(first)) {
      throw new UnreadableWorkbook(Message.of("formats.excel4"));
    }
    if (CsvSource.isOne(file)) {
      return CsvSource.one(file);
    }
    throw new UnreadableWorkbook(Message.of("formats.noWorkbook"));
  }

  private static int firstFourBytes(Path file) throws IOException {
    byte[] start = new byte[4];
    try (InputStream stream = Files.newInputStream(file)) {
      int got = stream.readNBytes(start, 0, 4);
      if (got == 0) {
        throw new UnreadableWorkbook(Message.of("formats.empty"));
      }
    }
    return ByteBuffer.wrap(start).getInt();
  }

  private static TableSource zipped(Path file) throws IOException {
    Parts parts;
    try {
      parts = new ZipParts(file);
    } catch (UnreadableWorkbook refusal) {
      throw refusal;
    } catch (IOException | IllegalArgumentException damaged) {
      throw new UnreadableWorkbook(Message.of("formats.damaged"), damaged);
    }
    return OdsSource.is(parts) ? new OdsSource(parts) : new XlsxSource(parts);
  }
}
