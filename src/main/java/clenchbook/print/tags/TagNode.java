package clenchbook.print.tags;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A part of a document's structure: what a piece of a page is, and what it holds (ISO 32000-1:2008,
 * 14.7.2).
 *
 * <p>Not thread-safe; belongs to one document.
 */
final class TagNode {
  /** What a part holds, in reading order. */
  sealed interface Kid {}

  /**
   * Another part.
   *
   * @param node that part
   */
  record Part(TagNode node) implements Kid {}

  /**
   * A marked piece of a page.
   *
   * @param page counted from 0
   * @param number the mark's number on that page, from 0
   */
  record Mark(int page, int number) implements Kid {}

  /**
   * An annotation.
   *
   * @param page counted from 0
   * @param reference the annotation's object, such as {@code 12 0 R}
   */
  record Note(int page, String reference) implements Kid {}

  private final String type;
  private final @Nullable TagNode parent;
  private final List<Kid> kids = new ArrayList<>();
  private String attributes = "";

  TagNode(String type, @Nullable TagNode parent) {
    this.type = type;
    this.parent = parent;
  }

  /** A new part at the end of this one. */
  TagNode add(String kind) {
    TagNode node = new TagNode(kind, this);
    kids.add(new Part(node));
    return node;
  }

  /** A part that belongs here but finds its place later, by {@link #place}. */
  TagNode apart(String kind) {
    return new TagNode(kind, this);
  }

  void place(TagNode node) {
    kids.add(new Part(node));
  }

  void place(Kid kid) {
    kids.add(kid);
  }

  /**
   * Adds entries to the part's dictionary.
   *
   * @param entries in the syntax of PDF, such as {@code /Alt (a logo)}
   */
  void say(String entries) {
    attributes += entries;
  }

  String type() {
    return type;
  }

  @Nullable TagNode parent() {
    return parent;
  }

  List<Kid> kids() {
    return kids;
  }

  String attributes() {
    return attributes;
  }
}
