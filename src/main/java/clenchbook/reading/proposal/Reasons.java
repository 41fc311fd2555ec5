package clenchbook.reading.proposal;

import java.util.ArrayList;
import java.util.List;

/** Says in words what speaks for a meaning. */
final class Reasons {
  private Reasons() {}

  static String of(Pair pair) {
    List<String> reasons = new ArrayList<>();
    if (pair.name() >= Pair.LIKE) {
      pair.word().ifPresent(word -> reasons.add("the heading is like '" + word + "'"));
    }
    if (pair.fit() > 0) {
      reasons.add("its cells look like " + words(pair.contents()));
    } else if (pair.fit() < 0) {
      reasons.add("its cells do not speak for it");
    }
    return reasons.isEmpty()
        ? "what is left when the others have theirs"
        : String.join("; ", reasons);
  }

  private static String words(Contents contents) {
    return switch (contents) {
      case DAY -> "days";
      case MONEY, PAID -> "money";
      case MINUTES -> "minutes";
      case SHOES -> "numbers of shoes";
      case NAILS -> "numbers of nails";
      case SIZE -> "sizes of shoes";
      case SHAPING -> "hot and cold";
      case HORSE -> "horses";
      case OWNER -> "owners";
      case PLACE -> "places";
      case WORK -> "work";
      case ITEM, SHOE, NAIL, EXTRAS -> "materials";
      case YES -> "yes and no";
      default -> contents.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    };
  }
}
