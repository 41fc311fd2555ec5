package clenchbook.reading;

import clenchbook.reading.texts.TextFiles;
import clenchbook.texts.TextSource;
import clenchbook.texts.Texts;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;

/**
 * How a workbook is read.
 *
 * @param password for an encrypted workbook; empty when none is known
 * @param machine the machine's locale, for what the book leaves blank
 * @param headings the file that serves as the sheet Headings; empty for the one beside the book
 * @param texts where the texts of the farrier's language come from
 * @param language is told the farrier's language once, as soon as the settings are read
 * @param progress is told, now and then, how many rows have been read
 */
public record ReadOptions(
    Optional<String> password,
    Locale machine,
    Optional<Path> headings,
    TextSource texts,
    Consumer<Texts> language,
    IntConsumer progress) {
  /** Options with the program's own texts. */
  public ReadOptions(
      Optional<String> password, Locale machine, Optional<Path> headings, IntConsumer progress) {
    this(password, machine, headings, TextFiles.OWN, unused -> {}, progress);
  }

  /** Options without a file of headings. */
  public ReadOptions(Optional<String> password, Locale machine, IntConsumer progress) {
    this(password, machine, Optional.empty(), progress);
  }

  /**
   * Options without password and without progress.
   *
   * @param machine the machine's locale
   * @return the options
   */
  public static ReadOptions of(Locale machine) {
    return new ReadOptions(Optional.empty(), machine, rows -> {});
  }
}
