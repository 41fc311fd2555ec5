package clenchbook.speed;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;

/** What a working life drove, bought, was paid and counted, and its settings. */
final class LifeLedgers {
  private final SheetFile book;
  private final List<LocalDate> days;

  LifeLedgers(SheetFile book, List<LocalDate> days) {
    this.book = book;
    this.days = days;
  }

  void write() throws IOException {
    ledgers();
    settings();
  }

  private void ledgers() throws IOException {
    book.sheet("Trips", "Date", "From", "To", "Distance", "Drive min", "Purpose");
    for (int i = 0; i < days.size(); i++) {
      book.row(days.get(i), "Home", "Round", 40 + i % 37, 70 + i % 41, "visits");
    }
    purchases();
    book.sheet("Payments", "Date", "Owner", "Amount", "How");
    for (int i = 4; i < days.size(); i++) {
      book.row(
          days.get(i), WorkingLife.owner(i), BigDecimal.valueOf(12_000 + i % 9 * 1_150, 2), "bank");
    }
    book.sheet("Counts", "Date", "Item", "Size", "Quantity");
    for (int i = 0; i < days.size(); i += 250) {
      book.row(days.get(i), "Keg", "0", 40);
      book.row(days.get(i), "Nail 5", "", 1500);
    }
  }

  private void purchases() throws IOException {
    book.sheet(
        "Purchases",
        "Date",
        "Supplier",
        "Item",
        "Size",
        "Quantity",
        "Unit",
        "Category",
        "Net",
        "Tax",
        "Gross");
    for (int i = 0; i < days.size(); i += 5) {
      LocalDate day = days.get(i);
      String size = List.of("00", "0", "1", "2").get(i / 5 % 4);
      book.row(
          day,
          "Wold Metals",
          "Keg",
          size,
          40,
          "piece",
          "",
          144,
          new BigDecimal("28.80"),
          new BigDecimal("172.80"));
      book.row(
          day,
          "Wold Metals",
          "Nail 5",
          "",
          2,
          "pack",
          "",
          49,
          new BigDecimal("9.80"),
          new BigDecimal("58.80"));
      book.row(
          day,
          "Wold Garage",
          "",
          "",
          "",
          "",
          "Fuel for vehicle",
          58,
          new BigDecimal("11.60"),
          new BigDecimal("69.60"));
      if (i % 20 == 0) {
        book.row(day, "Wold Estates", "", "", "", "", "Rent", 240, 0, 240);
        book.row(
            day,
            "Wold Gas",
            "",
            "",
            "",
            "",
            "Propane gas",
            49,
            new BigDecimal("9.80"),
            new BigDecimal("58.80"));
      }
    }
  }

  private void settings() throws IOException {
    book.sheet("Tax", "Code", "Name", "Rate %", "Kind", "From");
    book.row("S", "Standard", 20, "standard", LocalDate.of(1979, 1, 1));
    book.sheet("Settings", "Setting", "Value");
    String[] settings = {
      "Business name|Wold Forge",
      "Address|The Smithy\nNether Wold",
      "Email|forge@wold.example",
      "Payment text|Please pay by bank transfer.",
      "IBAN|GB82 WEST 1234 5698 7654 32",
      "Country|GB",
      "Currency|GBP",
      "Language|en",
      "Units|metric",
      "Distance unit|miles",
      "Date order|dmy",
      "Tax regime|uk",
      "Tax number|GB 123 4567 82",
      "Prices include tax|no",
      "Hourly wage|28",
      "Vehicle cost per distance|0.45",
      "Gas cost per kg|2.60",
      "Sundries per horse|2.20",
      "Birth year|1985",
      "Stop age|66",
      "Weekly hours limit|45",
      "Yearly hours limit|1800",
      "Horses per day limit|9"
    };
    for (String setting : settings) {
      int bar = setting.indexOf('|');
      book.row(setting.substring(0, bar), setting.substring(bar + 1));
    }
  }
}
