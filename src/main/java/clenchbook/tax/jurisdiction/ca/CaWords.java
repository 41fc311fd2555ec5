package clenchbook.tax.jurisdiction.ca;

import clenchbook.texts.Message;
import java.util.Map;

/** What pages say for words of Canadian files: classes of assets, and what does not count. */
final class CaWords {
  static final Map<String, Message> ALL =
      Map.of(
          "class 8",
          Message.of("canada.kind.class8"),
          "class 10",
          Message.of("canada.kind.class10"),
          "class 10.1",
          Message.of("canada.kind.class101"),
          "class 12",
          Message.of("canada.kind.class12"),
          "class 50",
          Message.of("canada.kind.class50"),
          CaJurisdiction.MEALS_REST,
          Message.of("canada.notCounted.meals"));

  private CaWords() {}
}
