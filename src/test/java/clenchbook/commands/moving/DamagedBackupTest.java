package clenchbook.commands.moving;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.backup.Contents;
import clenchbook.backup.PackedFile;
import clenchbook.backup.Role;
import clenchbook.backup.UnsoundBackup;
import clenchbook.commands.opening.RunFault;
import clenchbook.commands.opening.Terminal;
import clenchbook.print.files.Tree;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.zip.CRC32;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is damaged or made up in a backup is noticed in one line, and nothing is written. */
class DamagedBackupTest {
  private static final List<PackedFile> NEIGHBOURS =
      List.of(
          new PackedFile(Role.REGISTER, "b.register.db"),
          new PackedFile(Role.HEADINGS, "b.headings.csv"),
          new PackedFile(Role.TEMPLATES, "report-templates/invoice.jrxml"),
          new PackedFile(Role.TEMPLATES, "report-templates/mail.de.properties"),
          new PackedFile(Role.RATES, "rates/au/year.csv"),
          new PackedFile(Role.RATES, "rates/uk/mileage.csv"),
          new PackedFile(Role.LOGO, "Bilder/Hufe & Söhne.png"),
          new PackedFile(Role.WAITING, "b reports/payments/payments-to-add.csv"));

  @TempDir Path folder;

  private Path zip() {
    return folder.resolve("b.zip");
  }

  private String refused() throws IOException {
    Path to = folder.resolve("new/place");
    PrintStream nowhere =
        new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
    RestoreRun run = new RestoreRun(zip(), to, new Terminal(nowhere, nowhere, false));
    RunFault fault = assertThrows(RunFault.class, run::run);
    assertFalse(fault.getMessage().contains("\n"), fault.getMessage());
    assertTrue(fault.getMessage().endsWith("; nothing was written"), fault.getMessage());
    assertFalse(Files.exists(to.getParent()), "not even a folder was made");
    return fault.getMessage();
  }

