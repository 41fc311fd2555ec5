package clenchbook.reports.blocks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a report says before its evidence: for a farrier with ten minutes at the kitchen table.
 *
 * @param answer one sentence
 * @param picture one picture; empty where there is nothing to draw
 * @param toDo at most three things to do, in order of money or harm
 */
public record FirstPage(String answer, Optional<Block.Picture> picture, List<String> toDo) {
  /** More things than these nobody does. */
  public static final int MOST_TO_DO = 3;

  /** Copies its list and refuses a fourth thing to do. */
  public FirstPage {
    toDo = List.copyOf(toDo);
    if (answer.isBlank() || toDo.size() > MOST_TO_DO) {
      throw new IllegalArgumentException("not a first page: " + answer + " " + toDo);
    }
  }

  /**
   * A first page with the most pressing of the things to do.
   *
   * @param answer one sentence
   * @param picture one picture; empty for none
   * @param toDo any number of things, in order of money or harm
   * @return the page with the first three
   */
  public static FirstPage of(String answer, Optional<Block.Picture> picture, List<String> toDo) {
    return new FirstPage(answer, picture, toDo.stream().limit(MOST_TO_DO).toList());
  }

  /**
   * The page as blocks.
   *
   * @return the sentence, the things to do, the picture
   */
  public List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Answer(answer));
    picture.ifPresent(blocks::add);
    if (!toDo.isEmpty()) {
      blocks.add(new Block.ToDo(toDo));
    }
    return List.copyOf(blocks);
  }
}
