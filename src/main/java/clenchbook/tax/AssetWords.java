package clenchbook.tax;

import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.assets.TakenByMileage;
import clenchbook.tax.page.PageWords;
import clenchbook.tax.page.Sentence;
import clenchbook.values.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What the register of assets says of one in words: its class, how it goes, its sale. */
final class AssetWords {
  private static final String YEARS = " years";

  private AssetWords() {}

  /** The class; a number of years in the words of the language. */
  private static String kind(String kind, PageWords words) {
    return kind.endsWith(YEARS)
        ? words.say(Sentence.of("{0}" + YEARS, kind.substring(0, kind.length() - YEARS.length())))
        : words.say(kind);
  }

  static String of(DepreciatedAsset asset, Period period, PageWords words) {
    List<String> said =
        new ArrayList<>(List.of(kind(asset.kind(), words), words.say(asset.convention())));
    asset
        .mileage()
        .filter(TakenByMileage::known)
        .ifPresent(
            taken ->
                said.add(
                    words.say(Sentence.of("less {0} by mileage", taken.amount().toPlainString()))));
    asset
        .asset()
        .sold()
        .ifPresent(day -> said.add(words.say(Sentence.of("sold {0}", day.toString()))));
    asset
        .gain(period)
        .ifPresent(gain -> said.add(words.say(Sentence.of("gain {0}", gain.toPlainString()))));
    return said.stream().filter(word -> !word.isEmpty()).collect(Collectors.joining(", "));
  }
}
