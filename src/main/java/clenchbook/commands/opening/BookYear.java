package clenchbook.commands.opening;

import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.reading.rates.RateFiles;
import clenchbook.reading.rates.RefusedRatesException;
import clenchbook.tax.Jurisdictions;
import clenchbook.tax.rates.RateTables;
import clenchbook.tax.year.Regime;
import clenchbook.tax.year.YearStart;
import java.nio.file.Path;

/** When the year of a book begins, where no more of its rates is wanted. */
public final class BookYear {
  private BookYear() {}

  /**
   * The rule of a book, by its regime and the rates beside it. A regime that is not known has the
   * plain one's year, and rates that are refused are left out: that is told by {@code year-end}.
   */
  public static YearStart of(OpenBook open) {
    Settings settings = open.book().settings();
    Regime regime = Jurisdictions.orPlain(settings.text(Setting.TAX_REGIME)).regime();
    return YearStart.of(regime, settings, days(regime.table("year"), open.file()));
  }

  private static RateTables days(String table, Path book) {
    try {
      return RateFiles.one(table, OpenBook.folder(book).resolve("rates"));
    } catch (RefusedRatesException refused) {
      return RateFiles.one(table);
    }
  }
}
