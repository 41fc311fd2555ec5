package clenchbook.bankfiles;

import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.bank.BankEntry.Standing;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** One statement line, field 61, with the field 86 that explains it. */
final class Mt940Entry {
  private static final Pattern LINE =
      Pattern.compile(
          "^(\\d{6})\\s*(\\d{4})?\\s*(R?[CD]|E[CD])([A-Z])?\\s*([\\d,.]{1,20})"
              + "\\s*([NFS][A-Z0-9]{3})?(.*)$");

  private static final String WITHOUT_REFERENCE = "NONREF";

  private final String label;
  private final LocalDate date;
  private final BigDecimal amount;
  private final String mark;
  private final String type;
  private final String customerReference;
  private final String bankReference;
  private final String supplement;
  private Mt940Details details = Mt940Details.NONE;

  Mt940Entry(String label, List<String> lines) {
    this.label = label;
    String first = lines.get(0).strip();
    Matcher found = LINE.matcher(first);
    if (!found.matches()) {
      throw new UnreadableStatement(Message.of("bankfiles.entry.line", label));
    }
    LocalDate value = day(found.group(1));
    date = booked(value, found.group(2));
    mark = found.group(3);
    BigDecimal size = amount(found.group(5));
    // A reversed credit takes money away; a reversed debit brings it back.
    boolean in = mark.equals("C") || mark.equals("RD") || mark.equals("EC");
    amount = in ? size : size.negate();
    type = found.group(6) == null ? "" : found.group(6);
    String references = found.group(7).strip();
    int bank = references.indexOf("//");
    String own = bank >= 0 ? references.substring(0, bank) : references;
    customerReference = own.equals(WITHOUT_REFERENCE) ? "" : Texts.line(own);
    String banks = bank >= 0 ? references.substring(bank + 2) : "";
    bankReference = banks.equals(WITHOUT_REFERENCE) ? "" : Texts.line(banks);
    supplement = Texts.line(String.join(" ", lines.subList(1, lines.size())));
  }

  /** Banks that count 30 days a month write 30 February; the month's last day is meant. */
  private LocalDate day(String digits) {
    String full = century(digits);
    boolean thirtieth = full.endsWith("0229") || full.endsWith("0230");
    String first = full.substring(0, 6) + "01";
    return Texts.compactDay(full)
        .or(
            () ->
                thirtieth
                    ? Texts.compactDay(first).map(day -> day.plusMonths(1).minusDays(1))
                    : Optional.empty())
        .orElseThrow(
            () -> new UnreadableStatement(Message.of("bankfiles.entry.noDay", label, digits)));
  }

  /** The booking day has no year: the one that brings it nearest to the day of value. */
  private static LocalDate booked(LocalDate value, @Nullable String day) {
    if (day == null) {
      return value;
    }
    Optional<LocalDate> best = Optional.empty();
    for (int year = value.getYear() - 1; year <= value.getYear() + 1; year++) {
      Optional<LocalDate> candidate = day(year, day);
      boolean nearer =
          candidate.isPresent()
              && (best.isEmpty() || distance(candidate.get(), value) < distance(best.get(), value));
      best = nearer ? candidate : best;
    }
    return best.orElse(value);
  }

  private static Optional<LocalDate> day(int year, String monthAndDay) {
    try {
      return Optional.of(
          LocalDate.of(
              year,
              Integer.parseInt(monthAndDay.substring(0, 2)),
              Integer.parseInt(monthAndDay.substring(2))));
    } catch (DateTimeException noSuchDay) {
      return Optional.empty();
    }
  }

  private static long distance(LocalDate one, LocalDate other) {
    return Math.abs(one.toEpochDay() - other.toEpochDay());
  }

  /** Two digits of a year become four; 70 to 99 are of the last century. */
  static String century(String sixDigits) {
    return (sixDigits.charAt(0) >= '7' ? "19" : "20") + sixDigits;
  }

  /** An amount with its comma; nothing behind it is allowed. */
  static BigDecimal amount(String text) {
    return Texts.decimal(text.replace(',', '.'))
        .orElseThrow(() -> new UnreadableStatement(Message.of("bankfiles.amount", text)));
  }

  void details(List<String> lines) {
    details = Mt940Details.of(lines);
  }

  BankEntry made(int statement, String currency) {
    String text = Texts.joined(details.text(), details.structured() ? "" : supplement);
    return new BankEntry(
        statement,
        label,
        date,
        amount,
        currency,
        details.who(),
        details.account(),
        text.isEmpty() ? details.posting() : text,
        details.creditorReference(),
        details.endToEnd().isEmpty() ? customerReference : details.endToEnd(),
        bankReference,
        standing(text),
        "",
        Message.NONE);
  }

  private Standing standing(String text) {
    if (mark.startsWith("E")) {
      return Standing.PENDING;
    }
    if (mark.startsWith("R") || type.equals("NRTI") || details.returned()) {
      return Standing.RETURNED;
    }
    boolean charge = (type.equals("NCHG") || type.equals("NINT")) && details.who().isEmpty();
    return charge ? Standing.CHARGE : ReturnWords.standing(details.posting() + " " + text);
  }
}
