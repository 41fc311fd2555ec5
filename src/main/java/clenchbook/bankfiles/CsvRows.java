package clenchbook.bankfiles;

import clenchbook.bankfiles.CsvHeadings.Meaning;
import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.bank.BankEntry.Standing;
import clenchbook.matching.bank.BankStatement;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** The rows of a bank's CSV below its headings. Not thread-safe. */
final class CsvRows {
  private static final Pattern PENDING =
      Pattern.compile("(?iu)pending|vorgemerkt|en attente|pendiente|gereserveerd|in behandeling");

  private final Map<Meaning, List<Integer>> columns;
  private final Hints hints;
  private final String file;
  private final Intake intake;
  private final CsvDays days = new CsvDays();
  private final RunningBalance balances = new RunningBalance();
  private final Set<String> accounts = new HashSet<>();
  private int witnessed;
  private int entries;
  private String account = "";
  private String currency = "";
  private Optional<LocalDate> first = Optional.empty();
  private Optional<LocalDate> last = Optional.empty();

  CsvRows(Map<Meaning, List<Integer>> columns, Hints hints, String file, Intake intake) {
    this.columns = columns;
    this.hints = hints;
    this.file = file;
    this.intake = intake;
  }

  /** Looks at a row before any is read. */
  void witness(List<String> cells) {
    days.witness(cell(cells, Meaning.DATE));
    days.witness(cell(cells, Meaning.VALUE_DATE));
    if (!cell(cells, Meaning.DATE).isEmpty() && accounts.size() < 2) {
      witnessed++;
      accounts.add(account(cells));
    }
  }

  /** One account on every row is the farrier's own, not that of everybody who paid. */
  private boolean isOwn() {
    return witnessed > 1 && accounts.size() == 1;
  }

  private String account(List<String> cells) {
    return cell(cells, Meaning.ACCOUNT).replace(" ", "");
  }

  void take(int number, List<String> cells) {
    Optional<LocalDate> day = day(cells, Meaning.DATE).or(() -> day(cells, Meaning.VALUE_DATE));
    Optional<BigDecimal> amount = amount(number, cells);
    if (day.isEmpty() && amount.isEmpty()) {
      return;
    }
    if (day.isEmpty()) {
      refuseUnlessSum(number, cells);
      return;
    }
    LocalDate date = day.get();
    if (amount.isEmpty() && isCarriedForward(cells)) {
      return;
    }
    BigDecimal money =
        amount.orElseThrow(
            () ->
                new UnreadableStatement(
                    Message.of("bankfiles.row.noAmount", Integer.toString(number))));
    entry(cells, date, money);
    first = first.filter(known -> known.isBefore(date)).or(() -> Optional.of(date));
    last = last.filter(known -> known.isAfter(date)).or(() -> Optional.of(date));
    CsvAmounts.read(cell(cells, Meaning.BALANCE)).ifPresent(after -> balances.add(money, after));
  }

  /** A row that only says what balance stood that day, or that nothing moved. */
  private boolean isCarriedForward(List<String> cells) {
    boolean bare =
        cell(cells, Meaning.AMOUNT).isEmpty()
            && isNothing(cell(cells, Meaning.CREDIT))
            && isNothing(cell(cells, Meaning.DEBIT));
    boolean noughts =
        !cell(cells, Meaning.CREDIT).isEmpty() || !cell(cells, Meaning.DEBIT).isEmpty();
    return bare && (noughts || CsvAmounts.read(cell(cells, Meaning.BALANCE)).isPresent());
  }

  private static boolean isNothing(String text) {
    return text.isEmpty() || CsvAmounts.read(text).filter(a -> a.signum() == 0).isPresent();
  }

  /** A sum at the foot has a blank where the day would be; another text there is a day misread. */
  private void refuseUnlessSum(int number, List<String> cells) {
    String day = cell(cells, Meaning.DATE);
    if (day.matches(".*\\d.*[./-].*\\d.*") && !day.matches(".*\\p{L}{4,}.*")) {
      throw new UnreadableStatement(
          Message.of("bankfiles.row.date", Integer.toString(number), Texts.line(day)));
    }
  }

  private Optional<LocalDate> day(List<String> cells, Meaning meaning) {
    return days.read(cell(cells, meaning), hints.monthFirst());
  }

  private Optional<BigDecimal> amount(int number, List<String> cells) {
    String signed = cell(cells, Meaning.AMOUNT);
    if (!signed.isEmpty()) {
      Optional<BigDecimal> amount = CsvAmounts.read(signed);
      String mark = cell(cells, Meaning.SIGN);
      return mark.isEmpty() ? amount : amount.map(size -> marked(number, size, mark));
    }
    Optional<BigDecimal> credit = side(cells, Meaning.CREDIT);
    Optional<BigDecimal> debit = side(cells, Meaning.DEBIT).map(BigDecimal::negate);
    return credit.or(() -> debit);
  }

  private static BigDecimal marked(int number, BigDecimal size, String mark) {
    int sign =
        CsvAmounts.sign(mark)
            .orElseThrow(
                () ->
                    new UnreadableStatement(
                        Message.of("bankfiles.row.sign", Integer.toString(number), mark)));
    return sign < 0 ? size.abs().negate() : size.abs();
  }

  /** What stands on one side; a nought there means the other side. */
  private Optional<BigDecimal> side(List<String> cells, Meaning meaning) {
    return CsvAmounts.read(cell(cells, meaning))
        .map(BigDecimal::abs)
        .filter(amount -> amount.signum() > 0);
  }

  private void entry(List<String> cells, LocalDate date, BigDecimal amount) {
    entries++;
    boolean in = amount.signum() > 0;
    String who =
        CamtReader.first(cell(cells, Meaning.WHO), cell(cells, in ? Meaning.PAYER : Meaning.PAYEE));
    String words = all(cells, Meaning.TEXT);
    String type = cell(cells, Meaning.TYPE);
    String code = cell(cells, Meaning.CURRENCY);
    account =
        CamtReader.first(
            account,
            cell(cells, Meaning.OWN_ACCOUNT).replace(" ", ""),
            isOwn() ? account(cells) : "");
    currency = CamtReader.first(currency, code);
    boolean pending = PENDING.matcher(cell(cells, Meaning.STATUS)).find();
    intake.entry(
        new BankEntry(
            intake.nextStatement(),
            Integer.toString(entries),
            date,
            amount,
            code,
            who,
            isOwn() ? "" : account(cells),
            words.isEmpty() ? type : words,
            "",
            cell(cells, Meaning.REFERENCE),
            cell(cells, Meaning.BANK_REFERENCE),
            pending ? Standing.PENDING : ReturnWords.standing(type + " " + words),
            "",
            Message.NONE));
  }

  private String cell(List<String> cells, Meaning meaning) {
    for (int column : columns.getOrDefault(meaning, List.of())) {
      if (column < cells.size() && !cells.get(column).isEmpty()) {
        return cells.get(column);
      }
    }
    return "";
  }

  private String all(List<String> cells, Meaning meaning) {
    String all = "";
    for (int column : columns.getOrDefault(meaning, List.of())) {
      all = column < cells.size() ? Texts.joined(all, cells.get(column)) : all;
    }
    return all;
  }

  void done() {
    intake.statement(
        new BankStatement(
            file,
            1,
            "",
            account,
            currency.isEmpty() ? hints.currency() : currency,
            first,
            last,
            balances.opening(),
            balances.closing(),
            false,
            true));
  }
}
