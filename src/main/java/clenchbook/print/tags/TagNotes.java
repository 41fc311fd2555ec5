package clenchbook.print.tags;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.sf.jasperreports.engine.JRPrintImage;
import net.sf.jasperreports.engine.JRPrintText;
import net.sf.jasperreports.renderers.Renderable;

/**
 * What the pages of a document alone don't say of it: its pictures in words and where it can be
 * paid. Collects the headings on the way.
 */
public final class TagNotes {
  /**
   * A heading, for the outline.
   *
   * @param level 1 for the title
   * @param text its words
   * @param page counted from 0
   * @param top from the top edge of the page, in points
   */
  public record Heading(int level, String text, int page, int top) {}

  private final Map<String, String> pictures;
  private final Optional<String> payAt;
  private final List<Heading> headings = new ArrayList<>();

  /**
   * Notes for one document.
   *
   * @param pictures the words for each picture, by its renderer's identity
   * @param payAt the address that a text may hold and that can be followed; empty for none
   */
  public TagNotes(Map<String, String> pictures, Optional<String> payAt) {
    this.pictures = Map.copyOf(pictures);
    this.payAt = payAt;
  }

  /** The words for a picture: the template's, else the program's; a picture without is not read. */
  Optional<String> picture(JRPrintImage image) {
    Optional<String> said =
        Optional.ofNullable(image.getHyperlinkTooltip()).filter(words -> !words.isBlank());
    Renderable renderer = image.getRenderer();
    return said.isPresent() || renderer == null
        ? said
        : Optional.ofNullable(pictures.get(renderer.getId()));
  }

  /**
   * The address that a paragraph leads to.
   *
   * @param text the text it is part of
   * @param paragraph its number, from 0
   */
  Optional<String> link(JRPrintText text, int paragraph) {
    String whole = text.getFullText();
    if (payAt.isEmpty() || whole == null || !whole.contains(payAt.get())) {
      return Optional.empty();
    }
    List<String> paragraphs = whole.lines().filter(line -> !line.isEmpty()).toList();
    return payAt.filter(
        address -> paragraph < paragraphs.size() && paragraphs.get(paragraph).contains(address));
  }

  void heading(int level, JRPrintText text, int page) {
    headings.add(new Heading(level, text.getFullText(), page, text.getY()));
  }

  /**
   * The headings so far.
   *
   * @return in reading order
   */
  public List<Heading> headings() {
    return List.copyOf(headings);
  }
}
