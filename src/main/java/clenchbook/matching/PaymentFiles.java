package clenchbook.matching;

import clenchbook.matching.bank.AccountMask;
import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.bank.BankStatement;
import clenchbook.matching.known.Ledger;
import clenchbook.texts.Texts;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The three files as rows of texts: what may be pasted into Payments, what is left, and what is
 * there already. Account numbers are hidden but for their last four signs.
 */
public final class PaymentFiles {
  /** The columns of {@code payments-to-add.csv}: those of Payments, then why. */
  public static final List<String> TO_ADD =
      List.of(
          "Date",
          "Owner",
          "Amount",
          "Invoice",
          "Kind",
          "How",
          "Reference",
          "sure",
          "why",
          "statement",
          "entry");

  /** The columns of {@code unmatched.csv} and {@code already-there.csv}. */
  public static final List<String> LEFT =
      List.of("date", "amount", "who", "text", "statement", "entry", "why");

  private static final String HOW = "transfer";
  private static final int LONGEST_TEXT = 300;

  private final List<BankStatement> statements;
  private final MatchResult result;
  private final AccountMask mask;
  private final int digits;
  private final Texts texts;

  /**
   * Makes them.
   *
   * @param ledger the book and the register
   * @param statements the statements read
   * @param result where the entries went
   * @param digits decimals of the currency
   * @param texts the language in which they say why
   */
  public PaymentFiles(
      Ledger ledger, List<BankStatement> statements, MatchResult result, int digits, Texts texts) {
    this.statements = statements;
    this.result = result;
    this.mask = new AccountMask(Matching.invoiceNumbers(ledger));
    this.digits = digits;
    this.texts = texts;
  }

  /**
   * The rows of {@code payments-to-add.csv}.
   *
   * @return in the order of the entries
   */
  public Stream<List<String>> toAdd() {
    return result.toAdd().stream().flatMap(this::rows);
  }

  private Stream<List<String>> rows(Proposal proposal) {
    BankEntry entry = proposal.entry();
    String why = mask.hide(texts.say(proposal.why()), accounts(entry));
    return proposal.rows().stream()
        .map(
            row ->
                List.of(
                    entry.date().toString(),
                    row.owner(),
                    plain(row.amount()),
                    row.invoice(),
                    row.kind().word(),
                    HOW,
                    proposal.reference(),
                    Integer.toString(proposal.sure()),
                    why,
                    statement(entry),
                    entry.label()));
  }

  /**
   * The rows of {@code unmatched.csv}.
   *
   * @return in the order of the entries
   */
  public Stream<List<String>> unmatched() {
    return result.unmatched().stream().map(this::row);
  }

  /**
   * The rows of {@code already-there.csv}.
   *
   * @return in the order of the entries
   */
  public Stream<List<String>> alreadyThere() {
    return result.alreadyThere().stream().map(this::row);
  }

  private List<String> row(LeftEntry left) {
    BankEntry entry = left.entry();
    List<String> accounts = accounts(entry);
    String text = entry.text().isEmpty() ? entry.endToEnd() : entry.text();
    return List.of(
        entry.date().toString(),
        plain(entry.amount()),
        mask.hide(entry.who(), accounts),
        cut(mask.hide(text, accounts)),
        statement(entry),
        entry.label(),
        texts.say(left.why()));
  }

  private List<String> accounts(BankEntry entry) {
    List<String> accounts = new ArrayList<>(2);
    accounts.add(entry.account());
    accounts.add(statements.get(entry.statement()).account());
    return accounts;
  }

  private String statement(BankEntry entry) {
    return statements.get(entry.statement()).name();
  }

  /** With the currency's decimals, and more only where the bank gives more. */
  private String plain(BigDecimal amount) {
    return amount.scale() < digits || amount.stripTrailingZeros().scale() <= digits
        ? amount.setScale(digits, RoundingMode.UNNECESSARY).toPlainString()
        : amount.toPlainString();
  }

  private static String cut(String text) {
    return text.length() > LONGEST_TEXT ? text.substring(0, LONGEST_TEXT) : text;
  }
}
