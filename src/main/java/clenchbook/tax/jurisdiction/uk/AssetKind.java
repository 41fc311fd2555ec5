package clenchbook.tax.jurisdiction.uk;

import clenchbook.book.Asset;
import clenchbook.tax.assets.AssetClasses;
import clenchbook.texts.Message;
import java.util.stream.Stream;

/** What an asset is to the cash basis and to simplified mileage. */
enum AssetKind {
  /** Stays out of the cash basis. */
  CAR("car", Message.of("britain.kind.car")),
  /** A van or the like: its miles stand for its cost where simplified mileage counts. */
  VEHICLE("vehicle", Message.of("britain.kind.vehicle")),
  /** The same, at a rate of its own. */
  MOTORCYCLE("motorcycle", Message.of("britain.kind.motorcycle")),
  /** All else. */
  EQUIPMENT("equipment", Message.of("britain.kind.equipment"));

  private final String word;
  private final Message said;

  AssetKind(String word, Message said) {
    this.word = word;
    this.said = said;
  }

  static AssetKind of(Asset asset, AssetClasses classes) {
    String kind = classes.kind(asset);
    return Stream.of(values())
        .filter(one -> one.word.equals(kind))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no kind " + kind));
  }

  /** What tables and files call it. */
  String word() {
    return word;
  }

  /** What pages call it. */
  Message said() {
    return said;
  }
}
