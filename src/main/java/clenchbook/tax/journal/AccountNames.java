package clenchbook.tax.journal;

import clenchbook.tax.lines.LineHead;

/**
 * The names of the journal's accounts; income and cost accounts are named after the summary's
 * lines.
 */
public final class AccountNames {
  public static final String BANK = "Bank and cash";
  public static final String RECEIVABLE = "Owed by owners";
  public static final String PAYABLE = "Owed to suppliers";
  public static final String TAX_DUE = "Tax on sales";
  public static final String TAX_PAID = "Tax on purchases";
  public static final String BAD_DEBT_TAX = "Tax on bad debts";
  public static final String OWNER = "Owner's capital and drawings";
  public static final String ASSETS = "Assets at cost";
  public static final String DEPRECIATION = "Accumulated depreciation";
  public static final String DISPOSALS = "Disposal of assets";
  public static final String STOCK = "Stock";
  public static final String NOT_ALLOWED = "Costs that do not count for tax";
  public static final String UNKNOWN = "Costs without a known category";

  private AccountNames() {}

  public static String income(LineHead head) {
    return "Income: " + head.name();
  }

  public static String cost(LineHead head) {
    return "Cost: " + head.name();
  }
}
