package clenchbook.catalogue;

import clenchbook.problem.ProblemKind;
import clenchbook.reading.SmallBook;

/** What can be wrong in a cell. */
final class CellExamples extends ExampleBooks {
  @Override
  void write() {
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
        "Put in the amount alone, as 85.00.",
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
        ProblemKind.NUMBER_IN_WORDS,
        "A number is written as a word",
        "Nothing, if the number is right. Figures can't be misread.",
        visit("Date|Owner|Horse|Work|Charge|Lost", DAY, "Ann", "Bramble", "Trim", 45, "one"));
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
        ProblemKind.SIGN_IGNORED,
        "A payment has a minus",
        "Take the minus away. Money that went back, a cheque that bounced too, is Kind refund; the"
            + " size is counted by its Kind.",
        good()
            .sheet("Payments", "Date|Owner|Amount|Kind")
            .row("Payments", DAY, "Ann", -10, "refund"));
    add(
        ProblemKind.UNIT_OTHER,
        "A number bears a unit that can't be converted",
        "Put in the number in the column's own unit; one of its kind, as 13 1/2 in under a length"
            + " in mm or 10 km in a book of miles, is converted. Until then the cell counts as"
            + " blank.",
        good().sheet("Horses", "Horse|Interval weeks").row("Horses", "Bramble", "2 months"));
    add(
        ProblemKind.CURRENCY_OTHER,
        "An amount, or the heading over it, bears another currency's sign",
        "Put in the amount in the book's currency, or the Currency in Settings. Until then the"
            + " number counts as if it were in the book's.",
        visit(VISITS, DAY, "Ann", "Bramble", "Trim", "€45")
            .sheet("Settings", "Setting|Value")
            .row("Settings", "Currency", "GBP"));
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
}
