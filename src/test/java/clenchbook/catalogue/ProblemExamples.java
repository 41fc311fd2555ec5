package clenchbook.catalogue;

import clenchbook.problem.ProblemKind;
import clenchbook.workbook.SmallBook;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** A small book for each kind of problem, with what the catalogue says about it. */
final class ProblemExamples {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 14);
  private static final String VISITS = "Date|Owner|Horse|Work|Charge";

  private final List<Example> examples = new ArrayList<>();

  /**
   * One kind of problem.
   *
   * @param title what is wrong, as a heading
   * @param remedy what the farrier can do
   * @param book writes the book that shows it into a folder
   */
  record Example(ProblemKind kind, String title, String remedy, Function<Path, Path> book) {}

  private ProblemExamples() {}

  static List<Example> all() {
    ProblemExamples all = new ProblemExamples();
    all.cells();
    all.sheets();
    all.betweenSheets();
    all.trade();
    all.documents();
    return all.examples;
  }

  private void add(ProblemKind kind, String title, String remedy, SmallBook book) {
    examples.add(new Example(kind, title, remedy, book::write));
  }

  /** A book of visits with one row. */
  private static SmallBook visit(String headings, Object... cells) {
    return SmallBook.visits(headings).visit(cells);
  }

  private static SmallBook good() {
    return visit(VISITS, DAY, "Ann", "Bramble", "Trim", 45);
  }

  private static SmallBook setting(String name, Object value) {
    return good().sheet("Settings", "Setting|Value").row("Settings", name, value);
  }

  private void cells() {
    add(
        ProblemKind.DATE_MISSING,
        "A date is missing",
        "Put the day in. Only a day lets a row be billed in the right month. Where one date stands"
            + " for several rows, merge the cells or repeat the date.",
        visit(VISITS, "", "Ann", "Bramble", "Trim", 45));
    add(
        ProblemKind.DATE_UNREADABLE,
        "A date can't be read",
        "Type a day that there is; 2026-03-14 is understood everywhere. A cell formatted as a date"
            + " is best.",
        visit(VISITS, "tomorow", "Ann", "Bramble", "Trim", 45));
    add(
        ProblemKind.DATE_AMBIGUOUS,
        "A date may mean two days",
        "Set Date order in Settings (dmy or mdy), or make the cell a true date. The program does"
            + " not guess.",
        visit(VISITS, "03/04/2026", "Ann", "Bramble", "Trim", 45));
    add(
        ProblemKind.DATE_OTHER_ORDER,
        "A date stands in another order than the book's",
        "Nothing, if the day is right: it can only mean this one. Else mend the date.",
        visit(VISITS, "03/14/2026", "Ann", "Bramble", "Trim", 45)
            .sheet("Settings", "Setting|Value")
            .row("Settings", "Date order", "dmy"));
    add(
        ProblemKind.DATE_WITHOUT_FORMAT,
        "A date has lost its format",
        "Format the column as dates. The number is the day's, so it is read all the same.",
        visit(VISITS, 46095, "Ann", "Bramble", "Trim", 45));
    add(
        ProblemKind.MONEY_UNREADABLE,
        "An amount of money can't be read",
        "Put in the amount alone. An amount in another currency than the book's can't be read"
            + " either.",
        visit(VISITS, DAY, "Ann", "Bramble", "Trim", "as agreed"));
    add(
        ProblemKind.MONEY_NEGATIVE,
        "A charge is below nothing",
        "Put in what was charged, 0 for a free visit. Money paid back belongs in Payments, Kind"
            + " refund.",
        visit(VISITS, DAY, "Ann", "Bramble", "Trim", -45));
    add(
        ProblemKind.NUMBER_UNREADABLE,
        "A number can't be read",
        "Put in the number alone. Until then the cell counts as blank.",
        visit(
            "Date|Owner|Horse|Work|Charge|Lost", DAY, "Ann", "Bramble", "Trim", 45, "one or two"));
    add(
        ProblemKind.NUMBER_OTHER_MARK,
        "A number has another decimal mark than the book's country",
        "Nothing, if the number is right. Else mend it, or set Country in Settings.",
        visit(VISITS, DAY, "Ann", "Bramble", "Trim", "45,50"));
    add(
        ProblemKind.NUMBER_OUT_OF_RANGE,
        "A number can't be so",
        "Mend the number. Until then the cell counts as blank.",
        visit("Date|Owner|Horse|Work|Charge|Lost", DAY, "Ann", "Bramble", "Trim", 45, -1));
    add(
        ProblemKind.MINUTES_UNREADABLE,
        "Minutes can't be read",
        "Put in minutes, as 45 or 0:45.",
        visit(
            "Date|Owner|Horse|Work|Charge|Total min",
            DAY,
            "Ann",
            "Bramble",
            "Trim",
            45,
            "an hour or so"));
    add(
        ProblemKind.YES_NO_UNREADABLE,
        "Neither yes nor no",
        "Write yes or no. Until then it counts as no.",
        good().sheet("Owners", "Owner|Tax exempt").row("Owners", "Ann", "perhaps"));
    add(
        ProblemKind.CHOICE_UNKNOWN,
        "A word is none of those that the column may hold",
        "Choose one of the words that are expected. Until then the cell counts as blank.",
        visit("Date|Owner|Horse|Work|Charge|Shaping", DAY, "Ann", "Bramble", "Trim", 45, "tepid"));
    add(
        ProblemKind.SECTION_UNREADABLE,
        "A section of bar can't be read",
        "Write it as 3/4 x 5/16 in, or 20 x 8 mm.",
        good()
            .sheet("Materials", "Item|Kind|Section")
            .row("Materials", "Flat bar", "bar", "thick"));
    add(
        ProblemKind.ERROR_CELL,
        "A cell holds an error",
        "Mend the formula, or type the value.",
        visit(VISITS, DAY, "Ann", "Bramble", "Trim", SmallBook.error("#REF!")));
    add(
        ProblemKind.FORMULA_WITHOUT_VALUE,
        "A formula has no stored result",
        "Open the workbook in your spreadsheet program and save it, so that the result is stored;"
            + " or type the value.",
        visit(VISITS, DAY, "Ann", "Bramble", "Trim", SmallBook.noResult()));
    add(
        ProblemKind.TEXT_CUT,
        "A text is too long",
        "Shorten it: a cell holds 32,767 characters.",
        visit(
            "Date|Owner|Horse|Work|Charge|Notes",
            DAY,
            "Ann",
            "Bramble",
            "Trim",
            45,
            "hoof ".repeat(7_000)));
    add(
        ProblemKind.SIZE_RECOVERED,
        "The spreadsheet made a date or number of a size",
        "Format the column as text, then type the size again, so that it stays as you write it.",
        visit(
            "Date|Owner|Horse|Work|Charge|Size",
            DAY,
            "Ann",
            "Bramble",
            "Trim",
            45,
            new SmallBook.Styled("46158", "d-mmm")));
    add(
        ProblemKind.SIZE_LOST,
        "The spreadsheet made something else of a size, and it can't be told which size it was",
        "Format the column as text, then type the size again. Until then it counts as blank.",
        visit(
            "Date|Owner|Horse|Work|Charge|Size",
            DAY,
            "Ann",
            "Bramble",
            "Trim",
            45,
            new SmallBook.Styled("46147", "d-mmm")));
    add(
        ProblemKind.NAME_CLEANED,
        "A name holds marks that can't be seen",
        "Type the name again. Files are named without the marks.",
        visit(VISITS, DAY, "Ann\u202E", "Bramble", "Trim", 45));
    add(
        ProblemKind.NAME_MISSING,
        "A name is missing",
        "Put the name in. A visit is billed without its horse's name; a row of a list without its"
            + " name counts for nothing.",
        visit(VISITS, DAY, "Ann", "", "Trim", 45));
  }

  private void sheets() {
    add(
        ProblemKind.SHEET_MISSING,
        "There are no visits",
        "Give one sheet the headings Date, Horse, Work and Owner, in whatever words; your own words"
            + " go into the sheet Headings.",
        new SmallBook().sheet("Doodles", "This|That"));
    add(
        ProblemKind.SHEET_AMBIGUOUS,
        "Two sheets can't be told apart",
        "Name the sheet that counts by its name in the guide, or say so in the sheet Headings.",
        good()
            .sheet("Prices old", "Work|Price")
            .row("Prices old", "Trim", 40)
            .sheet("Prices new", "Work|Price")
            .row("Prices new", "Trim", 45));
    add(
        ProblemKind.SHEET_IGNORED,
        "A sheet looks like another one that is read already",
        "Nothing, if that is right. Else join the two sheets.",
        good()
            .sheet("Work", "Work|Price")
            .row("Work", "Trim", 45)
            .sheet("Prices of 2020", "Work|Price")
            .row("Prices of 2020", "Trim", 40));
    add(
        ProblemKind.HEADING_MISSING,
        "A sheet lacks a heading that it needs",
        "Add the column, or give its heading a name from the guide.",
        good()
            .sheet("Purchases", "Date|Supplier|Remark")
            .row("Purchases", DAY, "Example Supplies", "nails"));
    add(
        ProblemKind.HEADING_TWICE,
        "Two columns mean the same",
        "Rename or remove one of them. Until then the left one counts.",
        visit("Date|Owner|Horse|Work|Fee|Charge", DAY, "Ann", "Bramble", "Trim", 45, 45));
    add(
        ProblemKind.HEADING_UNKNOWN,
        "A heading is not known, but looks like one that is",
        "Mend the heading if the column is meant to count. A column of your own may stay as it is.",
        visit("Date|Owner|Horse|Work|Chrage", DAY, "Ann", "Bramble", "Trim", 45)
            .sheet("Work", "Work|Price")
            .row("Work", "Trim", 45));
    add(
        ProblemKind.SETTING_UNKNOWN,
        "A setting is not known",
        "Use the setting's name from the guide.",
        setting("Hourly wgae", 30));
    add(
        ProblemKind.SETTING_UNUSABLE,
        "A setting can't be used",
        "Put in a value of the kind that is expected. Until then the default stands.",
        setting("Currency", "Thalers"));
    add(
        ProblemKind.PART_DAMAGED,
        "A sheet is damaged",
        "Open the workbook in your spreadsheet program and save it again, or take an older copy."
            + " What was sound before the damage is read.",
        good()
            .sheet("Payments", "Date|Owner|Amount")
            .row("Payments", DAY, "Ann", 45)
            .breakingOff());
  }

  private void betweenSheets() {
    add(
        ProblemKind.NOBODY_TO_BILL,
        "There is nobody to bill",
        "Name the owner in the visit, or list the horse with its owner in Horses.",
        visit(VISITS, DAY, "", "Bramble", "Trim", 45));
    add(
        ProblemKind.NO_PRICE,
        "There is no price",
        "Type a Charge, or list the Work with its Price in the sheet Work.",
        visit(VISITS, DAY, "Ann", "Bramble", "Trim", ""));
    add(
        ProblemKind.HORSE_UNKNOWN,
        "A horse is not in Horses",
        "Mend the name, or list the horse.",
        visit(VISITS, DAY, "Ann", "Brambel", "Trim", 45)
            .sheet("Horses", "Horse|Owner")
            .row("Horses", "Bramble", "Ann"));
    add(
        ProblemKind.OWNER_UNKNOWN,
        "An owner is not in Owners",
        "Mend the name, or list the owner. Two spellings are two owners with two invoices.",
        visit(VISITS, DAY, "Anne", "Bramble", "Trim", 45)
            .sheet("Owners", "Owner|Address")
            .row("Owners", "Ann", "1 Example Road"));
    add(
        ProblemKind.OWNER_NOT_THE_HORSES,
        "Somebody pays who does not own the horse",
        "Nothing, if they do pay. Else name the owner, or leave the cell blank.",
        visit(VISITS, DAY, "Bob", "Bramble", "Trim", 45)
            .sheet("Horses", "Horse|Owner")
            .row("Horses", "Bramble", "Ann"));
    add(
        ProblemKind.PLACE_UNKNOWN,
        "A place is not in Places",
        "Mend the name, or list the place, so that the way there can be reckoned.",
        visit("Date|Place|Owner|Horse|Work|Charge", DAY, "Mil Lane", "Ann", "Bramble", "Trim", 45)
            .sheet("Places", "Place|Distance")
            .row("Places", "Mill Lane", 14));
    add(
        ProblemKind.WORK_UNKNOWN,
        "A Work is not in the price list",
        "Mend the name, or list the Work. With a Charge the visit is billed all the same.",
        visit(VISITS, DAY, "Ann", "Bramble", "Trimm", 45)
            .sheet("Work", "Work|Price")
            .row("Work", "Trim", 45));
    add(
        ProblemKind.MATERIAL_UNKNOWN,
        "A shoe, nail or other item is not in Materials",
        "Mend the name, or list the item with its cost. Until then it costs nothing.",
        visit("Date|Owner|Horse|Work|Charge|Extras", DAY, "Ann", "Bramble", "Trim", 45, "pads 2")
            .sheet("Materials", "Item|Kind|Unit cost")
            .row("Materials", "Stud", "stud", 1));
    add(
        ProblemKind.TAX_CODE_UNKNOWN,
        "A tax code is not in Tax",
        "Mend the code, or list it with its rate. Until then no tax is charged.",
        good()
            .sheet("Work", "Work|Price|Tax")
            .row("Work", "Trim", 45, "X")
            .sheet("Tax", "Code|Rate %")
            .row("Tax", "S", 20));
    add(
        ProblemKind.INVOICE_UNKNOWN,
        "A payment names an invoice that there is none of",
        "Mend the number, or leave it blank. Until then the payment goes to the oldest open"
            + " invoice.",
        good()
            .sheet("Payments", "Date|Owner|Amount|Invoice")
            .row("Payments", DAY, "Ann", 45, "2026-0099"));
    add(
        ProblemKind.SHARES_OFF_100,
        "The shares of a horse don't add to 100",
        "Mend the shares. Until then they are scaled to 100.",
        visit(VISITS, DAY, "", "Bramble", "Trim", 45)
            .sheet("Horses", "Horse|Owner|Share %")
            .row("Horses", "Bramble", "Ann", 50)
            .row("Horses", "Bramble", "Bob", 40));
    add(
        ProblemKind.PRICE_TWICE,
        "Two prices hold from one date",
        "Remove one row, or give it its own date in From. Until then the lower row counts.",
        good().sheet("Work", "Work|Price").row("Work", "Trim", 45).row("Work", "Trim", 50));
    add(
        ProblemKind.NAME_TWICE,
        "A name stands twice in a list",
        "Remove one of the rows.",
        good()
            .sheet("Owners", "Owner|Address")
            .row("Owners", "Ann", "1 Example Road")
            .row("Owners", "Ann", "2 Example Road"));
    add(
        ProblemKind.DUPLICATE_VISIT,
        "A visit stands twice",
        "Remove one row if it was typed twice. Both are billed until then.",
        good().visit(DAY, "Ann", "Bramble", "Trim", 45));
    add(
        ProblemKind.PURCHASE_PRICE_ODD,
        "Something was bought at ten times its list price",
        "Look at Quantity and Unit: a pack that counts as one piece looks like this.",
        good()
            .sheet("Materials", "Item|Kind|Unit cost|Per pack")
            .row("Materials", "Slim nail", "nail", 0.12, 250)
            .sheet("Purchases", "Date|Supplier|Item|Quantity|Unit|Net")
            .row("Purchases", DAY, "Example Supplies", "Slim nail", 1, "piece", 30));
  }

  private static SmallBook shod(String headings, Object... cells) {
    return visit(headings, cells)
        .sheet("Work", "Work|Price|Shoes|Trim min|Nails per shoe")
        .row("Work", "Full set", 100, 4, 20, 7)
        .row("Work", "Trim", 45, 0, 20)
        .sheet("Materials", "Item|Kind|Unit cost")
        .row("Materials", "Keg", "keg", 5)
        .row("Materials", "Light", "aluminium", 9)
        .row("Materials", "Slim nail", "nail", 0.12);
  }

  private void trade() {
    add(
        ProblemKind.ALUMINIUM_HOT,
        "Aluminium is marked hot",
        "Write cold. Aluminium melts near 660 °C and shows little colour before it does.",
        shod(
            "Date|Owner|Horse|Work|Shoe|Shaping",
            DAY,
            "Ann",
            "Bramble",
            "Full set",
            "Light",
            "hot"));
    add(
        ProblemKind.TRIM_WITH_SHOES,
        "A trim has shoes",
        "Name the Work that was done, or put 0 shoes.",
        shod(
            "Date|Owner|Horse|Work|Shoe|Shoes|Shaping|Nails",
            DAY,
            "Ann",
            "Bramble",
            "Trim",
            "Keg",
            2,
            "cold",
            14));
    add(
        ProblemKind.SHOES_WITHOUT_NAILS,
        "Shoes have no nails",
        "Put in the nails, or list the glue under Extras.",
        shod(
            "Date|Owner|Horse|Work|Shoe|Shaping|Nails",
            DAY,
            "Ann",
            "Bramble",
            "Full set",
            "Keg",
            "cold",
            0));
    add(
        ProblemKind.NAILS_PER_SHOE_ODD,
        "So many nails a shoe are unusual",
        "Nails is the total of all shoes, not of one. 4 to 10 a shoe are usual.",
        shod(
            "Date|Owner|Horse|Work|Shoe|Shaping|Nails",
            DAY,
            "Ann",
            "Bramble",
            "Full set",
            "Keg",
            "cold",
            7));
    add(
        ProblemKind.MINUTES_IMPOSSIBLE,
        "No day holds so many minutes",
        "Look at the minutes of that day: hours are written as 1:15, and 75 is minutes.",
        visit(
            "Date|Owner|Horse|Work|Charge|Total min", DAY, "Ann", "Bramble", "Trim", 45, "25:00"));
    add(
        ProblemKind.PARTS_DIFFER_FROM_SHOES,
        "The parts of a set are more or fewer than its shoes",
        "Let the counts of Shoe and Size add to Shoes.",
        shod(
            "Date|Owner|Horse|Work|Shoe|Shoes|Size|Shaping",
            DAY,
            "Ann",
            "Bramble",
            "Full set",
            "Keg",
            4,
            "0: 2; 00: 1",
            "cold"));
    add(
        ProblemKind.NEW_SHOES_ABOVE_SHOES,
        "There are more new shoes than shoes",
        "New shoes is how many of the shoes were new; 0 is a reset.",
        shod(
            "Date|Owner|Horse|Work|Shoe|New shoes|Shaping",
            DAY,
            "Ann",
            "Bramble",
            "Full set",
            "Keg",
            6,
            "cold"));
  }

  private void documents() {
    add(
        ProblemKind.GLYPH_MISSING,
        "A letter can't be printed",
        "Write the name in Latin, Greek or Cyrillic letters.",
        visit(VISITS, DAY, "王", "Bramble", "Trim", 45));
    add(
        ProblemKind.LOGO_UNUSABLE,
        "The logo can't be used",
        "Put a PNG or JPEG of at most 5 MB beside the workbook and name it here.",
        setting("Logo", "missing.png"));
    add(
        ProblemKind.PAYMENT_LINK_UNUSABLE,
        "The payment link can't be used",
        "Only an address that begins with https:// is printed.",
        setting("Payment link", "http://pay.example"));
    add(
        ProblemKind.ADDRESS_UNUSABLE,
        "Mail can't be sent to an address",
        "Put in one address. Until then the invoice is on the list to print.",
        good().sheet("Owners", "Owner|Email").row("Owners", "Ann", "ann at example"));
  }
}
