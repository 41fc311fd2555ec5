package clenchbook.tax;

import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.assets.TakenByMileage;
import clenchbook.values.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What the register of assets says of one in words: its class, how it goes, its sale. */
final class AssetWords {
  private final PageWords page;
  private final FileWords words;

  AssetWords(PageWords page, FileWords words) {
    this.page = page;
    this.words = words;
  }

  /** Everything about one, with commas between. */
  String of(DepreciatedAsset asset, Period period) {
    List<String> said = new ArrayList<>();
    said.add(page.say(words.said(asset.kind())));
    said.add(page.say(words.said(asset.convention())));
    asset
        .mileage()
        .filter(TakenByMileage::known)
        .ifPresent(taken -> said.add(page.say("tax.asset.byMileage", taken.amount())));
    asset.asset().sold().ifPresent(day -> said.add(page.say("tax.asset.sold", day)));
    asset.gain(period).ifPresent(gain -> said.add(page.say("tax.asset.gain", gain)));
    return said.stream().filter(word -> !word.isEmpty()).collect(Collectors.joining(", "));
  }
}
