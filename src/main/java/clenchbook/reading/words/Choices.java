package clenchbook.reading.words;

import clenchbook.book.MaterialKind;
import clenchbook.book.PaymentKind;
import clenchbook.book.Reason;
import clenchbook.book.Shaping;
import clenchbook.book.Task;
import clenchbook.book.TaxKind;
import clenchbook.book.Unit;
import clenchbook.book.einvoice.EInvoiceForm;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * The few words that a column may hold, with the other words in use for them in all the languages
 * that the program knows. Keys are bare.
 */
public final class Choices {
  public static final Map<String, Shaping> SHAPING =
      words("Shaping", List.of(Shaping.values()), Shaping::word);

  public static final Map<String, Reason> REASON =
      words("Reason", List.of(Reason.values()), Reason::word);

  public static final Map<String, PaymentKind> PAYMENT =
      words("Payment kind", List.of(PaymentKind.values()), PaymentKind::word);

  public static final Map<String, MaterialKind> MATERIAL =
      words("Material kind", List.of(MaterialKind.values()), MaterialKind::word);

  public static final Map<String, Unit> UNIT = words("Unit", List.of(Unit.values()), Unit::word);

  public static final Map<String, TaxKind> TAX =
      words("Tax kind", List.of(TaxKind.values()), TaxKind::word);

  public static final Map<String, EInvoiceForm> E_INVOICE =
      words("E-invoice", List.of(EInvoiceForm.values()), EInvoiceForm::word);

  public static final Map<String, Task> TASK = words("Task", List.of(Task.values()), Task::word);

  /** Whether a row of Work is a fee. */
  public static final Map<String, Boolean> FEE =
      words("Job or fee", List.of(false, true), fee -> fee ? "fee" : "job");

  private Choices() {}

  private static <T> Map<String, T> words(
      String list, List<T> choices, Function<T, String> nameOf) {
    return new ChoiceWords<>(list, choices, nameOf);
  }
}
