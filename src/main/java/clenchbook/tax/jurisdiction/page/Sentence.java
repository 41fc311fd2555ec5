package clenchbook.tax.jurisdiction.page;

import java.util.List;

/**
 * Something to say to the preparer, in whatever language: a key of the country's table of sentences
 * and what fills its gaps.
 *
 * @param key the code in the table {@code <country>/page}
 * @param gaps what stands for {@code {0}}, {@code {1}} and so on, as it is to be printed
 */
public record Sentence(String key, List<String> gaps) {
  /** Copies its list. */
  public Sentence {
    gaps = List.copyOf(gaps);
  }

  /** A sentence with these gaps filled. */
  public static Sentence of(String key, String... gaps) {
    return new Sentence(key, List.of(gaps));
  }
}
