package clenchbook.reports.blocks;

import clenchbook.texts.Texts;
import clenchbook.values.Basis;
import java.util.Optional;

/** What stands beside a figure that was not measured, in one language. */
public final class BasisWords {
  private final Texts texts;

  /**
   * The words of a language.
   *
   * @param texts the texts of the language that the page or report is in
   */
  public BasisWords(Texts texts) {
    this.texts = texts;
  }

  /**
   * In a word, below a figure that stands alone.
   *
   * @param basis what the figure rests on; empty where nothing need be said
   * @return such as {@code standard}; empty where nothing need be said
   */
  public String word(Optional<Basis> basis) {
    return basis
        .map(
            known ->
                switch (known) {
                  case MEASURED -> "";
                  case STANDARD -> texts.say("print.basis.standard");
                  case DEFAULT -> texts.say("print.basis.default");
                })
        .orElse("");
  }

  /**
   * The sign behind a figure in a table.
   *
   * @param basis what the figure rests on; empty where nothing need be said
   * @return such as {@code s}; empty where nothing need be said
   */
  public String sign(Optional<Basis> basis) {
    return basis
        .map(
            known ->
                switch (known) {
                  case MEASURED -> "";
                  case STANDARD -> texts.say("print.basis.standardSign");
                  case DEFAULT -> texts.say("print.basis.defaultSign");
                })
        .orElse("");
  }

  /** What the signs say, for the foot of a report that has them. */
  public String legend() {
    return texts.say(
        "print.basis.legend",
        texts.say("print.basis.standardSign"),
        texts.say("print.basis.defaultSign"));
  }
}
