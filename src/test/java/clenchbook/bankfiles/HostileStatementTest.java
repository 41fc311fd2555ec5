package clenchbook.bankfiles;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.texts.InEnglish;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Files that are damaged or meant to do harm: one line each, or read in bounded memory. */
class HostileStatementTest {
  private static final String CAMT =
      "<?xml version=\"1.0\" encoding=\"UTF-8\"?>%s<Document><BkToCstmrStmt><Stmt><Acct/><Ntry><Amt"
          + " Ccy=\"EUR\">1</Amt><CdtDbtInd>CRDT</CdtDbtInd><BookgDt><Dt>2026-11-01</Dt></BookgDt>"
          + "<AddtlNtryInf>%s</AddtlNtryInf></Ntry></Stmt></BkToCstmrStmt></Document>";

  @TempDir Path folder;

  private Intake read(byte[] bytes) throws IOException {
    Path file = Files.write(folder.resolve("file"), bytes);
    Intake intake = new Intake();
    StatementFile.read(file, "file", new Hints(false, "EUR"), intake);
    return intake;
  }

  private String refused(byte[] bytes) {
    String why =
        InEnglish.said(assertThrows(UnreadableStatement.class, () -> read(bytes)).message());
    assertEquals(1, why.lines().count(), why);
    return why;
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void entities_are_refused_before_any_is_expanded() {
    String bomb =
        "<!DOCTYPE Document [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;\">]>";
    assertTrue(refused(utf8(CAMT.formatted(bomb, "&b;"))).contains("refused"));
    String file = "<!DOCTYPE Document [<!ENTITY a SYSTEM \"file:///etc/passwd\">]>";
    assertTrue(refused(utf8(CAMT.formatted(file, "&a;"))).contains("refused"));
    refused(utf8(CAMT.formatted("", "&unknown;")));
    String ofx = "OFXHEADER:100\n\n<!DOCTYPE OFX [<!ENTITY a \"b\">]><OFX></OFX>";
    assertTrue(refused(utf8(ofx)).contains("refused"));
  }

  @Test
  void deep_nesting_is_refused() {
    refused(utf8("<Document><BkToCstmrStmt><Stmt>" + "<a>".repeat(100_000)));
  }

  @Test
  void bytes_that_the_named_encoding_lacks_are_refused() {
    byte[] bytes = utf8(CAMT.formatted("", "M\u00fcller"));
    byte[] latin = CAMT.formatted("", "M\u00fcller").getBytes(StandardCharsets.ISO_8859_1);
    refused(latin);
    assertEquals(bytes.length, latin.length + 1);
  }

  @Test
  void other_kinds_of_file_are_named() {
    Map<String, byte[]> kinds =
        Map.of(
            "packed (zip)", new byte[] {'P', 'K', 3, 4, 0, 0},
            "gzip", new byte[] {0x1f, (byte) 0x8b, 8, 0},
            "PDF", utf8("%PDF-1.7"),
            "no text", new byte[] {1, 0, 2, 0, 3},
            "none of camt", utf8("Dear customer,\nhello\n"));
    kinds.forEach((word, bytes) -> assertTrue(refused(bytes).contains(word), word));
    assertTrue(refused(new byte[0]).contains("empty"));
  }

  @ParameterizedTest
  @EnumSource(
      value = WrittenStatement.class,
      names = {"CAMT_053_V8", "MT940_NUMBERED", "OFX_1", "OFX_2"})
  void a_file_cut_anywhere_is_refused_in_one_line(WrittenStatement format) throws IOException {
    byte[] whole = format.bytes(HostileStatementMonth.month(20));
    Random random = new Random(7);
    for (int index = 0; index < 60; index++) {
      int length = whole.length * 2 / 10 + random.nextInt(whole.length * 7 / 10);
      byte[] cut = java.util.Arrays.copyOf(whole, length);
      refused(cut);
    }
  }

  @Test
  void a_row_cut_short_and_an_open_quotation_are_refused() {
    String head = "Date,Name,Description,Amount\n01/11/2026,A,b,1.00\n";
    assertTrue(refused(utf8(head + "02/11/2026,A")).contains("row 3"));
    refused(utf8(head + "02/11/2026,A,\"b" + "x".repeat(3_000_000)));
  }

  @Test
  void a_mutated_byte_never_ends_in_an_unknown_exception() throws IOException {
    Random random = new Random(11);
    for (WrittenStatement format : WrittenStatement.values()) {
      byte[] whole = format.bytes(HostileStatementMonth.month(10));
      for (int index = 0; index < 150; index++) {
        byte[] changed = whole.clone();
        for (int time = 0; time < 3; time++) {
          changed[random.nextInt(changed.length)] = (byte) random.nextInt(256);
        }
        try {
          read(changed);
        } catch (UnreadableStatement expected) {
          assertEquals(1, InEnglish.said(expected.message()).lines().count());
        }
      }
    }
  }

  @Test
  void an_intake_takes_no_more_than_it_may() {
    Intake small = new Intake(3, Long.MAX_VALUE);
    Path file = folder.resolve("file");
    assertThrows(
        UnreadableStatement.class,
        () -> {
          Files.write(file, WrittenStatement.MT940_TEXT.bytes(HostileStatementMonth.month(4)));
          StatementFile.read(file, "file", new Hints(false, "EUR"), small);
        });
  }

  @Test
  void an_intake_says_that_memory_will_not_do_before_it_runs_out() {
    Intake small = new Intake(100, 3 * 500L);
    Path file = folder.resolve("file");
    UnreadableStatement refused =
        assertThrows(
            UnreadableStatement.class,
            () -> {
              Files.write(file, WrittenStatement.MT940_TEXT.bytes(HostileStatementMonth.month(20)));
              StatementFile.read(file, "file", new Hints(false, "EUR"), small);
            });
    String why = InEnglish.said(refused.message());
    assertTrue(why.contains("name fewer files at once"), why);
  }

  @Test
  void a_bomb_of_entities_is_refused_in_every_kind_of_xml() {
    StringBuilder bomb = new StringBuilder("<!DOCTYPE x [<!ENTITY a0 \"ha\">");
    for (int level = 1; level < 40; level++) {
      String lower = "&a" + (level - 1) + ";";
      bomb.append("<!ENTITY a").append(level).append(" \"").append(lower.repeat(10)).append("\">");
    }
    bomb.append("]>");
    assertTrue(refused(utf8(CAMT.formatted(bomb, "&a39;"))).contains("refused"));
    String ofx = "<?xml version=\"1.0\"?>" + bomb + "<OFX><MEMO>&a39;</MEMO></OFX>";
    assertTrue(refused(utf8(ofx)).contains("refused"));
  }

  @Test
  void an_encoding_that_nobody_knows_is_named() {
    String head = "<?xml version=\"1.0\" encoding=\"x-no-such\"?><Document/>";
    assertTrue(refused(utf8(head)).contains("x-no-such"));
  }

  /** Without a mark and no valid UTF-8: the code page of Windows, as most banks' exports are. */
  @Test
  void letters_of_a_code_page_are_read_where_nothing_names_another() throws IOException {
    String csv = "Date;Name;Betrag\n01.11.2026;M\u00fcller \u2013 L\u00f6we;5,00\n";
    byte[] windows = csv.getBytes(java.nio.charset.Charset.forName("windows-1252"));
    assertEquals("M\u00fcller \u2013 L\u00f6we", read(windows).entries().get(0).who());
    assertEquals("M\u00fcller \u2013 L\u00f6we", read(utf8(csv)).entries().get(0).who());
  }

  @Test
  void one_line_of_fifty_megabytes_is_cut_as_it_is_read() throws IOException {
    Path file = folder.resolve("large.sta");
    byte[] block = "x".repeat(1 << 16).getBytes(StandardCharsets.US_ASCII);
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
      out.write(utf8(":20:S\n:25:1\n:60F:C261101EUR0,\n:61:2611011101C1,NTRFNONREF\n:86:"));
      for (int time = 0; time < 800; time++) {
        out.write(block);
      }
      out.write(utf8("\n:62F:C261130EUR1,\n-\n"));
    }
    Intake intake = new Intake();
    StatementFile.read(file, "file", new Hints(false, "EUR"), intake);
    assertEquals(Texts.MOST, intake.entries().get(0).text().length());
  }

