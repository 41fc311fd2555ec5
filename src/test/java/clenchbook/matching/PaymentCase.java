package clenchbook.matching;

/** How a generated payment was made, and whether that leaves no doubt. */
enum PaymentCase {
  /** The number, and just what is open; the payer may be anybody. */
  NUMBER(true, "number"),
  /** The checked reference (ISO 11649). */
  REFERENCE(true, "checked reference"),
  /** The number with one slip, the owner's name, just what is open. */
  SLIP(true, "number with one slip, and name"),
  /** The owner's name, and what one invoice alone has open. */
  NAME(true, "name and amount"),
  /** Several numbers, and their sum. */
  SUM_OF_NUMBERS(true, "sum, numbers named"),
  /** The owner's name, and all that is open. */
  SUM_BY_NAME(true, "sum, by name"),
  /** The number, the owner's name, less than is open. */
  PART(true, "part, number"),
  /** The number, the owner's name, more than is open. */
  OVER(true, "too much, number"),
  /** A name that paid for this owner before, and just what is open. */
  PAID_BEFORE(true, "a name that paid before"),
  /** A payment that came back, with the number or the payer's reference. */
  RETURNED(true, "came back"),
  /** A refund that names its credit note. */
  REFUND(true, "refund, credit note named"),
  /** Just what is open, from a name nobody knows, without a number. */
  AMOUNT_ALONE(false, "amount alone"),
  /** The owner's last name with another first name. */
  LAST_NAME(false, "last name only"),
  /** The owner's name, and what an older invoice has open, while the latest is larger. */
  OLDER(false, "name, an older invoice while the latest is larger"),
  /** The owner's name, and a part of what is open, without a number. */
  PART_BY_NAME(false, "part, by name"),
  /** The owner's name and the number of an invoice paid long ago. */
  OLD_NUMBER(false, "name, number of an old invoice"),
  /** The owner's name and a slip that makes another's number. */
  OTHERS_NUMBER(false, "name, somebody else's number"),
  /** The same invoice once more. */
  TWICE(false, "the same invoice twice"),
  /** The owner's name where two invoices have the same amount open. */
  TWO_ALIKE(false, "two invoices of one amount"),
  /** Money that has nothing to do with invoices, in and out. */
  OTHER(false, "other money");

  private final boolean clear;
  private final String words;

  PaymentCase(boolean clear, String words) {
    this.clear = clear;
    this.words = words;
  }

  /** How the docs call it. */
  String words() {
    return words;
  }

  /** Whether a careful bookkeeper would have no doubt. */
  boolean clear() {
    return clear;
  }
}
