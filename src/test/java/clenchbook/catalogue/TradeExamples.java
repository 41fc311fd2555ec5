package clenchbook.catalogue;

import clenchbook.problem.ProblemKind;
import clenchbook.reading.SmallBook;

/** What the trade makes unlikely. */
final class TradeExamples extends ExampleBooks {
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

  @Override
  void write() {
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
        ProblemKind.MINUTES_FEW,
        "So few minutes look like hours",
        "Write minutes, as 75, or hours and minutes, as 1:15. Until then the row counts as typed,"
            + " and earnings an hour come out far too high.",
        shod(
            "Date|Owner|Horse|Work|Shoe|Shaping|Total min",
            DAY,
            "Ann",
            "Bramble",
            "Full set",
            "Keg",
            "cold",
            1.15));
    add(
        ProblemKind.PARTS_DIFFER_FROM_SHOES,
        "The parts of a set are more or fewer than its shoes",
        "Let the counts of Shoe and Size add to Shoes or, where Shoes is blank, to the Work's.",
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
    add(
        ProblemKind.LOST_ABOVE_SHOES,
        "More shoes were lost than were on",
        "Lost is how many shoes of this horse were gone since its last visit.",
        shod(
            "Date|Owner|Horse|Work|Shoe|Shaping|Nails|Lost",
            DAY,
            "Ann",
            "Bramble",
            "Full set",
            "Keg",
            "cold",
            28,
            9));
  }
}
