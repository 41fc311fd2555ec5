package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.RegisterChoice;
import clenchbook.commands.opening.RunFault;
import clenchbook.commands.opening.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class YearEndRunTest {
  @TempDir private Path folder;
  private Path book;
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @BeforeEach
  void writeTheBook() throws IOException {
    book = folder.resolve("book");
    Files.createDirectories(book);
    write(
        "Settings",
        "Setting,Value\n"
            + "Tax regime,us\n"
            + "Currency,USD\n"
            + "Country,US\n"
            + "Distance unit,mile\n"
            + "Hourly wage,40\n");
    write("Work", "Work,Price\nFull set,200\nTrim,50\n");
    write(
        "Visits",
        "Date,Owner,Horse,Work,Place,Paid\n"
            + "2026-01-05,Ash,Bess,Full set,Oak,200\n"
            + "2026-02-10,Birch,Duke,Trim,Elm,\n");
    write("Places", "Place,Distance\nOak,10\nElm,12\n");
    write("Payments", "Date,Owner,Amount\n2026-03-01,Birch,50\n");
    write("Trips", "Date,From,To,Distance,Purpose\n2026-01-05,Home,Oak,20,rounds\n");
    write("Purchases", "Date,Supplier,Category,Gross\n2026-01-08,Ink Shop,Stationery,12.50\n");
  }

  private void write(String sheet, String rows) throws IOException {
    Files.writeString(book.resolve(sheet + ".csv"), rows);
  }

  private int run(int year, Optional<Integer> quarter) {
    YearEndRequest request =
        new YearEndRequest(
            book,
            Optional.of(year),
            quarter,
            false,
            Optional.of(folder.resolve("out")),
            RegisterChoice.USUAL,
            Optional.empty());
    return new YearEndRun(request, machine(), terminal()).run();
  }

  private static Machine machine() {
    return new Machine(LocalDate.of(2027, 1, 5), Locale.US, Optional.empty());
  }

  private Terminal terminal() {
    PrintStream stream = new PrintStream(err, true, StandardCharsets.UTF_8);
    return new Terminal(stream, stream, false);
  }

  private List<String> lines(String file) throws IOException {
    return Files.readAllLines(folder.resolve("out").resolve(file));
  }

  @Test
  void a_year_gives_every_file_it_promises() throws IOException {
    assertEquals(0, run(2026, Optional.empty()), err.toString(StandardCharsets.UTF_8));
    for (String file :
        List.of("tax-summary.pdf", "mileage-log.csv", "workload.pdf", "margins.pdf", "run.json")) {
      assertTrue(Files.size(folder.resolve("out/2026").resolve(file)) > 100, file);
    }
    assertEquals(
        "regime,line,name,amount,basis,source", lines("2026/figures/tax-summary.csv").get(0));
    assertEquals(
        "line,sheet,row,date,who,net,tax,gross", lines("2026/accountant/lines.csv").get(0));
    assertEquals(
        "date,account,description,debit,credit,sheet,row",
        lines("2026/accountant/journal.csv").get(0));
    assertEquals(
        List.of(
            "row,date,from,to,purpose,distance,odometer_start,odometer_end,vehicle,business",
            "2,2026-01-05,Home,Oak,rounds,20,,,,yes"),
        lines("2026/mileage-log.csv"));
    assertTrue(
        lines("2026/accountant/lines.csv")
            .contains("18,Purchases,2,2026-01-08,Ink Shop,12.50,0.00,12.50"));
  }

  @Test
  void debits_and_credits_of_the_written_journal_are_equal() throws IOException {
    run(2026, Optional.empty());
    BigDecimal balance = BigDecimal.ZERO;
    for (String line : lines("2026/accountant/journal.csv").stream().skip(1).toList()) {
      String[] cells = line.replaceAll("\"[^\"]*\"", "x").split(",", -1);
      balance = balance.add(amount(cells[3])).subtract(amount(cells[4]));
    }
    assertEquals(0, balance.signum());
  }

  private static BigDecimal amount(String cell) {
    return cell.isEmpty() ? BigDecimal.ZERO : new BigDecimal(cell);
  }

  @Test
  void the_same_again_gives_the_same_bytes_and_leaves_book_and_register_alone() throws IOException {
    TreeMap<String, String> before = hashes(book);
    run(2026, Optional.empty());
    TreeMap<String, String> first = hashes(folder.resolve("out"));
    run(2026, Optional.empty());
    assertEquals(first, hashes(folder.resolve("out")));
    assertEquals(before, hashes(book));
    try (Stream<Path> beside = Files.list(folder)) {
      assertTrue(beside.noneMatch(file -> file.toString().endsWith(".db")));
    }
  }

  private static TreeMap<String, String> hashes(Path root) throws IOException {
    TreeMap<String, String> hashes = new TreeMap<>();
    try (Stream<Path> files = Files.walk(root)) {
      files
          .filter(Files::isRegularFile)
          .forEach(file -> hashes.put(root.relativize(file).toString(), hash(file)));
    }
    return hashes;
  }

  private static String hash(Path file) {
    try {
      return Base64.getEncoder()
          .encodeToString(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (java.security.NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void invoices_of_the_register_tie_to_the_money() throws IOException {
    for (int month = 1; month <= 3; month++) {
      MonthEndRequest request =
          new MonthEndRequest(
              book,
              YearMonth.of(2026, month),
              Optional.of(folder.resolve("out")),
              RegisterChoice.USUAL,
              false,
              Optional.empty(),
              Optional.empty());
      new MonthEndRun(request, machine(), terminal()).run();
    }
    run(2026, Optional.empty());
    List<String> ties = lines("2026/figures/reconciliation.csv");
    assertEquals(
        3, ties.stream().filter(line -> line.contains("left over,0.00")).count(), ties.toString());
    assertTrue(
        ties.contains(
            "\"from the register's balances to the money, with tax\",invoices of the"
                + " period,250.00,,"));
  }

  @Test
  void a_quarter_lies_beside_the_year() throws IOException {
    run(2026, Optional.empty());
    run(2026, Optional.of(1));
    assertTrue(Files.exists(folder.resolve("out/2026/tax-summary.pdf")));
    assertTrue(
        lines("2026-Q1/figures/tax-summary.csv").stream()
            .anyMatch(line -> line.startsWith("us,1,") && line.contains(",250.00,")));
  }

  @Test
  void a_year_the_tables_lack_says_which_and_ends_with_one() throws IOException {
    assertEquals(1, run(2031, Optional.empty()));
    assertTrue(
        err.toString(StandardCharsets.UTF_8)
            .contains("rates/us/self-employment.csv has no rows for 2031-12-31"));
    assertTrue(
        lines("2031/figures/tax-summary.csv").stream()
            .anyMatch(line -> line.startsWith("us,error,")));
  }

  @Test
  void an_own_rates_file_beside_the_book_counts_and_is_named() throws IOException {
    Path rates = Files.createDirectories(folder.resolve("rates/us"));
    Files.writeString(
        rates.resolve("mileage.csv"),
        "code,name,value,unit,from,to,source,section,checked\n"
            + "business,Own rate,1.00,per mile,2026-01-01,2026-12-31,my accountant,,2026-12-01\n");
    run(2026, Optional.empty());
    assertTrue(
        lines("2026/figures/tax-summary.csv").stream()
            .anyMatch(
                line ->
                    line.startsWith("us,9,")
                        && line.contains(",20.00,")
                        && line.contains("your own rates file")));
  }

  /** Nothing stands in for a regime that is not known: no figure, no file, exit 2. */
  @Test
  void a_regime_that_is_not_known_stops_the_run_at_its_cell() throws IOException {
    write("Settings", "Setting,Value\nCurrency,USD\nTax regime,atlantis\n");
    RunFault fault = assertThrows(RunFault.class, () -> run(2026, Optional.empty()));
    assertTrue(fault.getMessage().startsWith("Settings!B3: "), fault.getMessage());
    assertTrue(fault.getMessage().contains("plain, us, uk"), fault.getMessage());
    assertTrue(Files.notExists(folder.resolve("out")));
  }

  /** The book ends on 1 March, so three months of the year are there, on the page and as data. */
  @Test
  void a_year_that_is_not_over_says_how_many_months_it_covers() throws IOException {
    run(2026, Optional.empty());
    assertTrue(
        lines("2026/run.json").stream()
            .anyMatch(line -> line.replace(" ", "").contains("\"months\":3,")));
    write("Payments", "Date,Owner,Amount\n2026-12-01,Birch,50\n");
    run(2026, Optional.empty());
    assertTrue(lines("2026/run.json").stream().noneMatch(line -> line.contains("\"months\"")));
  }

  /** The file stands in the quarter's own folder, whole and alone. */
  @Test
  void a_quarter_of_the_united_kingdom_has_its_update_as_data() throws IOException {
    write(
        "Settings", "Setting,Value\nTax regime,uk\nCurrency,GBP\nCountry,GB\nDistance unit,mile\n");
    write("Payments", "Date,Owner,Amount\n2026-05-01,Birch,50\n");
    run(2026, Optional.of(1));
    String body = Files.readString(folder.resolve("out/2026-Q1/quarterly-update.json"));
    assertTrue(body.startsWith("{\n  \"periodDates\""), body);
    assertTrue(body.contains("\"turnover\": 50.00"), body);
  }

  @Test
  void a_faulty_rates_file_stops_the_run_with_its_line() throws IOException {
    Path rates = Files.createDirectories(folder.resolve("rates/us"));
    Files.writeString(
        rates.resolve("mileage.csv"),
        "code,name,value,unit,from,to,source,section,checked\n"
            + "business,Own,1.00,per mile,2026-01-01,2026-12-31,,,\n");
    RunFault fault = assertThrows(RunFault.class, () -> run(2026, Optional.empty()));
    assertTrue(
        fault.getMessage().contains("rates/us/mileage.csv, line 2: empty source"),
        fault.getMessage());
  }
}
