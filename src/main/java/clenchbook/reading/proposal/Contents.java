package clenchbook.reading.proposal;

import clenchbook.reading.proposal.KnownValues.Of;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.ToIntFunction;

/**
 * What a column may hold, and how well some cells go with it in points: about ten for each time
 * that they are e times likelier there than in any other column. The weights are set by hand and
 * judged by the renamed books of the tests. Common practice, no source.
 */
enum Contents {
  /** Days. */
  DAY(of -> Points.days(of)),
  /** Sums of money. */
  MONEY(of -> Points.money(of)),
  /** What was paid: money, or yes and no. */
  PAID(of -> of.share(Trait.YES_NO) >= 60 ? 6 : Points.money(of) - (of.filled() > 95 ? 4 : 0)),
  /** Minutes. */
  MINUTES(of -> Points.minutes(of)),
  /** Counts of shoes. */
  SHOES(of -> Points.shoes(of)),
  /** Counts of nails for a horse. */
  NAILS(of -> Points.nails(of)),
  /** Small numbers. */
  FEW(of -> of.isNumbers() && of.profile().shareIn(1, 12) >= 90 ? 8 : Points.CLASH),
  /** Sizes. */
  SIZE(of -> Points.size(of)),
  /** Hot, cold, none. */
  SHAPING(of -> Points.shaping(of)),
  /** Reasons of a visit. */
  REASON(of -> Points.choice(of, Trait.REASON, 28)),
  /** How was paid. */
  METHOD(of -> Points.choice(of, Trait.METHOD, 28)),
  /** Names of horses. */
  HORSE(of -> Points.horse(of)),
  /** Names of owners. */
  OWNER(of -> Points.owner(of)),
  /** Names of places. */
  PLACE(of -> Points.named(of, Of.PLACE)),
  /** Names of the price list. */
  WORK(of -> Points.work(of)),
  /** Materials. */
  ITEM(of -> Points.named(of, Of.ITEM)),
  /** Shoes. */
  SHOE(of -> Points.material(of)),
  /** Nails by name. */
  NAIL(of -> Points.material(of)),
  /** Items with counts. */
  EXTRAS(of -> Points.extras(of)),
  /** Longer texts. */
  NOTES(of -> Points.notes(of)),
  /** Texts of any kind. */
  WORDS(of -> Points.words(of)),
  /** Addresses of mail. */
  EMAIL(of -> Points.choice(of, Trait.EMAIL, 40)),
  /** Postcodes. */
  POSTCODE(of -> Points.postcode(of)),
  /** Postal addresses. */
  ADDRESS(
      of ->
          of.isWords()
              ? (of.share(Trait.LONG) + of.share(Trait.CODE) >= 40 ? 8 : 0)
              : Points.CLASH),
  /** Percentages. */
  PERCENT(of -> Points.percent(of)),
  /** Distances. */
  DISTANCE(of -> of.isNumbers() && of.share(Trait.MONEY) < 10 ? 4 : Points.CLASH),
  /** Readings of an odometer. */
  ODOMETER(
      of ->
          of.isNumbers() && of.profile().medianIn(1_000, 999_999) && of.profile().rising() > 80
              ? 16
              : -60),
  /** Weeks between visits. */
  WEEKS(of -> of.isNumbers() && of.profile().shareIn(2, 26) >= 90 ? 12 : -60),
  /** Units. */
  UNIT(of -> Points.choice(of, Trait.UNIT, 26)),
  /** Kinds of material. */
  MATERIAL(of -> Points.choice(of, Trait.MATERIAL, 26)),
  /** Kinds of tax. */
  TAX(of -> Points.choice(of, Trait.TAX, 24)),
  /** Kinds of payment. */
  PAYMENT(of -> Points.choice(of, Trait.PAYMENT, 26)),
  /** Job or fee. */
  FEE(of -> Points.choice(of, Trait.FEE, 24)),
  /** Yes or no. */
  YES(of -> Points.choice(of, Trait.YES_NO, 16)),
  /** Codes of tax. */
  CODE(of -> Points.code(of)),
  /** Numbers of papers. */
  NUMBER_CODE(of -> of.share(Trait.DAY) > 30 || of.share(Trait.CLOCK) > 30 ? Points.CLASH : 0),
  /** Measures of bars. */
  SECTION(of -> Points.choice(of, Trait.SECTION, 28)),
  /** Quantities. */
  QUANTITY(
      of ->
          of.isNumbers() && of.share(Trait.CENTS) < 30 && of.share(Trait.MONEY) < 10
              ? 6
              : Points.CLASH),
  /** Numbers. */
  NUMBER(of -> of.share(Trait.NUMBER) >= 60 ? 0 : -60),
  /** Suppliers. */
  SUPPLIER(of -> Points.named(of, Of.SUPPLIER)),
  /** Countries. */
  COUNTRY(of -> Points.choice(of, Trait.COUNTRY, 20)),
  /** Languages. */
  LANGUAGE(of -> Points.choice(of, Trait.LANGUAGE, 20)),
  /** Forms of e-invoice. */
  E_INVOICE(of -> Points.choice(of, Trait.E_INVOICE, 16)),
  /** Names of settings. */
  SETTING(of -> Points.choice(of, Trait.SETTING, 40)),
  /** Anything. */
  ANY(of -> 0);

  private final ToIntFunction<Evidence> points;

  Contents(ToIntFunction<Evidence> points) {
    this.points = points;
  }

  /** The contents of a word of the program's list. */
  static Contents of(String word) {
    String name = word.toUpperCase(Locale.ROOT).replace(' ', '_').replace('-', '_');
    return Arrays.stream(values())
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no contents are called " + word));
  }

  /** The points for a column; none for one whose cells are all empty. */
  int points(Evidence evidence) {
    return evidence.profile().isEmpty() ? 0 : points.applyAsInt(evidence);
  }

  boolean isMoney() {
    return this == MONEY || this == PAID;
  }
}
