package clenchbook.life;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The farrier's book as a folder of CSV files, of which only what changed is written again. */
final class LifeSheets {
  private final Map<String, String> written = new HashMap<>();

  static String text(int cents) {
    return BigDecimal.valueOf(cents, 2).toPlainString();
  }

  void write(Path folder, LifeTerms terms, List<LifeRow> visits, List<LifeBook.Money> payments) {
    try {
      Files.createDirectories(folder);
      write(
          folder,
          "Settings",
          "Setting,Value\nBusiness name,Anvil & Rasp\nCountry,GB\nCurrency,GBP\nLanguage,en\n");
      write(folder, "Work", work(terms));
      write(folder, "Owners", owners(terms));
      write(folder, "Horses", horses(terms));
      StringBuilder rows = new StringBuilder("Date,Owner,Horse,Work,Charge,Paid,Reason\n");
      visits.forEach(row -> rows.append(row.line(terms)).append('\n'));
      write(folder, "Visits", rows.toString());
      StringBuilder money = new StringBuilder("Date,Owner,Amount,Invoice,Kind\n");
      payments.forEach(each -> money.append(each.line()).append('\n'));
      write(folder, "Payments", money.toString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String work(LifeTerms terms) {
    StringBuilder sheet = new StringBuilder("Work,Price\n");
    for (String work : LifeTerms.WORKS) {
      sheet.append(work).append(',').append(text(terms.listPrice(work))).append('\n');
    }
    return sheet.toString();
  }

  private static String owners(LifeTerms terms) {
    StringBuilder sheet = new StringBuilder("Owner,Formerly\n");
    for (String person : LifeTerms.PERSONS) {
      sheet.append(terms.now(person)).append(',').append(terms.formerly(person)).append('\n');
    }
    return sheet.toString();
  }

  /** Bess is shared, Fig is billed to Maeve, two owners have a Jet, nobody wrote Star down. */
  private static String horses(LifeTerms terms) {
    String ruth = terms.now("Ruth");
    String adam = terms.now("Adam");
    return "Horse,Owner,Share %,Bill to,From,Until\n"
        + String.join(
            "\n",
            "Bess," + ruth + "," + terms.ruthsShare() + ",,,",
            "Bess," + adam + "," + (100 - terms.ruthsShare()) + ",,,",
            "Jet," + ruth + ",,,,",
            "Jet," + adam + ",,,,",
            dot(terms),
            "Fig," + terms.now("Ivo") + ",," + terms.now("Maeve") + ",,")
        + "\n";
  }

  private static String dot(LifeTerms terms) {
    String horse = terms.horse("Dot");
    String owner = horse + "," + terms.now(terms.dotsOwner()) + ",,,";
    return terms.sold().equals(LocalDate.MAX)
        ? owner + ","
        : owner
            + ","
            + terms.sold().minusDays(1)
            + "\n"
            + horse
            + ","
            + terms.now("Ivo")
            + ",,,"
            + terms.sold()
            + ",";
  }

  private void write(Path folder, String sheet, String text) throws IOException {
    if (!text.equals(written.put(sheet, text))) {
      Path file = folder.resolve(sheet + ".csv");
      // Some file systems wait for the disk when a file that stands there is cut off and filled.
      Files.deleteIfExists(file);
      Files.writeString(file, text);
    }
  }
}
