package clenchbook.samples;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * What differs between the two invented farriers. Distances are miles, moneys the book's currency.
 *
 * @param fileName the workbook's file name
 * @param seed the seed of every draw
 * @param horses how many horses the farrier looks after
 * @param horsesPerDay the usual number a day, and two more on days with an apprentice
 * @param helperDays whether an apprentice comes on Tuesdays and Thursdays
 * @param hotShare the share of horses always shod hot; as many again of the rest are mixed
 * @param taxRate the general rate in per cent, as the farrier works it out at the truck
 * @param included whether prices include that tax
 * @param workNames the price list's name for each kind of visit
 * @param shoes the names of the shoes: keg, pony, heavy, handmade, bar shoe, aluminium
 * @param yards places as {@code name;address;x;y;horses;kind}, miles from home
 * @param firstNames first names of owners
 * @param lastNames last names of owners
 * @param specialOwners owners with letters beyond plain Latin
 * @param horseNames stable names
 * @param closed first and last days of holidays
 * @param smallSize the size written for small ponies
 * @param start the first day of the log
 * @param end the last day of the log
 */
record Scenario(
    String fileName,
    long seed,
    int horses,
    int horsesPerDay,
    boolean helperDays,
    double hotShare,
    double taxRate,
    boolean included,
    Map<Kind, String> workNames,
    Map<Shoe, String> shoes,
    List<String> yards,
    List<String> firstNames,
    List<String> lastNames,
    List<String> specialOwners,
    List<String> horseNames,
    List<LocalDate[]> closed,
    String smallSize,
    LocalDate start,
    LocalDate end) {

  /** A kind of visit, whatever the price list calls it. */
  enum Kind {
    TRIM,
    FRONTS,
    FULL,
    RESET,
    HANDMADE,
    ALUMINIUM,
    BAR,
    LOST,
    REPAIR,
    CALLOUT,
    NOSHOW
  }

  /** A kind of shoe, whatever the materials list calls it. */
  enum Shoe {
    KEG,
    HEAVY,
    HANDMADE,
    BAR,
    ALUMINIUM
  }
}
