package clenchbook.reports.blocks;

import clenchbook.values.Basis;
import java.util.List;
import java.util.Optional;

/** One part of a report. */
public sealed interface Block {
  /**
   * A heading.
   *
   * @param level 1 for a section, 2 for a part of one
   * @param text the words
   */
  record Heading(int level, String text) implements Block {}

  /**
   * A paragraph of plain words.
   *
   * @param text the words
   */
  record Paragraph(String text) implements Block {}

  /**
   * A caution, set apart.
   *
   * @param text the words
   */
  record Caution(String text) implements Block {}

  /**
   * The one sentence a report answers with, set large.
   *
   * @param text the sentence
   */
  record Answer(String text) implements Block {}

  /**
   * What to do, numbered, most pressing first.
   *
   * @param things a sentence or two each, at least one
   */
  record ToDo(List<String> things) implements Block {
    /** Copies its list. */
    public ToDo {
      things = List.copyOf(things);
    }
  }

  /**
   * Blocks that a page opens when asked; on paper they are left out.
   *
   * @param summary what they hold
   * @param blocks the blocks
   */
  record Folded(String summary, List<Block> blocks) implements Block {
    /** Copies its list. */
    public Folded {
      blocks = List.copyOf(blocks);
    }
  }

  /**
   * What several reports answer.
   *
   * @param answers one a report
   */
  record Answers(List<Answered> answers) implements Block {
    /** Copies its list. */
    public Answers {
      answers = List.copyOf(answers);
    }
  }

  /**
   * What one report answers.
   *
   * @param label the words of the link to it
   * @param file its file, relative to the page
   * @param answer its answer
   * @param picture its picture; empty for none
   */
  record Answered(String label, String file, String answer, Optional<Picture> picture) {
    /** An answer without a picture. */
    public Answered(String label, String file, String answer) {
      this(label, file, answer, Optional.empty());
    }
  }

  /** A new page; nothing on the web page. */
  record PageBreak() implements Block {}

  /**
   * The few figures that say most, set large.
   *
   * @param figures in reading order
   */
  record KeyFigures(List<KeyFigure> figures) implements Block {
    /** Copies its list. */
    public KeyFigures {
      figures = List.copyOf(figures);
    }
  }

  /**
   * One large figure.
   *
   * @param label what it is
   * @param value the figure with its unit
   * @param basis what it rests on; empty for a plain count
   */
  record KeyFigure(String label, String value, Optional<Basis> basis) {
    /**
     * What it rests on where it was not measured.
     *
     * @return the standard or the default; empty where nothing need be said
     */
    public Optional<Basis> restsOn() {
      return unmeasured(basis);
    }
  }

  private static Optional<Basis> unmeasured(Optional<Basis> basis) {
    return basis.filter(known -> known != Basis.MEASURED);
  }

  /**
   * A table.
   *
   * @param caption what it shows; empty for none
   * @param columns its columns
   * @param rows its rows, each with as many cells as columns
   */
  record Table(String caption, List<Column> columns, List<Row> rows) implements Block {
    /** Copies its lists. */
    public Table {
      columns = List.copyOf(columns);
      rows = List.copyOf(rows);
      for (Row row : rows) {
        if (row.cells().size() != columns.size()) {
          throw new IllegalArgumentException(caption + ": " + row + " for " + columns);
        }
      }
    }
  }

  /**
   * A column.
   *
   * @param header its heading
   * @param number true for numbers, set to the right
   * @param weight its width relative to the other columns, positive
   */
  record Column(String header, boolean number, int weight) {
    /**
     * A column of words.
     *
     * @param header its heading
     * @param weight relative width
     * @return the column
     */
    public static Column words(String header, int weight) {
      return new Column(header, false, weight);
    }

    /**
     * A column of numbers.
     *
     * @param header its heading
     * @param weight relative width
     * @return the column
     */
    public static Column number(String header, int weight) {
      return new Column(header, true, weight);
    }
  }

  /**
   * A row.
   *
   * @param cells its cells
   * @param total true for a total, set apart
   */
  record Row(List<Cell> cells, boolean total) {
    /** Copies its list. */
    public Row {
      cells = List.copyOf(cells);
    }

    /**
     * A row of plain texts.
     *
     * @param texts the cells
     * @return the row
     */
    public static Row of(String... texts) {
      return new Row(List.of(texts).stream().map(Cell::of).toList(), false);
    }

    /**
     * A total row of plain texts.
     *
     * @param texts the cells
     * @return the row
     */
    public static Row total(String... texts) {
      return new Row(List.of(texts).stream().map(Cell::of).toList(), true);
    }
  }

  /**
   * A cell.
   *
   * @param text what it says
   * @param basis what its figure rests on; empty for words and counts
   * @param link the file its words lead to on the web page; empty for none
   */
  record Cell(String text, Optional<Basis> basis, String link) {
    /**
     * A cell without a basis.
     *
     * @param text what it says
     * @return the cell
     */
    public static Cell of(String text) {
      return new Cell(text, Optional.empty(), "");
    }

    /**
     * A figure with its basis.
     *
     * @param text what it says
     * @param basis what it rests on
     * @return the cell
     */
    public static Cell of(String text, Basis basis) {
      return new Cell(text, Optional.of(basis), "");
    }

    /**
     * What the figure rests on where it was not measured.
     *
     * @return the standard or the default; empty where no mark stands beside it
     */
    public Optional<Basis> restsOn() {
      return unmeasured(basis);
    }

    /**
     * The cell with a link.
     *
     * @param file the file it leads to, relative to the page; empty for none
     * @return the linked cell
     */
    public Cell linkedTo(String file) {
      return new Cell(text, basis, file);
    }
  }

  /**
   * A picture.
   *
   * @param title what it shows
   * @param inWords the same in one sentence, for those who can't see it
   * @param chart its data
   */
  record Picture(String title, String inWords, Chart chart) implements Block {}
}
