package clenchbook.commands.opening;

import clenchbook.delivery.CredentialReader;
import clenchbook.reading.texts.TextFiles;
import clenchbook.reading.words.StarterNames;
import clenchbook.texts.TextSource;
import clenchbook.texts.Texts;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

/**
 * What a run takes from the machine it runs on, and the words that it is told to read by.
 *
 * @param today the day of the run, or the day that stands for it
 * @param locale the machine's locale, for country, currency and language where the book is silent
 * @param password the password of an encrypted workbook
 * @param headings the file that serves as the sheet Headings; empty for the one beside the book
 * @param texts where the texts of each language come from
 */
public record Machine(
    LocalDate today,
    Locale locale,
    Optional<String> password,
    Optional<Path> headings,
    TextSource texts) {
  /** A machine that is told of no file of headings. */
  public Machine(LocalDate today, Locale locale, Optional<String> password) {
    this(today, locale, password, Optional.empty(), TextFiles.OWN);
  }

  /** Where the password of an encrypted workbook is looked for. */
  public static final String PASSWORD_VARIABLE = "CLENCHBOOK_WORKBOOK_PASSWORD";

  /**
   * This machine.
   *
   * @param today the day given on the command line; empty for the clock's
   * @return its day, locale and environment
   */
  public static Machine here(Optional<LocalDate> today) {
    return new Machine(
        today.orElseGet(() -> LocalDate.now(java.time.ZoneId.systemDefault())),
        MachineLocale.own(),
        Optional.ofNullable(System.getenv(PASSWORD_VARIABLE)));
  }

  /**
   * The same, with a file of headings.
   *
   * @param file given on the command line; empty for the one beside the book
   */
  public Machine readingBy(Optional<Path> file) {
    return new Machine(today, locale, password, file, texts);
  }

  /** What the program says in the machine's own language, as long as no book asks for another. */
  public Texts words() {
    String language = locale.getLanguage();
    return Texts.of(language, locale.getCountry(), texts).naming(new StarterNames(language));
  }

  /**
   * Where this machine keeps the password of the mail server.
   *
   * @return the environment, else the file in the user's own folder of settings
   */
  public static CredentialReader mailPasswords() {
    Path home = Path.of(System.getProperty("user.home"));
    return new CredentialReader(
        System.getenv(), CredentialReader.customaryFile(System.getenv(), home));
  }
}
