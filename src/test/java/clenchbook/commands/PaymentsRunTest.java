package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.commands.opening.RegisterChoice;
import clenchbook.commands.opening.RunFault;
import clenchbook.commands.opening.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command payments from the bank's file to the pasted rows. */
class PaymentsRunTest {
  private static final String HEADINGS = "Date,Name,Description,Reference,Amount,Balance\n";

  @TempDir Path folder;
  private SmallFolderBook book;
  private final ByteArrayOutputStream told = new ByteArrayOutputStream();

  /** October's drafts: Adam 2026-0001 (120.00, S), Maeve, Ruth; tax 20 % on top. */
  @BeforeEach
  void month() throws IOException {
    book = SmallFolderBook.in(folder);
    book.monthEnd("2026-10");
  }

  private int run(Path... statements) {
    PrintStream to = new PrintStream(told, true, StandardCharsets.UTF_8);
    return new PaymentsRun(
            book.path(),
            List.of(statements),
            Optional.empty(),
            RegisterChoice.USUAL,
            SmallFolderBook.machine(),
            new Terminal(to, to, false))
        .run();
  }

  private String told() {
    return told.toString(StandardCharsets.UTF_8);
  }

  private Path statement(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private List<CSVRecord> rows(String name) throws IOException {
    CSVFormat format = CSVFormat.Builder.create().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser =
        CSVParser.parse(
            book.reports().resolve("payments").resolve(name), StandardCharsets.UTF_8, format)) {
      return parser.getRecords();
    }
  }

