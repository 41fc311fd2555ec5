package clenchbook.speed;

import clenchbook.bankfiles.Hints;
import clenchbook.bankfiles.Intake;
import clenchbook.bankfiles.StatementFile;
import clenchbook.bankfiles.WrittenStatement;
import clenchbook.matching.MatchResult;
import clenchbook.matching.Matching;
import clenchbook.matching.PaymentFiles;
import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.known.KnownDocument;
import clenchbook.matching.known.KnownOwner;
import clenchbook.matching.known.Ledger;
import clenchbook.print.files.CsvText;
import clenchbook.texts.InEnglish;
import clenchbook.texts.Message;
import com.fasterxml.aalto.stax.InputFactoryImpl;
import java.io.BufferedOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import javax.xml.stream.XMLStreamReader;

/**
 * How long 100,000 bank entries take against 5,000 open invoices, beside the floor: one pass over
 * the file: {@code floor FILE}, {@code match FILE} or {@code write FILE}.
 */
public final class StatementPace {
  private static final int ENTRIES = 100_000;
  private static final int INVOICES = 5_000;
  private static final LocalDate FIRST = LocalDate.of(2026, 11, 1);

  private StatementPace() {}

  /**
   * Writes the file, passes over it, or matches it.
   *
   * @param arguments what to do, and the file
   * @throws Exception when it can't be done
   */
  public static void main(String[] arguments) throws Exception {
    Path file = Path.of(arguments[1]);
    long start = System.nanoTime();
    switch (arguments[0]) {
      case "write" -> Files.write(file, written());
      case "floor" -> System.out.println(floor(file) + " events");
      default -> match(file);
    }
    double seconds = (System.nanoTime() - start) / 1e9;
    System.out.printf(Locale.ROOT, "%s %.2f s%n", arguments[0], seconds);
  }

  private static byte[] written() {
    Random random = new Random(3);
    List<BankEntry> entries = new ArrayList<>(ENTRIES);
    for (int at = 0; at < ENTRIES; at++) {
      boolean invoice = at % 20 == 0;
      int number = at / 20;
      boolean named = random.nextInt(3) > 0;
      entries.add(
          new BankEntry(
              0,
              Integer.toString(at + 1),
              FIRST.plusDays(at % 28),
              invoice ? gross(number) : BigDecimal.valueOf(100L + random.nextInt(90_000), 2),
              "EUR",
              invoice ? name(number) : "Payer " + random.nextInt(20_000),
              "",
              invoice && named ? "invoice " + number(number) : "order " + random.nextInt(),
              "",
              "",
              "B" + at,
              BankEntry.Standing.BOOKED,
              "",
              Message.NONE));
    }
    return WrittenStatement.CAMT_053_V8.bytes(
        new WrittenStatement.Month(
            "DE89370400440532013000", FIRST, FIRST.plusDays(29), BigDecimal.TEN, entries));
  }

  private static String number(int place) {
    return String.format(Locale.ROOT, "2026-%05d", place + 1);
  }

  private static String name(int place) {
    return "Given" + place % 70 + " Family" + place / 70;
  }

  private static BigDecimal gross(int place) {
    return BigDecimal.valueOf(8_500L + (place * 37L) % 40_000, 2);
  }

  private static Ledger ledger() {
    List<KnownOwner> owners = new ArrayList<>();
    List<KnownDocument> documents = new ArrayList<>();
    for (int place = 0; place < INVOICES; place++) {
      owners.add(new KnownOwner(name(place), List.of(), gross(place)));
      documents.add(
          new KnownDocument(
              number(place), name(place), FIRST.minusDays(1), gross(place), gross(place)));
    }
    return new Ledger("EUR", owners, documents, List.of(), Optional.empty());
  }

  /** One pass over the XML that looks at nothing. */
  private static long floor(Path file) throws Exception {
    long events = 0;
    try (InputStream stream = Files.newInputStream(file)) {
      XMLStreamReader reader = new InputFactoryImpl().createXMLStreamReader(stream);
      while (reader.hasNext()) {
        reader.next();
        events++;
      }
    }
    return events;
  }

  private static void match(Path file) throws Exception {
    long start = System.nanoTime();
    Intake intake = new Intake();
    StatementFile.read(file, "statement", new Hints(false, "EUR"), intake);
    long read = System.nanoTime();
    Ledger ledger = ledger();
    MatchResult result = Matching.of(ledger, intake.statements(), intake.entries());
    long matched = System.nanoTime();
    PaymentFiles files = new PaymentFiles(ledger, intake.statements(), result, 2, InEnglish.TEXTS);
    try (OutputStream out =
        new BufferedOutputStream(Files.newOutputStream(file.resolveSibling("matched.csv")))) {
      CsvText.write(out, PaymentFiles.TO_ADD, files.toAdd());
      CsvText.write(out, PaymentFiles.LEFT, files.unmatched());
      CsvText.write(out, PaymentFiles.LEFT, files.alreadyThere());
    }
    System.out.printf(
        Locale.ROOT,
        "%d to add, %d unmatched; reading %.2f s, matching %.2f s, writing %.2f s%n",
        result.toAdd().size(),
        result.unmatched().size(),
        (read - start) / 1e9,
        (matched - read) / 1e9,
        (System.nanoTime() - matched) / 1e9);
  }
}
