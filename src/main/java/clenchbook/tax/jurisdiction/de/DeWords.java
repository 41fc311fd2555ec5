package clenchbook.tax.jurisdiction.de;

import clenchbook.texts.Message;
import java.util.Map;

/**
 * What pages say for words of German files: classes of assets, how they go, what does not count.
 */
final class DeWords {
  static final Map<String, Message> ALL =
      Map.ofEntries(
          Map.entry(DeAssets.LOW_VALUE, Message.of("germany.kind.lowValue")),
          Map.entry(DeAssets.POOL, Message.of("germany.kind.pool")),
          Map.entry(DeAssets.AT_ONCE, Message.of("germany.kind.atOnce")),
          Map.entry(DeAssets.STRAIGHT_LINE, Message.of("germany.kind.straightLine")),
          Map.entry(DeVehicles.PRIVATE, Message.of("germany.kind.privateVehicle")),
          Map.entry(DeVehicles.MOTORCYCLE, Message.of("germany.kind.motorcycle")),
          Map.entry("car", Message.of("germany.kind.car")),
          Map.entry("truck", Message.of("germany.kind.truck")),
          Map.entry("trailer", Message.of("germany.kind.trailer")),
          Map.entry("forge", Message.of("germany.kind.forge")),
          Map.entry("press", Message.of("germany.kind.press")),
          Map.entry("drill", Message.of("germany.kind.drill")),
          Map.entry("computer", Message.of("germany.kind.computer")),
          Map.entry(DeJurisdiction.GIFTS_ABOVE, Message.of("germany.notCounted.gifts")),
          Map.entry(DeJurisdiction.MEALS_REST, Message.of("germany.notCounted.clientMeals")));

  private DeWords() {}
}
