package clenchbook.catalogue;

import clenchbook.problem.ProblemKind;

/** What can be wrong between two sheets. */
final class NameExamples extends ExampleBooks {
  @Override
  void write() {
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
        ProblemKind.OWNER_RENAMED,
        "An owner who was billed has no row any more, and a similar one is new",
        "If both are one owner, put the earlier name under Formerly in the new row: invoices,"
            + " payments and balance are then theirs. Else nothing. The example was billed as Ann"
            + " Archer.",
        visit(VISITS, DAY, "Ann Archer-Bell", "Bramble", "Trim", 45)
            .sheet("Owners", "Owner|Address")
            .row("Owners", "Ann Archer-Bell", "1 Example Road"));
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
    add(
        ProblemKind.INTERVAL_ODD,
        "An interval is 0 or over 30 weeks",
        "Put in the weeks between two visits, or leave the cell blank for a horse that is not due"
            + " at fixed times.",
        good().sheet("Horses", "Horse|Owner|Interval weeks").row("Horses", "Bramble", "Ann", 42));
    add(
        ProblemKind.UNTIL_BEFORE_FROM,
        "A period ends before it begins",
        "Mend From or Until. Until then the row never counts.",
        good()
            .sheet("Horses", "Horse|Owner|From|Until")
            .row("Horses", "Bramble", "Ann", "2026-03-01", "2026-02-01"));
    add(
        ProblemKind.PACK_EMPTY,
        "A pack holds 0 pieces",
        "Put in how many pieces a pack holds. Until then Pack cost can't be shared out.",
        good()
            .sheet("Materials", "Item|Kind|Pack cost|Per pack")
            .row("Materials", "Slim nail", "nail", 30, 0));
    add(
        ProblemKind.AMOUNTS_DISAGREE,
        "Net and Tax don't add to Gross",
        "Look at the receipt. Until then Net and Gross count as typed.",
        good()
            .sheet("Purchases", "Date|Supplier|Category|Net|Tax|Gross")
            .row("Purchases", DAY, "Example Supplies", "Tools", 100, 20, 112));
    add(
        ProblemKind.ODOMETER_BACKWARDS,
        "An odometer runs backwards",
        "Mend the reading. Until then the trip counts as typed.",
        good()
            .sheet("Trips", "Date|From|To|Odometer start|Odometer end")
            .row("Trips", DAY, "Home", "Oak Yard", 20_100, 20_010));
  }
}
