package clenchbook.tax.vehicle;

import clenchbook.book.Asset;
import clenchbook.book.Names;
import clenchbook.book.Setting;
import clenchbook.book.Trip;
import clenchbook.tax.assets.AssetClasses;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.year.Regime;
import clenchbook.tax.year.YearEndInput;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;

/**
 * The vehicles of a book by the words of a regime: what an asset is, and by which words a trip says
 * what it was driven with.
 */
public final class Fleet {
  /** The class of all that no word makes a vehicle. */
  public static final String EQUIPMENT = "equipment";

  private final List<Asset> assets;
  private final DistanceUnit unit;
  private final RateLookup rates;
  private final String words;
  private final AssetClasses classes;

  /** The fleet of one book and year. */
  public Fleet(Regime regime, YearEndInput input, RateLookup rates) {
    this.assets = input.book().assets();
    this.unit = DistanceUnit.of(input.book().settings().text(Setting.DISTANCE_UNIT));
    this.rates = rates;
    this.words = regime.table("asset-classes");
    this.classes = new AssetClasses(regime, rates);
  }

  /** All of the book's assets, in its order. */
  public List<Asset> assets() {
    return assets;
  }

  /** The class of an asset by its Class cell, else by its name; equipment for all else. */
  public String kind(Asset asset) {
    return classes.find(asset).orElse(EQUIPMENT);
  }

  /** The classes of the assets that a trip's Vehicle cell names. */
  public Stream<String> named(Trip trip) {
    String name = Names.key(trip.vehicle());
    return assets.stream().filter(asset -> Names.key(asset.name()).equals(name)).map(this::kind);
  }

  /** The classes that the words within a trip's Vehicle cell lead to, on the day of the trip. */
  public Stream<String> worded(Trip trip) {
    String name = " " + Names.key(trip.vehicle()) + " ";
    return rates.words(words, trip.date()).stream()
        .filter(row -> name.contains(" " + row.code() + " "))
        .map(Rate::value);
  }

  /** How far a trip was, in kilometres; nothing where it says no distance. */
  public BigDecimal kilometres(Trip trip) {
    return unit.kilometres(trip.distance().orElse(BigDecimal.ZERO));
  }
}
