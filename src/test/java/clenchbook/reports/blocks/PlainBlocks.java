package clenchbook.reports.blocks;

import clenchbook.reports.blocks.Block.Cell;
import clenchbook.reports.blocks.Block.Row;
import clenchbook.reports.blocks.Block.Table;
import clenchbook.texts.InEnglish;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Blocks of a report as plain lines, for tests to read; blanks that bind are plain ones. */
public final class PlainBlocks {
  private static final BasisWords MARKS = new BasisWords(InEnglish.TEXTS);

  private PlainBlocks() {}

  /** Every table of the blocks, folded ones too, by {@link #lines(Table)}. */
  public static List<List<String>> tables(List<Block> blocks) {
    List<List<String>> tables = new ArrayList<>();
    for (Block block : blocks) {
      if (block instanceof Table table) {
        tables.add(lines(table));
      } else if (block instanceof Block.Folded folded) {
        tables.addAll(tables(folded.blocks()));
      }
    }
    return tables;
  }

  /** The table under a heading or with a caption: the first whose first line holds the words. */
  public static List<String> table(List<Block> blocks, String words) {
    return tables(blocks).stream()
        .filter(table -> table.get(0).contains(words))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + words + " in " + tables(blocks)));
  }

  /** Headings and rows as {@code caption: a | b}, a figure that was not measured with its mark. */
  public static List<String> lines(Table table) {
    List<String> lines = new ArrayList<>();
    String caption = table.caption().isEmpty() ? "" : table.caption() + ": ";
    lines.add(
        caption
            + table.columns().stream()
                .map(Block.Column::header)
                .collect(Collectors.joining(" | ")));
    table.rows().forEach(row -> lines.add(line(row)));
    return lines;
  }

  private static String line(Row row) {
    String cells = row.cells().stream().map(PlainBlocks::text).collect(Collectors.joining(" | "));
    return row.total() ? "= " + cells : cells;
  }

  private static String text(Cell cell) {
    String text = cell.text().replace('\u00a0', ' ');
    String mark = MARKS.sign(cell.restsOn());
    return mark.isEmpty() ? text : text + " (" + mark + ")";
  }

  /** Headings, paragraphs, answers and things to do, in order, tables left out. */
  public static List<String> words(List<Block> blocks) {
    List<String> words = new ArrayList<>();
    for (Block block : blocks) {
      if (block instanceof Block.Heading heading) {
        words.add("#".repeat(heading.level()) + " " + heading.text());
      } else if (block instanceof Block.Paragraph paragraph) {
        words.add(paragraph.text());
      } else if (block instanceof Block.Answer answer) {
        words.add(answer.text());
      } else if (block instanceof Block.ToDo todo) {
        todo.things().forEach(thing -> words.add("* " + thing));
      } else if (block instanceof Block.Folded folded) {
        words.addAll(words(folded.blocks()));
      }
    }
    return words;
  }
}
