package clenchbook.tax.assets;

import clenchbook.book.Asset;
import clenchbook.book.Names;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.year.Regime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What an asset is, from the farrier's word for its class, else from its name: the last word before
 * {@code for}, a bracket, comma or number, so that {@code Old van} is a van and {@code Shelves for
 * van} are not.
 */
public final class AssetClasses {
  private static final Set<String> VEHICLES = Set.of("vehicle", "car", "motorcycle");

  private final Regime regime;
  private final RateLookup rates;

  public AssetClasses(Regime regime, RateLookup rates) {
    this.regime = regime;
    this.rates = rates;
  }

  /**
   * The class that the word of the Class cell leads to; the name's where that cell is blank or
   * unknown.
   */
  public Optional<String> find(Asset asset) {
    return lookUp(asset, Names.key(asset.assetClass())).or(() -> byName(asset));
  }

  /** Whether it is a vehicle, by class or by name: what the money for a mile already stands for. */
  public boolean isVehicle(Asset asset) {
    return lookUp(asset, Names.key(asset.assetClass())).filter(VEHICLES::contains).isPresent()
        || byName(asset).filter(VEHICLES::contains).isPresent();
  }

  /**
   * {@code car}, {@code vehicle} or {@code motorcycle} by class or else by name; {@code equipment}
   * for all else.
   */
  public String kind(Asset asset) {
    return lookUp(asset, Names.key(asset.assetClass()))
        .filter(VEHICLES::contains)
        .or(() -> byName(asset).filter(VEHICLES::contains))
        .orElse("equipment");
  }

  private Optional<String> byName(Asset asset) {
    String head = Names.key(asset.name()).split("\\s+for\\s+|\\s*[(,;]|\\s+\\d", 2)[0].strip();
    List<String> words = Arrays.asList(head.split("\\s+"));
    return lookUp(asset, head).or(() -> lookUp(asset, words.get(words.size() - 1)));
  }

  private Optional<String> lookUp(Asset asset, String word) {
    return word.isBlank()
        ? Optional.empty()
        : rates.words(regime.table("asset-classes"), asset.bought()).stream()
            .filter(row -> row.code().equals(word) || word.equals(row.code() + "s"))
            .map(Rate::value)
            .findFirst();
  }
}
