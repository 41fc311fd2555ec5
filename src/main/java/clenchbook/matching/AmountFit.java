package clenchbook.matching;

/** How an amount fits what is open. */
enum AmountFit {
  /** What is open of one invoice. */
  EXACT,
  /** What several invoices of one owner have open together. */
  SUM,
  /** All that the owner owes, older balance included. */
  BALANCE,
  /** Less than is open. */
  PART,
  /** More than is open. */
  OVER,
  /** No invoice in particular. */
  NONE
}
