package clenchbook.matching;

/** How a generated payment was made, and whether that leaves no doubt. */
enum PaymentCase {
  /** The number, and just what is open; the payer may be anybody. */
  NUMBER(true),
  /** The checked reference (ISO 11649). */
  REFERENCE(true),
  /** The number with one slip, the owner's name, just what is open. */
  SLIP(true),
  /** The owner's name, and what one invoice alone has open. */
  NAME(true),
  /** Several numbers, and their sum. */
  SUM_OF_NUMBERS(true),
  /** The owner's name, and all that is open. */
  SUM_BY_NAME(true),
  /** The number, the owner's name, less than is open. */
  PART(true),
  /** The number, the owner's name, more than is open. */
  OVER(true),
  /** A name that paid for this owner before, and just what is open. */
  PAID_BEFORE(true),
  /** A payment that came back, with the number or the payer's reference. */
  RETURNED(true),
  /** A refund that names its credit note. */
  REFUND(true),
  /** Just what is open, from a name nobody knows, without a number. */
  AMOUNT_ALONE(false),
  /** The owner's last name with another first name. */
  LAST_NAME(false),
  /** The owner's name, and a part of what is open, without a number. */
  PART_BY_NAME(false),
  /** The owner's name and the number of an invoice paid long ago. */
  OLD_NUMBER(false),
  /** The owner's name and a slip that makes another's number. */
  OTHERS_NUMBER(false),
  /** The same invoice once more. */
  TWICE(false),
  /** The owner's name where two invoices have the same amount open. */
  TWO_ALIKE(false),
  /** Money that has nothing to do with invoices, in and out. */
  OTHER(false);

  private final boolean clear;

  PaymentCase(boolean clear) {
    this.clear = clear;
  }

  /** Whether a careful bookkeeper would have no doubt. */
  boolean clear() {
    return clear;
  }
}