  private void restored(Map<String, byte[]> files) throws IOException {
    Path to = folder.resolve("whole");
    PrintStream nowhere =
        new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
    assertEquals(0, new RestoreRun(zip(), to, new Terminal(nowhere, nowhere, false)).run());
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      assertTrue(Arrays.equals(file.getValue(), Files.readAllBytes(to.resolve(file.getKey()))));
    }
    Tree.remove(to);
  }

  /** Random neighbours with random bytes, packed as backup packs them. */
  private Map<String, byte[]> packed(Random chance) throws IOException, UnsoundBackup {
    List<PackedFile> found = new ArrayList<>(List.of(new PackedFile(Role.BOOK, "b.xlsx")));
    NEIGHBOURS.stream().filter(each -> chance.nextBoolean()).forEach(found::add);
    Path source = folder.resolve("source");
    Tree.remove(source);
    Map<String, byte[]> contents = new LinkedHashMap<>();
    Map<String, Path> files = new LinkedHashMap<>();
    for (PackedFile file : Contents.of(found)) {
      byte[] bytes = new byte[chance.nextInt(3000)];
      chance.nextBytes(bytes);
      Path path = source.resolve(file.name());
      Files.createDirectories(path.getParent());
      contents.put(file.name(), bytes);
      files.put(file.name(), Files.write(path, bytes));
    }
    PackingFile.write(zip(), "b.xlsx", files);
    return contents;
  }

  @Test
  void a_damaged_byte_anywhere_is_noticed_whatever_lay_beside_the_book()
      throws IOException, UnsoundBackup {
    for (int seed = 1; seed <= 25; seed++) {
      Random chance = new Random(seed);
      restored(packed(chance));
      byte[] whole = Files.readAllBytes(zip());
      for (int round = 0; round < 60; round++) {
        Files.write(zip(), damaged(whole, chance));
        refused();
      }
    }
  }

  /** One bit, a run of bytes, a cut, or bytes too many. */
  private static byte[] damaged(byte[] whole, Random chance) {
    byte[] bytes = whole.clone();
    int at = chance.nextInt(bytes.length);
    switch (chance.nextInt(4)) {
      case 0 -> bytes[at] ^= (byte) (1 << chance.nextInt(8));
      case 1 -> Arrays.fill(bytes, at, Math.min(bytes.length, at + 20), (byte) (bytes[at] + 1));
      case 2 -> bytes = Arrays.copyOf(bytes, at);
      default -> bytes = Arrays.copyOf(bytes, bytes.length + 1 + chance.nextInt(100));
    }
    return bytes;
  }

  @Test
  void every_single_byte_of_a_small_backup_is_watched() throws IOException, UnsoundBackup {
    Path book = Files.writeString(folder.resolve("b.csv"), "Date,Horse,Work,Owner\n");
    PackingFile.write(zip(), "b.csv", Map.of("b.csv", book));
    byte[] whole = Files.readAllBytes(zip());
    for (int at = 0; at < whole.length; at++) {
      byte[] bytes = whole.clone();
      bytes[at] ^= 0x20;
      Files.write(zip(), bytes);
      refused();
    }
  }

  // Made up: each bears a seal that is right, as whoever makes one up would see to.

  private static final String BOOK = "Date,Horse,Work,Owner\n";

  private interface Filling {
    void into(ZipArchiveOutputStream zip) throws IOException;
  }

  private String madeUp(String list, Filling filling) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipArchiveOutputStream zip = new ZipArchiveOutputStream(bytes)) {
      zip.setComment("0".repeat(64));
      stored(zip, "backup.sha256", list);
      filling.into(zip);
    }
    Files.write(zip(), sealed(bytes.toByteArray()));
    return refused();
  }

  private static byte[] sealed(byte[] zip) {
    byte[] seal = sha256(Arrays.copyOf(zip, zip.length - 64)).getBytes(StandardCharsets.US_ASCII);
    System.arraycopy(seal, 0, zip, zip.length - 64, 64);
    return zip;
  }

  private static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String list(String... names) {
    StringBuilder text = new StringBuilder("# Clenchbook backup 1\n# book b.csv\n");
    for (String name : names) {
      text.append(sha256(BOOK.getBytes(StandardCharsets.UTF_8))).append("  ").append(name);
      text.append('\n');
    }
    return text.toString();
  }

  private static void stored(ZipArchiveOutputStream zip, String name, String text)
      throws IOException {
    put(zip, new ZipArchiveEntry(name), text);
  }

  private static void put(ZipArchiveOutputStream zip, ZipArchiveEntry entry, String text)
      throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    CRC32 crc = new CRC32();
    crc.update(bytes);
    entry.setMethod(ZipArchiveEntry.STORED);
    entry.setSize(bytes.length);
    entry.setCrc(crc.getValue());
    zip.putArchiveEntry(entry);
    zip.write(bytes);
    zip.closeArchiveEntry();
  }

  private static void says(String expected, String line) {
    assertTrue(line.contains(expected), line);
  }

  @Test
  void names_that_lead_elsewhere_are_refused() throws IOException {
    for (String name : List.of("../b.csv", "/tmp/b.csv", "C:\\b.csv", "a/../../b", "..\\b")) {
      says(
          "the name ",
          madeUp(
              list("b.csv", name),
              zip -> {
                stored(zip, "b.csv", BOOK);
                stored(zip, name, BOOK);
              }));
    }
  }

  @Test
  void repeats_and_clashes_are_refused() throws IOException {
    says(
        "twice",
        madeUp(
            list("b.csv"),
            zip -> {
              stored(zip, "b.csv", BOOK);
              stored(zip, "b.csv", BOOK);
            }));
    says(
        "two files",
        madeUp(
            list("b.csv", "B.csv"),
            zip -> {
              stored(zip, "b.csv", BOOK);
              stored(zip, "B.csv", BOOK);
            }));
    says(
        "two files",
        madeUp(
            list("b.csv", "b.csv/c"),
            zip -> {
              stored(zip, "b.csv", BOOK);
              stored(zip, "b.csv/c", BOOK);
            }));
  }

  @Test
  void links_and_folders_are_refused() throws IOException {
    says(
        "link",
        madeUp(
            list("b.csv"),
            zip -> {
              ZipArchiveEntry link = new ZipArchiveEntry("b.csv");
              link.setUnixMode(0120777);
              put(zip, link, BOOK);
            }));
    says(
        "folder",
        madeUp(
            list("b.csv"),
            zip -> {
              stored(zip, "b.csv", BOOK);
              stored(zip, "rates/", "");
            }));
  }

  @Test
  void a_bomb_is_refused_before_it_is_unpacked() throws IOException {
    says(
        "packed in a way",
        madeUp(
            list("b.csv"),
            zip -> {
              zip.putArchiveEntry(new ZipArchiveEntry("b.csv"));
              zip.write(new byte[50_000_000]);
              zip.closeArchiveEntry();
            }));
  }

  @Test
  void what_the_list_does_not_name_and_what_it_lacks_are_refused() throws IOException {
    says(
        "doesn't name",
        madeUp(
            list("b.csv"),
            zip -> {
              stored(zip, "b.csv", BOOK);
              stored(zip, "evil.register.db", BOOK);
            }));
    says("lacks c.csv", madeUp(list("b.csv", "c.csv"), zip -> stored(zip, "b.csv", BOOK)));
    says("not as it was packed", madeUp(list("b.csv"), zip -> stored(zip, "b.csv", "Other\n")));
    says("list", madeUp("no list\n", zip -> stored(zip, "b.csv", BOOK)));
  }

  @Test
  void a_seal_around_no_zip_is_refused() throws IOException {
    Files.write(zip(), sealed(("no zip at all" + "0".repeat(64)).getBytes(StandardCharsets.UTF_8)));
    says("can't be unpacked", refused());
    Files.writeString(zip(), "");
    says("no backup", refused());
  }
}
