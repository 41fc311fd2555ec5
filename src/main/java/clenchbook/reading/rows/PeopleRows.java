package clenchbook.reading.rows;

import clenchbook.book.HorseRow;
import clenchbook.book.Owner;
import clenchbook.book.Place;
import clenchbook.book.StrainRating;
import clenchbook.book.Task;
import clenchbook.book.einvoice.EInvoiceWish;
import clenchbook.problem.ProblemKind;
import clenchbook.reading.cells.Measure;
import clenchbook.reading.cells.RowCells;
import clenchbook.reading.words.Choices;
import clenchbook.reading.words.CountryNames;
import clenchbook.reading.words.LanguageNames;
import clenchbook.texts.Message;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Rows of Owners, Horses, Places and Strain. */
final class PeopleRows {
  private static final Message E_INVOICES = Message.of("rows.choice.eInvoice");
  private static final Message TASKS = Message.of("rows.choice.task");

  private PeopleRows() {}

  /** The owner; empty when the name is missing. */
  static Optional<Owner> owner(RowCells row) {
    Owner owner =
        new Owner(
            row.source(),
            row.name("Owner"),
            row.text("Invoice name"),
            row.lines("Address"),
            row.text("Postcode"),
            row.text("City"),
            row.text("Email"),
            row.whole("Terms days", Measure.DAY),
            row.yesNo("Tax exempt").orElse(false),
            row.text("Exempt reason"),
            row.text("Tax number"),
            country(row),
            language(row),
            row.percent("Discount %"),
            row.signedListMoney("Opening balance"),
            eInvoice(row),
            formerly(row));
    return PriceRows.named(row, "Owner", owner.name()) ? Optional.of(owner) : Optional.empty();
  }

  private static EInvoiceWish eInvoice(RowCells row) {
    return new EInvoiceWish(
        row.choice("E-invoice", Choices.E_INVOICE, E_INVOICES),
        row.text("Buyer reference"),
        row.text("E-invoice address"));
  }

  /** Earlier names, parted by semicolons or line ends. */
  private static List<String> formerly(RowCells row) {
    return Stream.of(row.lines("Formerly").split("[;\n]"))
        .map(String::strip)
        .filter(name -> !name.isEmpty())
        .toList();
  }

  /** The country's code; a country nobody knows counts as blank, and so as the book's. */
  private static String country(RowCells row) {
    Optional<String> code = CountryNames.code(row.name("Country"));
    if (code.isEmpty() && row.has("Country")) {
      row.warn(
          ProblemKind.CHOICE_UNKNOWN,
          "Country",
          Message.of("rows.owner.unknownCountry"),
          Message.of("rows.setting.country"));
    }
    return code.orElse("");
  }

  /** The language's code; a language nobody knows counts as blank, and so as the book's. */
  private static String language(RowCells row) {
    Optional<String> code = LanguageNames.code(row.name("Language"));
    if (code.isEmpty() && row.has("Language")) {
      row.warn(
          ProblemKind.CHOICE_UNKNOWN,
          "Language",
          Message.of("rows.owner.unknownLanguage"),
          Message.of("rows.setting.language"));
    }
    return code.orElse("");
  }

  /** The horse, or one sharer's part of it; empty when its name is missing. */
  static Optional<HorseRow> horse(RowCells row) {
    HorseRow horse =
        new HorseRow(
            row.source(),
            row.name("Horse"),
            row.name("Owner"),
            row.percent("Share %"),
            row.name("Bill to"),
            row.name("Place"),
            row.measure("Interval weeks", Measure.WEEK),
            row.date("From"),
            row.date("Until"),
            row.lines("Notes"));
    return PriceRows.named(row, "Horse", horse.horse()) ? Optional.of(horse) : Optional.empty();
  }

  /** The place; empty when its name is missing. */
  static Optional<Place> place(RowCells row) {
    Place place =
        new Place(
            row.source(),
            row.name("Place"),
            row.lines("Address"),
            row.distance("Distance"),
            row.minutes("Drive min"));
    return PriceRows.named(row, "Place", place.name()) ? Optional.of(place) : Optional.empty();
  }

  /** The rating; empty when its task is not known. */
  static Optional<StrainRating> strain(RowCells row) {
    Optional<Task> task = row.choice("Task", Choices.TASK, TASKS);
    if (!row.has("Task")) {
      row.warn(
          ProblemKind.NAME_MISSING, "Task", Message.of("cells.missing", row.called("Task")), TASKS);
    }
    StrainRating rating =
        new StrainRating(
            row.source(),
            task.orElse(Task.TRIM),
            row.number("Effort CR10"),
            row.number("Efforts per min"),
            row.measure("Seconds per effort", Measure.SECOND),
            row.signedMeasure("Wrist deg", Measure.DEGREE),
            row.name("Wrist direction"),
            row.measure("Vibration m/s2", Measure.METRES_PER_SECOND_SQUARED),
            row.measure("Noise dBA", Measure.DECIBEL),
            row.measure("Trunk deg", Measure.DEGREE),
            row.measure("Longest hold s", Measure.SECOND),
            row.number("Blows per shoe"));
    return task.isPresent() ? Optional.of(rating) : Optional.empty();
  }
}
