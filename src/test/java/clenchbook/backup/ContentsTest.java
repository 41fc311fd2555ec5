package clenchbook.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.texts.InEnglish;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What goes into a backup, and what is refused by its name or its list alone. */
class ContentsTest {
  private static final String DIGEST = "0123456789abcdef".repeat(4);

  private static List<String> names(PackedFile... found) throws UnsoundBackup {
    return Contents.of(List.of(found)).stream().map(PackedFile::name).toList();
  }

  @Test
  void only_what_a_run_reads_goes_in_each_file_once_and_in_one_order() throws UnsoundBackup {
    assertEquals(
        List.of(
            "b.xlsx",
            "b.register.db",
            "report-templates/invoice.jrxml",
            "report-templates/mail.de.properties",
            "rates/au/year.csv",
            "logo.png"),
        names(
            new PackedFile(Role.LOGO, "logo.png"),
            new PackedFile(Role.RATES, "rates/au/year.csv"),
            new PackedFile(Role.RATES, "rates/au/year.csv.bak"),
            new PackedFile(Role.TEMPLATES, "report-templates/mail.de.properties"),
            new PackedFile(Role.TEMPLATES, "report-templates/invoice.jrxml"),
            new PackedFile(Role.TEMPLATES, "report-templates/old/invoice.jrxml"),
            new PackedFile(Role.REGISTER, "b.register.db"),
            new PackedFile(Role.BOOK, "b.xlsx"),
            new PackedFile(Role.LOGO, "rates/au/year.csv")));
  }

  @Test
  void what_is_in_it_is_said_in_words() throws UnsoundBackup {
    assertEquals(
        "book (2 files), register",
        InEnglish.said(
            Contents.inWords(
                Contents.of(
                    List.of(
                        new PackedFile(Role.BOOK, "b/Visits.csv"),
                        new PackedFile(Role.REGISTER, "b.register.db"),
                        new PackedFile(Role.BOOK, "b/Work.csv"))))));
  }

  @Test
  void without_a_book_there_is_nothing_to_pack() {
    assertThrows(UnsoundBackup.class, () -> names(new PackedFile(Role.REGISTER, "b.register.db")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../b.xlsx",
        "/b.xlsx",
        "C:b.xlsx",
        "c:/b.xlsx",
        "a/../b",
        "a//b",
        "a/./b",
        "a\\b",
        "a\nb",
        "",
        " ",
        "a/",
        "\u0000",
        "backup.sha256",
        "BACKUP.SHA256"
      })
  void a_name_that_leads_elsewhere_is_neither_packed_nor_put_back(String name) {
    assertThrows(UnsoundBackup.class, () -> names(new PackedFile(Role.BOOK, name)));
    String list = "# Clenchbook backup 1\n# book b\n" + DIGEST + "  b\n" + DIGEST + "  " + name;
    assertThrows(UnsoundBackup.class, () -> Manifest.parse(list + "\n"));
  }

  /** Whether letters differ by case or accents are composed is no difference to some disks. */
  @ParameterizedTest
  @ValueSource(strings = {"Book.csv|book.csv", "é|e\u0301", "a|A/b", "a/b|A/c", "ı|I"})
  void two_names_of_one_file_are_refused(String both) {
    String[] names = both.split("\\|", -1);
    String list =
        "# Clenchbook backup 1\n# book %s\n%s  %s\n%s  %s\n"
            .formatted(names[0], DIGEST, names[0], DIGEST, names[1]);
    assertThrows(UnsoundBackup.class, () -> Manifest.parse(list));
  }

  @Test
  void the_list_is_read_as_it_is_written() throws UnsoundBackup {
    Map<String, String> digests = new LinkedHashMap<>();
    digests.put("Öl & Hufe.xlsx", DIGEST);
    digests.put("rates/au/year.csv", "f".repeat(64));
    Manifest manifest = new Manifest("Öl & Hufe.xlsx", digests);
    assertEquals(manifest, Manifest.parse(manifest.text()));
    assertEquals(
        List.of("RATES", "öl & hufe.XLSX"),
        manifest.inTheWay(List.of("öl & hufe.XLSX", "notes.txt", "RATES")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "# Clenchbook backup 1\n",
        "# Clenchbook backup 1\n# book b\n",
        "# Clenchbook backup 1\n# book other\nD  b\n",
        "# Clenchbook backup 1\n# book \nD  b\n",
        "# Clenchbook backup 1\n# book b\nD b\n",
        "# Clenchbook backup 1\n# book b\nD  b\nD  b\n",
        "# another list 1\n# book b\nD  b\n"
      })
  void a_damaged_list_is_refused(String list) {
    assertThrows(UnsoundBackup.class, () -> Manifest.parse(list.replace("D", DIGEST)));
  }

  @Test
  void a_list_of_a_newer_form_says_so() {
    UnsoundBackup refused =
        assertThrows(
            UnsoundBackup.class,
            () -> Manifest.parse("# Clenchbook backup 2\n# book b\n" + DIGEST + "  b\n"));
    assertTrue(
        InEnglish.said(refused.message()).contains("newer version"),
        InEnglish.said(refused.message()));
  }

  private static final PackedEntry LIST = new PackedEntry(Manifest.NAME, 100, true, true);

  private static void refused(String why, long size, PackedEntry... more) {
    List<PackedEntry> entries = new ArrayList<>(List.of(LIST));
    entries.addAll(List.of(more));
    UnsoundBackup refused =
        assertThrows(
            UnsoundBackup.class,
            () -> new Directory(entries, size).agreesWith(new Manifest("b", Map.of("b", DIGEST))));
    assertTrue(InEnglish.said(refused.message()).contains(why), InEnglish.said(refused.message()));
  }

  @Test
  void a_directory_that_no_backup_has_is_refused() throws UnsoundBackup {
    PackedEntry book = new PackedEntry("b", 10, true, true);
    new Directory(List.of(LIST, book), 200).agreesWith(new Manifest("b", Map.of("b", DIGEST)));
    refused("link", 200, new PackedEntry("b", 10, false, true));
    refused("packed in a way", 200, new PackedEntry("b", 10, true, false));
    refused("larger", 109, book);
    refused("larger", 200, new PackedEntry("b", -1, true, true));
    refused("larger", 200, new PackedEntry("b", Long.MAX_VALUE, true, true));
    refused("twice", 200, book, book);
    refused("doesn't name", 200, book, new PackedEntry("c", 1, true, true));
    refused("lacks b", 200);
    refused("two files", 200, book, new PackedEntry("B", 1, true, true));
    refused("leads out", 200, book, new PackedEntry("../c", 1, true, true));
    UnsoundBackup none = assertThrows(UnsoundBackup.class, () -> new Directory(List.of(book), 200));
    assertTrue(
        InEnglish.said(none.message()).contains("lacks its list"), InEnglish.said(none.message()));
  }
}
