package clenchbook.reading.words;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The words for what is not the business's: a private trip or purchase must never count. */
public final class PrivateUse {
  private static final String CANONICAL = "private";

  private static final Set<String> WORDS =
      Stream.of(
              "private",
              "personal",
              "private use",
              "personal use",
              "privat",
              "privatfahrt",
              "private Fahrt",
              "Privatentnahme",
              "privé",
              "privée",
              "perso",
              "personnel",
              "trajet privé",
              "privado",
              "privada",
              "particular",
              "viaje privado",
              "privérit",
              "privégebruik")
          .map(SameWords::bare)
          .collect(Collectors.toUnmodifiableSet());

  private PrivateUse() {}

  /** The canonical word where the words say so, else the words as they are. */
  public static String canonical(String words) {
    return WORDS.contains(SameWords.bare(words)) ? CANONICAL : words;
  }
}
