package clenchbook.commands;

import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.RegisterChoice;
import clenchbook.commands.opening.Terminal;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A small book as a folder of CSV files, and runs over it in this process. */
public final class SmallFolderBook {
  public static final String SETTINGS =
      "Setting,Value\nBusiness name,Anvil & Rasp\nCountry,GB\nCurrency,GBP\nLanguage,en\n"
          + "Tax number,GB 000 0000 00\nHourly wage,30\nTerms days,14\n";
  static final String WORK =
      "Work,Price,Tax,Shoe,Shoes,Shaping,Nails per shoe,Trim min,Shape min,Nail min\n"
          + "Trim,40,S,,,,,20,,\nFull set,100,S,Keg,4,hot,6,15,24,20\n";
  static final String VISITS =
      "Date,Owner,Horse,Work,Charge,Paid\n"
          + "2026-09-07,Ruth,Bess,Trim,,\n2026-09-08,Adam,Jet,Full set,,120\n"
          + "2026-10-05,Ruth,Bess,Trim,,\n2026-10-06,Adam,Jet,Full set,,\n"
          + "2026-10-07,Maeve,Dot,Full set,95,\n2026-10-08,Ivo,Fig,Trim,0,\n";
  private static final String TAX = "Code,Name,Rate %,Kind\nS,VAT,20,standard\n";
  private static final String MATERIALS =
      "Item,Kind,Size,Unit cost\nKeg,keg,,4.20\nE-head,nail,,0.10\n";
  private static final String PAYMENTS = "Date,Owner,Amount,Invoice,Kind\n";

  private final Path folder;

  private SmallFolderBook(Path folder) {
    this.folder = folder;
  }

  public static SmallFolderBook in(Path parent) throws IOException {
    Path folder = Files.createDirectories(parent.resolve("book"));
    return new SmallFolderBook(folder)
        .sheet("Settings", SETTINGS)
        .sheet("Work", WORK)
        .sheet("Visits", VISITS)
        .sheet("Tax", TAX)
        .sheet("Materials", MATERIALS)
        .sheet("Payments", PAYMENTS);
  }

  /** One that lies there already. */
  static SmallFolderBook at(Path folder) {
    return new SmallFolderBook(folder);
  }

  public SmallFolderBook sheet(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name + ".csv"), text);
    return this;
  }

  SmallFolderBook payments(String rows) throws IOException {
    return sheet("Payments", PAYMENTS + rows);
  }

  public Path path() {
    return folder;
  }

  Path register() {
    return folder.resolveSibling("book.register.db");
  }

  public Path reports() {
    return folder.resolveSibling("book reports");
  }

  int monthEnd(String month) {
    return monthEnd(month, false, null);
  }

  int monthEnd(String month, boolean includeEarlier, String correct) {
    return new MonthEndRun(
            new MonthEndRequest(
                folder,
                YearMonth.parse(month),
                Optional.empty(),
                RegisterChoice.USUAL,
                includeEarlier,
                Optional.ofNullable(correct),
                Optional.empty()),
            machine(),
            silent())
        .run();
  }

  static Machine machine() {
    return new Machine(LocalDate.of(2026, 12, 1), Locale.UK, Optional.empty());
  }

  static Terminal silent() {
    PrintStream nowhere =
        new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
    return new Terminal(nowhere, nowhere, false);
  }

  /** Every file of the reports with its bytes as text of one letter per byte. */
  SortedMap<String, String> files() throws IOException {
    SortedMap<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(reports())) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(
            reports().relativize(file).toString(),
            new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
      }
    }
    return files;
  }
}