  private List<CSVRecord> invoices() throws IOException {
    CSVFormat format = CSVFormat.Builder.create().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser =
        CSVParser.parse(
            book.reports().resolve("2026-10/figures/invoices.csv"),
            StandardCharsets.UTF_8,
            format)) {
      return parser.getRecords().stream()
          .filter(row -> new BigDecimal(row.get("gross")).signum() > 0)
          .toList();
    }
  }

  @Test
  void rows_that_are_pasted_settle_the_accounts_and_are_never_proposed_again() throws IOException {
    List<CSVRecord> open = invoices();
    StringBuilder text = new StringBuilder(HEADINGS);
    BigDecimal balance = new BigDecimal("500.00");
    for (CSVRecord invoice : open) {
      balance = balance.add(new BigDecimal(invoice.get("gross")));
      text.append("03/11/2026,")
          .append(invoice.get("owner"))
          .append(",invoice ")
          .append(invoice.get("number"))
          .append(",B")
          .append(invoice.get("number"))
          .append(',')
          .append(invoice.get("gross"))
          .append(',')
          .append(balance)
          .append('\n');
    }
    Path statement = statement("november.csv", text.toString());
    assertEquals(0, run(statement), told());
    List<CSVRecord> toAdd = rows("payments-to-add.csv");
    assertEquals(
        open.stream().map(row -> row.get("number")).toList(),
        toAdd.stream().map(row -> row.get("Invoice")).toList());
    assertTrue(toAdd.stream().allMatch(row -> Integer.parseInt(row.get("sure")) >= 90));

    List<String> pasted = new ArrayList<>(List.of("Date,Owner,Amount,Invoice,Kind,How,Reference"));
    toAdd.forEach(row -> pasted.add(String.join(",", row.stream().limit(7).toList())));
    book.sheet("Payments", String.join("\n", pasted) + "\n");
    book.monthEnd("2026-11");
    String balances = Files.readString(book.reports().resolve("2026-11/figures/balances.csv"));
    for (CSVRecord invoice : open) {
      String owner = invoice.get("owner");
      assertTrue(
          balances
              .lines()
              .anyMatch(l -> l.startsWith(owner + ",") && l.split(",")[4].equals("0.00")),
          owner + "\n" + balances);
    }

    assertEquals(0, run(statement), told());
    assertEquals(List.of(), rows("payments-to-add.csv"));
    assertEquals(open.size(), rows("already-there.csv").size());
  }

  @Test
  void the_columns_are_those_of_payments_then_why() throws IOException {
    run(statement("november.csv", HEADINGS + "03/11/2026,Nobody,x,B1,1.00,1.00\n"));
    Path to = book.reports().resolve("payments");
    assertEquals(
        "Date,Owner,Amount,Invoice,Kind,How,Reference,sure,why,statement,entry",
        Files.readAllLines(to.resolve("payments-to-add.csv")).get(0));
    for (String name : List.of("unmatched.csv", "already-there.csv")) {
      assertEquals(
          "date,amount,who,text,statement,entry,why", Files.readAllLines(to.resolve(name)).get(0));
    }
  }

  @Test
  void the_second_copy_in_overlapping_statements_is_there_already() throws IOException {
    String row = "03/11/2026,Ruth,thanks,B1,7.00,7.00\n";
    assertEquals(
        0, run(statement("a.csv", HEADINGS + row), statement("b.csv", HEADINGS + row)), told());
    assertEquals(1, rows("already-there.csv").size());
    assertEquals("b.csv", rows("already-there.csv").get(0).get("statement"));
  }

  @Test
  void a_balance_that_does_not_tie_is_told_and_ends_with_1() throws IOException {
    Path statement =
        statement(
            "november.csv",
            HEADINGS + "03/11/2026,X,x,B1,10.00,10.00\n04/11/2026,Y,y,B2,10.00,30.00\n");
    assertEquals(1, run(statement));
    assertTrue(told().contains("10.00 is not accounted for"), told());
  }

  @Test
  void days_missing_between_statements_are_told_and_end_with_1() throws IOException {
    String form = ":20:S\n:25:123\n:28C:%d/1\n:60F:C%sEUR1,00\n:62F:C%sEUR1,00\n-\n";
    Path first = statement("a.sta", form.formatted(1, "261101", "261110"));
    Path second = statement("b.sta", form.formatted(3, "261115", "261130"));
    assertEquals(1, run(first, second));
    assertTrue(
        told().contains("days are missing between a.sta and b.sta: 2026-11-11 to 2026-11-14"),
        told());
  }

  @Test
  void a_formula_is_made_harmless_and_account_numbers_are_hidden_but_for_four() throws IOException {
    run(
        statement(
            "DE89370400440532013000.csv",
            HEADINGS
                + "03/11/2026,=1+1,to GB29NWBK60161331926819 and 12345678901,B1,77.10,77.10\n"));
    String all = Files.readString(book.reports().resolve("payments/unmatched.csv"));
    assertTrue(all.contains("'=1+1"), all);
    assertTrue(all.contains("...6819") && all.contains("...8901"), all);
    for (String secret : List.of("GB29NWBK", "12345678901", "DE893704")) {
      assertFalse(all.contains(secret), all);
    }
  }

  @Test
  void a_damaged_file_is_one_line_and_nothing_is_written() throws IOException {
    Path sound = statement("a.csv", HEADINGS + "03/11/2026,X,x,B1,1.00,1.00\n");
    Path cut = statement("b.xml", "<Document><BkToCstmrStmt><Stmt><Ntry>");
    RunFault fault = assertThrows(RunFault.class, () -> run(sound, cut));
    assertEquals(1, fault.getMessage().lines().count());
    assertTrue(fault.getMessage().startsWith("b.xml: "), fault.getMessage());
    assertFalse(Files.exists(book.reports().resolve("payments")));
  }

  @Test
  void book_and_register_stay_as_they_were() throws IOException {
    byte[] before = Files.readAllBytes(book.register());
    run(statement("november.csv", HEADINGS + "03/11/2026,Ruth,x,B1,48.00,48.00\n"));
    assertEquals(
        new String(before, StandardCharsets.ISO_8859_1),
        new String(Files.readAllBytes(book.register()), StandardCharsets.ISO_8859_1));
  }
}
