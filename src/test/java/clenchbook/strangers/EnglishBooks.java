package clenchbook.strangers;

import static clenchbook.strangers.Kept.march;
import static clenchbook.strangers.Kept.money;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/** Books of farriers in Britain, Ireland, the United States and Australia. */
final class EnglishBooks {
  private static final String POUNDS = "\"£\"#,##0.00";

  private EnglishBooks() {}

  static List<StrangersBook> all() {
    return List.of(diary(), month(), clients(), export());
  }

  /**
   * One long table under a title, prices in the row, a mark for what was paid, sums at the foot.
   */
  private static StrangersBook diary() {
    Kept kept =
        Kept.xlsx("Shoeing diary")
            .sheet("Diary 2026")
            .row("Shoeing diary 2026")
            .row("please fill in the same evening!!")
            .blank()
            .head("No.|Day|Date|Client|Yard|Horse|What was done|Price|Paid?|Paid how|Remarks")
            .row(
                1,
                "Mon",
                march(2),
                "Mrs Ash",
                "Hill Farm",
                "Bramble",
                "full set",
                95,
                "Yes",
                "cash")
            .row(2, "Mon", march(2), "Mrs Ash", "Hill Farm", "Star", "trim", 40, "Yes", "cash")
            .row(3, "Tue", march(3), "Bob Birch", "Mill Lane", "Major", "fronts", 65, "No")
            .blank()
            .row(
                4,
                "Wed",
                march(11),
                "J. Cole",
                "Mill Lane",
                "Tess",
                "remedial",
                price("130.5"),
                "no")
            .row(
                5,
                "Wed",
                march(11),
                "BOB BIRCH",
                "Mill Lane",
                "Major",
                "lost shoe",
                25,
                "",
                "",
                "near fore, pulled in the field")
            .row(6, "Wed", LocalDate.of(2026, 4, 1), "Bob Birch", "Mill Lane", "Major", "refit", 70)
            .blank()
            .row("", "", "", "", "", "", "Total", price("425.5"));
    return StrangersBook.atOnce(
        "en, one table under a title, paid yes",
        Locale.UK,
        kept,
        "Bob Birch 90.00",
        "J. Cole 130.50",
        "Mrs Ash 135.00");
  }

  private static Kept.Shown price(String amount) {
    return new Kept.Shown(amount, POUNDS);
  }

  /** A sheet a month with day numbers, blank lines between days and a running total. */
  private static StrangersBook month() {
    Kept kept = Kept.xls("Book 2026");
    String head = "Day|Customer|Horse's name|Job|Amount £|Running total|Time taken";
    kept.sheet("February")
        .row("February 2026")
        .head(head)
        .row(27, "Dale Livery", "Pip", "Trim", 38, 38, "35 min");
    kept.sheet("March")
        .row("March 2026")
        .head(head)
        .row(4, "Dale Livery", "Pip", "Trim", 38, 38, "35 min")
        .row(4, "Dale Livery", "Otter", "Set of 4", 92, 130, "1:15")
        .blank()
        .row("5th", "Tom Elder", "Fly", "Trim", 38, 168, "30 min")
        .blank()
        .row("Sat 28", "Tom Elder", "Fly", "Two fronts", money("62.50"), money("230.50"), "45 mins")
        .row("", "", "", "Month's total", money("230.50"));
    kept.sheet("Notes").row("ring Dale about the grey").row("order rasps");
    return StrangersBook.atOnce(
        "en, a sheet a month with day numbers, running total",
        Locale.UK,
        kept,
        "Dale Livery 130.00",
        "Tom Elder 100.50");
  }

  /** A sheet for each client, the way an account book is kept. */
  private static StrangersBook clients() {
    Kept kept = Kept.xlsx("Accounts");
    String head = "Date|Horse|Work|Charged|Received|Balance due";
    kept.sheet("Nora Byrne")
        .row("Nora Byrne, Ballyowen")
        .head(head)
        .row(march(6), "Finn", "Full set", 90, "", 90)
        .row(march(6), "Molly", "Trim", 35, "", 125)
        .row(march(20), "Molly", "Trim", 35, "", 160);
    kept.sheet("P. Keane")
        .row("P. Keane, The Glen")
        .head(head)
        .row(march(9), "Rua", "Full set", 90, 50, 40)
        .row(march(23), "Rua", "Refit front", 40, "", 80);
    return StrangersBook.proposed(
        "en, a sheet for each client",
        new Locale("en", "IE"),
        kept,
        "Nora Byrne 160.00",
        "P. Keane 130.00");
  }

  /** What an accounts program or a telephone exports: month first, money with its sign. */
  private static StrangersBook export() {
    String text =
        """
        Service Date,Customer Name,Horse Name,Service,Unit,Total,Payment Method,Memo
        3/2/2026,"Hale, Dana",Dusty,Trim,ea,$55.00,Check,
        3/2/2026,"Hale, Dana",Pepper,Full Set,ea,"$1,150.00",Check,"glue-on, therapeutic"
        3/14/2026,Rex Orr,Chief,Reset,ea,$125.00,,
        3/17/2026,Rex Orr,Chief,Lost Shoe,ea,$40.00,,
        3/30/2026,Ivy Stone,Blue,Trim,ea,$55.00,Cash,
        """;
    return StrangersBook.proposed(
        "en, an exported list, month first",
        Locale.US,
        Kept.csv("services 2026", "UTF-8", text),
        "Hale, Dana 1205.00",
        "Ivy Stone 55.00",
        "Rex Orr 165.00");
  }
}
