package clenchbook.matching;

import clenchbook.book.PaymentKind;
import java.math.BigDecimal;

/**
 * A row for Payments.
 *
 * @param owner the owner; empty where nobody is sure
 * @param amount the size, never negative
 * @param invoice the document it pays; empty for none in particular or not sure
 * @param kind payment, deposit or refund
 */
public record PaymentRow(String owner, BigDecimal amount, String invoice, PaymentKind kind) {}
