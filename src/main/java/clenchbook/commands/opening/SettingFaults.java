package clenchbook.commands.opening;

import clenchbook.billing.numbering.NumberPattern;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.book.SheetKind;
import clenchbook.jobs.Jobs;
import clenchbook.print.files.RefusedFile;
import clenchbook.print.invoice.LogoImage;
import clenchbook.problem.CellRef;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.texts.BookName;
import clenchbook.texts.Message;
import clenchbook.values.CreditorReference;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Settings that can be read but not used. */
public final class SettingFaults {
  private final Settings settings;
  private final List<Problem> problems = new ArrayList<>();

  private SettingFaults(Settings settings) {
    this.settings = settings;
  }

  static List<Problem> of(Jobs jobs, Path folder) {
    SettingFaults faults = new SettingFaults(jobs.index().book().settings());
    if (jobs.all().stream().anyMatch(job -> !job.cancelled())) {
      faults.whoIsPaidAndHow();
    }
    faults.pattern();
    faults.link();
    faults.logo(folder);
    faults.reference();
    return faults.problems;
  }

  /** The logo, where there is a usable one. */
  public static Optional<LogoImage> findLogo(Settings settings, Path folder) {
    String name = settings.text(Setting.LOGO);
    if (name.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(LogoImage.read(folder, name));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** An invoice should say whom to pay and how; an account or a link says how as well. */
  private void whoIsPaidAndHow() {
    missing(
        Setting.BUSINESS_NAME,
        settings.text(Setting.BUSINESS_NAME).isEmpty(),
        Message.of("commands.setting.noBusiness", called(Setting.BUSINESS_NAME)),
        Message.of("commands.setting.aBusiness"));
    boolean howToPay =
        Stream.of(Setting.PAYMENT_TEXT, Setting.IBAN, Setting.PAYMENT_LINK)
            .anyMatch(setting -> !settings.text(setting).isEmpty());
    missing(
        Setting.PAYMENT_TEXT,
        !howToPay,
        Message.of("commands.setting.noPaymentText", called(Setting.PAYMENT_TEXT)),
        Message.of("commands.setting.aPaymentText"));
  }

  private static BookName called(Setting setting) {
    return BookName.of(SheetKind.SETTINGS.title(), setting.title());
  }

  private void missing(Setting setting, boolean missing, Message told, Message expected) {
    if (!missing) {
      return;
    }
    CellRef place = settings.place(setting);
    problems.add(
        place.cell().isEmpty()
            ? Problem.note(ProblemKind.SETTING_MISSING, place, told, expected)
            : Problem.warning(ProblemKind.SETTING_MISSING, place, told, expected, ""));
  }

  private void pattern() {
    String pattern = settings.text(Setting.INVOICE_PATTERN);
    if (NumberPattern.parse(pattern).isEmpty()) {
      warn(
          ProblemKind.SETTING_UNUSABLE,
          Setting.INVOICE_PATTERN,
          Message.of("commands.setting.noPattern"),
          Message.of("commands.setting.aPattern", "{seq}", "{yyyy}-{seq:4}"));
    }
  }

  private void link() {
    String link = settings.text(Setting.PAYMENT_LINK);
    if (!link.isEmpty() && !link.startsWith("https://")) {
      warn(
          ProblemKind.PAYMENT_LINK_UNUSABLE,
          Setting.PAYMENT_LINK,
          Message.of("commands.setting.linkOff"),
          Message.of("commands.setting.aLink"));
    }
  }

  private void logo(Path folder) {
    String name = settings.text(Setting.LOGO);
    if (name.isEmpty()) {
      return;
    }
    try {
      LogoImage.read(folder, name);
    } catch (IOException e) {
      warn(
          ProblemKind.LOGO_UNUSABLE,
          Setting.LOGO,
          Message.of("commands.setting.logoOff", RefusedFile.why(e)),
          Message.of("commands.setting.aLogo"));
    }
  }

  /** Numbers grow: one of six digits has to fit too. */
  private void reference() {
    NumberPattern pattern =
        NumberPattern.parse(settings.text(Setting.INVOICE_PATTERN)).orElse(NumberPattern.DEFAULT);
    String number = pattern.number(LocalDate.of(2026, 1, 1), 999_999);
    boolean asked = settings.text(Setting.PAYMENT_REFERENCE).equals("rf");
    if (asked && CreditorReference.of(number).isEmpty()) {
      warn(
          ProblemKind.REFERENCE_REFUSED,
          Setting.PAYMENT_REFERENCE,
          Message.of("commands.setting.numberTooLong", number),
          Message.of("commands.setting.aShorterPattern", CreditorReference.LONGEST_BODY));
    }
  }

  private void warn(ProblemKind kind, Setting setting, Message what, Message expected) {
    CellRef cell = settings.cell(setting).orElse(CellRef.ofSheet("Settings"));
    problems.add(Problem.warning(kind, cell, what, expected, settings.text(setting)));
  }
}