  @Test
  void one_text_of_fifty_megabytes_is_cut_as_it_is_read() throws IOException {
    Path file = folder.resolve("large.xml");
    String[] around = CAMT.formatted("", "@").split("@");
    byte[] block = "x".repeat(1 << 16).getBytes(StandardCharsets.US_ASCII);
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
      out.write(utf8(around[0]));
      for (int time = 0; time < 800; time++) {
        out.write(block);
      }
      out.write(utf8(around[1]));
    }
    Intake intake = new Intake();
    StatementFile.read(file, "file", new Hints(false, "EUR"), intake);
    assertEquals(Texts.MOST, intake.entries().get(0).text().length());
  }

  /**
   * Read where a gigabyte is there; where only a quarter of it is, refused in one line, and soon.
   */
  @Test
  @Tag("demand")
  void a_million_entries_are_read_or_refused_in_bounded_memory() throws Exception {
    Path file = folder.resolve("million.sta");
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
      out.write(utf8(":20:S\n:25:1\n:60F:C261101EUR0,\n"));
      for (int entry = 0; entry < 1_000_000; entry++) {
        out.write(utf8(":61:2611011101C1,NTRFNONREF//B" + entry + "\n:86:text " + entry + "\n"));
      }
      out.write(utf8(":62F:C261130EUR1000000,\n-\n"));
    }
    assertEquals("0 1,000,000 entries: 0 sure", said("-Xmx1g", file));
    String refused = said("-Xmx256m", file);
    assertTrue(refused.startsWith("2 million.sta: more than "), refused);
    assertTrue(refused.endsWith("name fewer files at once"), refused);
  }

  /** What a process with this much memory says, with its exit code in front. */
  private String said(String memory, Path statement) throws Exception {
    Path book = folder.resolve("book");
    Files.createDirectories(book);
    Files.writeString(book.resolve("Visits.csv"), "Date,Owner,Horse,Work,Charge\n");
    Files.writeString(book.resolve("Settings.csv"), "Setting,Value\nCurrency,EUR\n");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                memory,
                "-cp",
                System.getProperty("java.class.path"),
                "clenchbook.cli.Clenchbook",
                "payments",
                book.toString(),
                "--statement",
                statement.toString())
            .redirectErrorStream(true)
            .start();
    String all = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    int code = process.waitFor();
    String line =
        all.lines().filter(each -> each.contains("entries")).findFirst().orElse(all).strip();
    return code + " " + line.replaceFirst(", 0 to look at.*", "");
  }
}
