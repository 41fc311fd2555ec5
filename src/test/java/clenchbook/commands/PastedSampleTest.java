package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.bankfiles.WrittenStatement;
import clenchbook.cli.Clenchbook;
import clenchbook.matching.bank.BankEntry;
import clenchbook.texts.Message;
import clenchbook.values.CreditorReference;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The whole way on a sample workbook: its owners pay through the bank in their several ways, the
 * rows that come of it are pasted into Payments, and each balance falls by just what was paid.
 */
class PastedSampleTest {
  private static final CSVFormat CSV =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  @TempDir private Path folder;
  private final SplittableRandom random = new SplittableRandom(21);
  private final List<BankEntry> entries = new ArrayList<>();
  private final Map<String, BigDecimal> paid = new TreeMap<>();
  private Path book;

  @BeforeEach
  void copy() throws IOException {
    book = folder.resolve("thornfield-metric.xlsx");
    for (String name : List.of("thornfield-metric.xlsx", "thornfield-logo.png")) {
      Files.copy(Path.of("sample-workbooks", name), folder.resolve(name));
    }
  }

  private void run(String command, String... more) {
    List<String> all = new ArrayList<>(List.of(command, book.toString()));
    all.addAll(List.of(more));
    all.addAll(List.of("--today", "2026-12-01"));
    int code = Clenchbook.execute(all.toArray(String[]::new));
    assertTrue(code <= 1, command + " ended with " + code);
  }

  private List<CSVRecord> table(String path) throws IOException {
    Path file = folder.resolve("thornfield-metric reports").resolve(path);
    try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, CSV)) {
      return parser.getRecords();
    }
  }

  private Map<String, BigDecimal> balances() throws IOException {
    Map<String, BigDecimal> balances = new TreeMap<>();
    for (CSVRecord row : table("2026-11/figures/balances.csv")) {
      balances.put(row.get("owner"), new BigDecimal(row.get("balance")));
    }
    return balances;
  }

  @Test
  void rows_pasted_into_a_sample_lower_each_balance_by_what_was_paid() throws IOException {
    run("month-end", "--month", "2026-10");
    for (CSVRecord invoice : table("2026-10/figures/open-invoices.csv")) {
      pays(invoice.get("owner"), invoice.get("number"), new BigDecimal(invoice.get("open")));
    }
    otherMoney();
    Path statement = folder.resolve("november.xml");
    byte[] euros =
        WrittenStatement.CAMT_053_V8.bytes(
            new WrittenStatement.Month(
                "DE89370400440532013000",
                LocalDate.of(2026, 11, 1),
                LocalDate.of(2026, 11, 30),
                new BigDecimal("812.40"),
                entries));
    Files.writeString(statement, new String(euros, StandardCharsets.UTF_8).replace("EUR", "GBP"));
    run("payments", "--statement", statement.toString());
    assertTrue(paid.size() > 10, paid.toString());
    assertEquals(2, table("payments/unmatched.csv").size());
    assertEquals(
        List.of(),
        table("payments/payments-to-add.csv").stream().filter(r -> sure(r) < 90).toList());

    run("month-end", "--month", "2026-11");
    Map<String, BigDecimal> expected = balances();
    paid.forEach((owner, amount) -> expected.merge(owner, amount, BigDecimal::subtract));
    paste();
    run("month-end", "--month", "2026-11");
    assertEquals(expected, balances());
  }

  private static int sure(CSVRecord row) {
    return Integer.parseInt(row.get("sure"));
  }

  private void pays(String owner, String number, BigDecimal open) {
    BigDecimal part =
        open.multiply(new BigDecimal("0.40")).setScale(2, RoundingMode.HALF_UP).max(BigDecimal.ONE);
    String checked = CreditorReference.of(number).orElseThrow().inFours();
    switch (random.nextInt(7)) {
      case 0, 1 -> in(owner, owner, "Invoice " + number, open);
      case 2 -> in(owner, owner, checked, open);
      case 3 -> in(owner, "Somebody Unknown", "for " + number, open);
      case 4 -> in(owner, owner, "part of " + number, part);
      case 5 -> {
        in(owner, owner, number, open);
        entry(owner, "returned item " + number, open.negate(), BankEntry.Standing.RETURNED);
        paid.merge(owner, open.negate(), BigDecimal::add);
      }
      default -> {
        // Has not paid.
      }
    }
  }

  private void in(String owner, String who, String text, BigDecimal amount) {
    entry(who, text, amount, BankEntry.Standing.BOOKED);
    paid.merge(owner, amount, BigDecimal::add);
  }

  private void otherMoney() {
    entry("", "account fee", new BigDecimal("-4.90"), BankEntry.Standing.CHARGE);
    entry("Wold Steel", "order 4711", new BigDecimal("-310.00"), BankEntry.Standing.BOOKED);
  }

  private void entry(String who, String text, BigDecimal amount, BankEntry.Standing standing) {
    int place = entries.size() + 1;
    entries.add(
        new BankEntry(
            0,
            Integer.toString(place),
            LocalDate.of(2026, 11, Math.min(28, 2 + place / 3)),
            amount,
            "GBP",
            who,
            "",
            text,
            "",
            "",
            "T" + place,
            standing,
            "",
            Message.NONE));
  }

  /** As a farrier pastes: the first seven columns below the last row. */
  private void paste() throws IOException {
    byte[] bytes;
    try (InputStream in = Files.newInputStream(book);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      Sheet sheet = workbook.getSheet("Payments");
      for (CSVRecord proposed : table("payments/payments-to-add.csv")) {
        Row row = sheet.createRow(sheet.getLastRowNum() + 1);
        for (int column = 0; column < 7; column++) {
          String cell = proposed.get(column);
          if (proposed.getParser().getHeaderNames().get(column).equals("Amount")) {
            row.createCell(column).setCellValue(Double.parseDouble(cell));
          } else if (!cell.isEmpty()) {
            row.createCell(column).setCellValue(cell);
          }
        }
      }
      java.io.ByteArrayOutputStream out = new java.io.ByteArrayOutputStream();
      workbook.write(out);
      bytes = out.toByteArray();
    }
    try (OutputStream out = Files.newOutputStream(book)) {
      out.write(bytes);
    }
  }
}
