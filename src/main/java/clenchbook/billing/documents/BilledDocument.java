package clenchbook.billing.documents;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * An invoice or a credit note.
 *
 * @param number its number, never given twice
 * @param series what the sequence counts within: the year where the pattern holds it, else empty
 * @param sequence its place in the series, from 1
 * @param kind invoice or credit note
 * @param owner who is billed, as Owners spells it
 * @param month the month it belongs to
 * @param date the month's last day
 * @param due the last day to pay; the date itself for a credit note
 * @param corrects the number a credit note takes back from; empty for an invoice
 * @param state how far it has come
 * @param lines its lines, in the order printed
 * @param taxes its tax by code
 * @param net the sum of the lines without tax; negative on a credit note
 * @param tax the sum of the taxes
 * @param gross net and tax: what is charged
 */
public record BilledDocument(
    String number,
    String series,
    int sequence,
    Kind kind,
    String owner,
    YearMonth month,
    LocalDate date,
    LocalDate due,
    String corrects,
    DocumentState state,
    List<DocumentLine> lines,
    List<TaxTotal> taxes,
    BigDecimal net,
    BigDecimal tax,
    BigDecimal gross) {

  /** What a document is. */
  public enum Kind {
    /** It charges. */
    INVOICE,
    /** It takes back. */
    CREDIT_NOTE
  }

  /** Copies its lists. */
  public BilledDocument {
    lines = List.copyOf(lines);
    taxes = List.copyOf(taxes);
  }

  /**
   * The same document in another state.
   *
   * @param next the state
   * @return the document
   */
  public BilledDocument in(DocumentState next) {
    return with(owner, next, lines, taxes, UnaryOperator.identity());
  }

  /**
   * The same number with nothing on it.
   *
   * @return void
   */
  public BilledDocument voided() {
    BigDecimal zero = net.subtract(net);
    return with(owner, DocumentState.VOID, List.of(), List.of(), amount -> zero);
  }

  /**
   * Whether two documents say the same, whatever their state and wherever their rows stood when
   * they were made.
   *
   * @param other another document
   * @return true where owners, days, lines and amounts are the same
   */
  public boolean saysTheSame(BilledDocument other) {
    if (lines.size() != other.lines().size()) {
      return false;
    }
    for (int place = 0; place < lines.size(); place++) {
      if (!lines.get(place).saysTheSame(other.lines().get(place))) {
        return false;
      }
    }
    return equals(other.in(state).bearing(lines));
  }

  /**
   * The same document under another name of its owner.
   *
   * @param name as the owner is called now
   * @return the document
   */
  public BilledDocument ownedBy(String name) {
    return with(name, state, lines, taxes, UnaryOperator.identity());
  }

  /** The same document with other lines under its sums. */
  BilledDocument bearing(List<DocumentLine> otherLines) {
    return with(owner, state, otherLines, taxes, UnaryOperator.identity());
  }

  private BilledDocument with(
      String name,
      DocumentState next,
      List<DocumentLine> otherLines,
      List<TaxTotal> otherTaxes,
      UnaryOperator<BigDecimal> sums) {
    return new BilledDocument(
        number,
        series,
        sequence,
        kind,
        name,
        month,
        date,
        due,
        corrects,
        next,
        otherLines,
        otherTaxes,
        sums.apply(net),
        sums.apply(tax),
        sums.apply(gross));
  }

  /**
   * Whether it counts: it is not void.
   *
   * @return false for a void one
   */
  public boolean counts() {
    return state != DocumentState.VOID;
  }

  /**
   * Whether all it bears is outside the scope of tax, and so stands apart from the owner's other
   * lines.
   *
   * @return false for a document without lines
   */
  public boolean outsideScope() {
    return !lines.isEmpty() && lines.stream().allMatch(line -> line.tax().outsideScope());
  }

  /**
   * Whether it is an invoice.
   *
   * @return false for a credit note
   */
  public boolean invoice() {
    return kind == Kind.INVOICE;
  }
}
