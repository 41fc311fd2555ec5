package clenchbook.speed;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;

/** The prices of a working life: the Work dearer every five years, and what it is made of. */
final class LifePrices {
  private LifePrices() {}

  static void write(SheetFile book, LocalDate earliest) throws IOException {
    book.sheet(
        "Work",
        "Work",
        "Price",
        "Tax",
        "Shoe",
        "Shoes",
        "Shaping",
        "Nail",
        "Nails per shoe",
        "Trim min",
        "Shape min",
        "Nail min",
        "Forge min",
        "Compare as",
        "From");
    for (int years = 0; years <= 40; years += 5) {
      LocalDate from = earliest.plusYears(years);
      int dearer = years / 5 * 2;
      book.row("Trim", 24 + dearer, "S", "", 0, "none", "", "", 20, "", "", "", "Trim", from);
      book.row(
          "Fronts", 58 + dearer, "S", "Keg", 2, "hot", "Nail 5", 7, 20, 12, 10, 10, "Fronts", from);
      book.row(
          "Full set",
          86 + dearer,
          "S",
          "Keg",
          4,
          "hot",
          "Nail 5",
          7,
          20,
          24,
          20,
          20,
          "Full set",
          from);
      book.row(
          "Refit", 74 + dearer, "S", "Keg", 4, "hot", "Nail 5", 7, 20, 15, 20, 14, "Refit", from);
      book.row(
          "Handmade set",
          118 + dearer,
          "S",
          "Handmade",
          4,
          "hot",
          "Nail 5",
          7,
          20,
          22,
          20,
          22,
          "Full set",
          from);
      book.row(
          "Aluminium set",
          106 + dearer,
          "S",
          "Aluminium",
          4,
          "cold",
          "Nail 5",
          6,
          20,
          28,
          20,
          "",
          "",
          from);
    }
    book.sheet(
        "Materials",
        "Item",
        "Kind",
        "Size",
        "Unit",
        "Unit cost",
        "Per pack",
        "Pack cost",
        "Price",
        "Section",
        "Length mm",
        "Cut mm",
        "Bar",
        "Bar length mm",
        "Making min",
        "Making forge min",
        "Reorder at",
        "Supplier",
        "From");
    for (String size : List.of("00", "0", "1", "2")) {
      book.row(
          "Keg",
          "keg",
          size,
          "piece",
          new BigDecimal("3.60"),
          "",
          "",
          "",
          "",
          "",
          "",
          "",
          "",
          "",
          "",
          20,
          "Wold Metals",
          earliest);
    }
    book.row(
        "Handmade",
        "handmade",
        "",
        "piece",
        "",
        "",
        "",
        "",
        "",
        320,
        3,
        "Bar 20 x 8",
        "",
        16,
        12,
        "",
        "",
        earliest);
    book.row(
        "Aluminium",
        "aluminium",
        "",
        "piece",
        new BigDecimal("9.40"),
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        8,
        "Wold Metals",
        earliest);
    book.row(
        "Bar 20 x 8",
        "bar",
        "",
        "bar",
        new BigDecimal("8.60"),
        "",
        "",
        "",
        "20 x 8 mm",
        "",
        "",
        "",
        3000,
        "",
        "",
        3,
        "Wold Metals",
        earliest);
    book.row(
        "Nail 5",
        "nail",
        "",
        "pack",
        "",
        250,
        new BigDecimal("24.50"),
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        500,
        "Wold Metals",
        earliest);
    book.row(
        "Pad",
        "pad",
        "",
        "pair",
        new BigDecimal("8.80"),
        "",
        "",
        13,
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        4,
        "Wold Metals",
        earliest);
    book.row(
        "Stud",
        "stud",
        "",
        "piece",
        new BigDecimal("1.10"),
        "",
        "",
        4,
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        16,
        "Wold Metals",
        earliest);
  }
}
