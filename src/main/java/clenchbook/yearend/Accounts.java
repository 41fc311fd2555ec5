package clenchbook.yearend;

/**
 * The names of the journal's accounts; income and cost accounts are named after the summary's
 * lines.
 */
final class Accounts {
  static final String BANK = "Bank and cash";
  static final String RECEIVABLE = "Owed by owners";
  static final String PAYABLE = "Owed to suppliers";
  static final String TAX_DUE = "Tax on sales";
  static final String TAX_PAID = "Tax on purchases";
  static final String BAD_DEBT_TAX = "Tax on bad debts";
  static final String OWNER = "Owner's capital and drawings";
  static final String ASSETS = "Assets at cost";
  static final String DEPRECIATION = "Accumulated depreciation";
  static final String DISPOSALS = "Disposal of assets";
  static final String STOCK = "Stock";
  static final String NOT_ALLOWED = "Costs that do not count for tax";
  static final String UNKNOWN = "Costs without a known category";

  private Accounts() {}

  static String income(LineHead head) {
    return "Income: " + head.name();
  }

  static String cost(LineHead head) {
    return "Cost: " + head.name();
  }
}
