package clenchbook.tax.income;

import clenchbook.tax.year.Regime;
import java.time.LocalDate;

/** On which of the regime's lines income counts: one line in most countries. */
public interface IncomeLines {

  /** The code of the line for work sold. */
  String sold(Sold sold);

  /** The code of the line for money given back on such work. */
  String givenBack(Sold sold);

  /** The code of the line for tips, by the day received. */
  String tip(LocalDate day);

  /** The code of the line for money that pays no bill, by the day received. */
  String withoutBill(LocalDate day, boolean givenBack);

  /** All work on the regime's one line, all refunds on another. */
  static IncomeLines of(Regime.Codes codes) {
    return new IncomeLines() {
      @Override
      public String sold(Sold sold) {
        return codes.work();
      }

      @Override
      public String givenBack(Sold sold) {
        return codes.refunds();
      }

      @Override
      public String tip(LocalDate day) {
        return codes.tips();
      }

      @Override
      public String withoutBill(LocalDate day, boolean givenBack) {
        return givenBack ? codes.refunds() : codes.work();
      }
    };
  }
}
