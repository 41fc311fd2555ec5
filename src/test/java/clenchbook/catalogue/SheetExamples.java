package clenchbook.catalogue;

import clenchbook.problem.ProblemKind;
import clenchbook.reading.SmallBook;

/** What can be wrong with a sheet. */
final class SheetExamples extends ExampleBooks {
  @Override
  void write() {
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
        ProblemKind.COLUMN_NOT_READ,
        "A column of money or minutes is not read",
        "Give the column a heading from the guide, or say in the sheet Headings what it means;"
            + " Means 'not read' leaves it out without a word.",
        visit("Date|Owner|Horse|Work|Quid", DAY, "Ann", "Bramble", "Trim", 45)
            .sheet("Work", "Work|Price")
            .row("Work", "Trim", 40));
    add(
        ProblemKind.HEADING_TAX_OTHER,
        "A heading says of the tax what Settings do not",
        "Put right 'Prices include tax' in Settings or the heading before you send anything: until"
            + " then tax is charged on amounts that hold it already, or is not charged at all."
            + " Settings and the codes in Work count, not the heading. Whether you must charge tax"
            + " is for your tax office or adviser to say.",
        visit("Date|Owner|Horse|Work|Preis inkl. MwSt.", DAY, "Ann", "Bramble", "Trim", 119)
            .sheet("Work", "Work|Price|Tax")
            .row("Work", "Trim", 100, "S")
            .sheet("Tax", "Code|Name|Rate %|Kind")
            .row("Tax", "S", "VAT", 19, "standard"));
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
        ProblemKind.EXAMPLE_ROWS,
        "The starter's examples stand as they were written",
        "Write your own rows over them, or delete them. They count for nothing until one of their"
            + " cells is changed.",
        good()
            .sheet("Places", "Place|Address|Distance|Drive min")
            .row("Places", "Mill Lane Yard", "Mill Lane", 14, 25));
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
}
