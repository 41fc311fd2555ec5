package clenchbook.reports.blocks;

import clenchbook.texts.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A report: the answer on its first page, the evidence behind it, and an annex file for what few
 * will read. It names the file it becomes and the words of the link to it, so that a new report is
 * printed and linked without a second list.
 *
 * @param name the file's name without extension, such as {@code margins}; may hold a folder
 * @param label the words of the link to it
 * @param title the title
 * @param subtitle the period and business
 * @param caution what stands at the foot of each page; empty for none
 * @param first the first page; empty for an annex
 * @param evidence the pages behind it, in reading order
 * @param annex what stands in a file of its own; empty for none
 * @param texts the texts of its language, for what stands around it: the annex's title, the pages'
 *     numbers
 * @param language the two-letter code of the language that it is written in
 */
public record Report(
    String name,
    String label,
    String title,
    String subtitle,
    String caution,
    Optional<FirstPage> first,
    List<Block> evidence,
    List<Block> annex,
    Texts texts,
    String language) {
  /** Copies its lists. */
  public Report {
    evidence = List.copyOf(evidence);
    annex = List.copyOf(annex);
  }

  /** A report in the language that its texts are spoken in. */
  public Report(
      String name,
      String label,
      String title,
      String subtitle,
      String caution,
      Optional<FirstPage> first,
      List<Block> evidence,
      List<Block> annex,
      Texts texts) {
    this(name, label, title, subtitle, caution, first, evidence, annex, texts, texts.spoken());
  }

  /**
   * Pages without a first page, such as an annex.
   *
   * @param name the file's name without extension
   * @param title the title, which is the label too
   * @param subtitle the period and business
   * @param caution what stands at the foot of each page; empty for none
   * @param blocks the content
   * @param texts the texts of its language
   */
  public Report(
      String name, String title, String subtitle, String caution, List<Block> blocks, Texts texts) {
    this(name, title, title, subtitle, caution, Optional.empty(), blocks, List.of(), texts);
  }

  /** The same pages, said to be in the language that they are written in. */
  public Report in(String other) {
    return new Report(name, label, title, subtitle, caution, first, evidence, annex, texts, other);
  }

  /**
   * Everything printed in the report's own file.
   *
   * @return the first page, a new page, the evidence
   */
  public List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    first.ifPresent(page -> blocks.addAll(page.blocks()));
    if (first.isPresent() && !evidence.isEmpty()) {
      blocks.add(new Block.PageBreak());
    }
    blocks.addAll(evidence);
    return List.copyOf(blocks);
  }

  /**
   * The report's file.
   *
   * @return relative to the folder of the run, such as {@code margins.pdf}
   */
  public String file() {
    return name + ".pdf";
  }

  /**
   * The files it becomes.
   *
   * @return the report itself, then its annex as a report of its own where it has one
   */
  public List<Report> files() {
    if (annex.isEmpty()) {
      return List.of(this);
    }
    String behind = texts.say("print.report.annex", title);
    return List.of(
        this, new Report("annex/" + name, behind, subtitle, caution, annex, texts).in(language));
  }
}
