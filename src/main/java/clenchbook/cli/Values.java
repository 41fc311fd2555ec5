package clenchbook.cli;

import clenchbook.commands.opening.MachineLocale;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.function.Function;
import picocli.CommandLine;

/** How the words of a command line become values, and what is said of those that can't. */
final class Values {
  private static final int FIRST_YEAR = 1900;

  /** One before the last that is written with four digits, so that a year may still follow. */
  private static final int LAST_YEAR = 9998;

  private Values() {}

  static CommandLine register(CommandLine line) {
    // Said once: Java 17 can't lay two equal method references of one class into an archive.
    CommandLine.ITypeConverter<Integer> whole = Values::whole;
    return line.registerConverter(YearMonth.class, Values::month)
        .registerConverter(LocalDate.class, Values::day)
        .registerConverter(Path.class, Values::path)
        .registerConverter(BigDecimal.class, Values::number)
        .registerConverter(Integer.class, whole)
        .registerConverter(int.class, whole);
  }

  private static YearMonth month(String text) {
    YearMonth month = parsed(text, YearMonth::parse, "2026-10");
    requireYear(text, month.getYear(), "2026-10");
    return month;
  }

  private static LocalDate day(String text) {
    LocalDate day = parsed(text, LocalDate::parse, "2026-10-31");
    requireYear(text, day.getYear(), "2026-10-31");
    return day;
  }

  private static void requireYear(String text, int year, String example) {
    if (year < FIRST_YEAR || year > LAST_YEAR) {
      throw unreadable(text, Message.literal(example));
    }
  }

  /** A file or folder by its name; one that only points, such as {@code .}, by its full name. */
  private static Path path(String text) {
    if (text.isBlank()) {
      throw new Unreadable(Message.of("cli.nameEmpty"));
    }
    Path path = named(text);
    Path last = path.getFileName();
    boolean points = last == null || last.toString().equals(".") || last.toString().equals("..");
    return points ? path.toAbsolutePath().normalize() : path;
  }

  private static Path named(String text) {
    try {
      return Path.of(text);
    } catch (InvalidPathException e) {
      throw new Unreadable(Message.of("cli.cantNameFile", text, MachineLocale.hint(text)));
    }
  }

  private static BigDecimal number(String text) {
    return parsed(text, BigDecimal::new, "1.5");
  }

  /** Of a tax year written over two calendar years the first is offered. */
  private static Integer whole(String text) {
    String year = text.replaceFirst("^(\\d{4})[^\\d].*", "$1");
    return parsed(
        text,
        Integer::valueOf,
        year.matches("\\d{4}") ? Message.literal(year) : Message.of("cli.aWholeNumber"));
  }

  private static <T> T parsed(String text, Function<String, T> parse, String example) {
    return parsed(text, parse, Message.literal(example));
  }

  private static <T> T parsed(String text, Function<String, T> parse, Message example) {
    try {
      return parse.apply(text);
    } catch (DateTimeException | NumberFormatException e) {
      throw unreadable(text, example);
    }
  }

  private static Unreadable unreadable(String text, Message example) {
    return new Unreadable(Message.of("cli.cantRead", text, example));
  }
}
