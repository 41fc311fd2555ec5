package clenchbook.reports.blocks;

import clenchbook.texts.Texts;
import java.util.List;

/**
 * The month on one page.
 *
 * @param title the page's title, such as the month
 * @param business the business name; may be empty
 * @param texts the language of the words on it
 * @param notices what the farrier should look at first, one plain sentence each, worst first
 * @param reading how the book was read
 * @param problems how many problems the book has, with the links to them
 * @param sections the parts of the page, in order
 * @param files the links, grouped
 */
public record MonthPage(
    String title,
    String business,
    Texts texts,
    List<String> notices,
    Reading reading,
    Problems problems,
    List<Section> sections,
    List<FileGroup> files) {
  /** Copies its lists. */
  public MonthPage {
    notices = List.copyOf(notices);
    sections = List.copyOf(sections);
    files = List.copyOf(files);
  }

  /**
   * The book's problems as a count.
   *
   * @param count the count in words
   * @param links where each of them stands; empty where there are none
   */
  public record Problems(String count, List<FileLink> links) {
    /** Copies its list. */
    public Problems {
      links = List.copyOf(links);
    }
  }

  /**
   * How the book was read.
   *
   * @param lines what was assumed or left unread, a sentence each; empty where nothing was
   * @param links where it stands in full
   */
  public record Reading(List<String> lines, List<FileLink> links) {
    /** Copies its lists. */
    public Reading {
      lines = List.copyOf(lines);
      links = List.copyOf(links);
    }
  }

  /**
   * A part of the page.
   *
   * @param title its heading
   * @param file the file that holds the whole of it, as a path relative to the page; empty for none
   * @param blocks its content
   */
  public record Section(String title, String file, List<Block> blocks) {
    /** Copies its list. */
    public Section {
      blocks = List.copyOf(blocks);
    }
  }

  /**
   * Files that belong together.
   *
   * @param title what they are
   * @param files the files, in order
   */
  public record FileGroup(String title, List<FileLink> files) {
    /** Copies its list. */
    public FileGroup {
      files = List.copyOf(files);
    }
  }

  /**
   * A link to a file of the run.
   *
   * @param path relative to the page, with forward slashes, not encoded
   * @param label the words of the link
   * @param note what it is, in a few words; may be empty
   */
  public record FileLink(String path, String label, String note) {}
}
