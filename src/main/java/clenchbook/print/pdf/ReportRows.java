package clenchbook.print.pdf;

import clenchbook.print.chart.ChartPicture;
import clenchbook.print.invoice.LetterParts;
import clenchbook.reports.blocks.BasisWords;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Report;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Turns a report's blocks into rows for the report library, and collects its tables' layouts. */
public final class ReportRows {
  /** Key figures that stand side by side. */
  static final int KEYS_ACROSS = 4;

  /** Rows that a head or a total keeps with it. */
  private static final int KEPT = 2;

  private static final Block.Cell NO_CELL = Block.Cell.of("");

  private final List<Map<String, Object>> rows = new ArrayList<>();
  private final List<TableLayout> layouts = new ArrayList<>();
  private final List<Block> blocks;
  private final BasisWords basis;
  private final Locale locale;
  private Optional<Block.Heading> first = Optional.empty();
  private Optional<Block.Heading> second = Optional.empty();
  private int sheet;
  private int tall;
  private int section;
  private int table;

  ReportRows(Report report) {
    this.blocks = report.blocks();
    this.basis = new BasisWords(report.texts());
    this.locale = report.texts().locale();
    for (int i = 0; i < blocks.size(); i++) {
      add(blocks.get(i), i);
    }
    if (first.isPresent() || second.isPresent() || rows.isEmpty()) {
      row("nothing");
    }
  }

  List<Map<String, Object>> rows() {
    return rows;
  }

  List<TableLayout> layouts() {
    return layouts;
  }

  /** What the signs of its figures say; empty where there are none. */
  String legend() {
    return blocks.stream().anyMatch(ReportRows::hasBasis) ? basis.legend() : "";
  }

  private static boolean hasBasis(Block block) {
    if (block instanceof Block.KeyFigures keys) {
      return keys.figures().stream().anyMatch(figure -> figure.restsOn().isPresent());
    }
    return block instanceof Block.Table table
        && table.rows().stream()
            .flatMap(row -> row.cells().stream())
            .anyMatch(cell -> cell.restsOn().isPresent());
  }

  private void add(Block block, int at) {
    if (block instanceof Block.Heading heading) {
      heading(heading, at);
    } else if (block instanceof Block.Paragraph paragraph) {
      put(row("paragraph"), "text", paragraph.text());
    } else if (block instanceof Block.Caution caution) {
      put(row("caution"), "text", caution.text());
    } else if (block instanceof Block.Answer answer) {
      put(row("answer"), "text", answer.text());
    } else if (block instanceof Block.ToDo toDo) {
      toDo(toDo.things());
    } else if (block instanceof Block.Folded || block instanceof Block.Answers) {
      throw new IllegalArgumentException("for the web page only: " + block);
    } else if (block instanceof Block.PageBreak) {
      sheet++;
    } else if (block instanceof Block.KeyFigures keys) {
      keys(keys.figures());
    } else if (block instanceof Block.Picture picture) {
      Map<String, Object> row = row("picture");
      put(row, "text", picture.title());
      put(row, "words", picture.inWords());
      row.put("image", new ChartPicture(picture.chart(), locale));
    } else {
      table((Block.Table) block);
    }
  }

  private void toDo(List<String> things) {
    for (int i = 0; i < things.size(); i++) {
      Map<String, Object> row = row("toDo");
      put(row, "place", String.valueOf(i + 1));
      put(row, "text", things.get(i));
    }
  }

  /** A heading waits for the row it stands above, so that the two are never torn apart. */
  private void heading(Block.Heading heading, int at) {
    if (heading.level() == 1) {
      first = Optional.of(heading);
      second = Optional.empty();
    } else {
      second = Optional.of(heading);
    }
    if (pictureFollows(at)) {
      tall++;
    }
  }

  private boolean pictureFollows(int at) {
    for (int i = at + 1; i < blocks.size() && i <= at + 2; i++) {
      Block next = blocks.get(i);
      if (next instanceof Block.Picture) {
        return true;
      }
      if (!(next instanceof Block.Paragraph)) {
        return false;
      }
    }
    return false;
  }

  private void keys(List<Block.KeyFigure> figures) {
    for (int from = 0; from < figures.size(); from += KEYS_ACROSS) {
      Map<String, Object> row = row("keys");
      for (int i = 0; i < KEYS_ACROSS && from + i < figures.size(); i++) {
        Block.KeyFigure figure = figures.get(from + i);
        put(row, "keyLabel" + i, figure.label());
        put(row, "keyValue" + i, figure.value());
        put(row, "keyMark" + i, basis.word(figure.restsOn()));
      }
    }
  }

  private void table(Block.Table block) {
    int number = layout(TableLayout.of(block));
    table++;
    List<Block.Row> lines = block.rows().isEmpty() ? List.of(nothingIn(block)) : block.rows();
    int first = rows.size();
    for (Block.Row line : lines) {
      Map<String, Object> row =
          row(TableLayout.heads(line) ? "part" : (line.total() ? "total" : "row") + number);
      put(row, "text", line.cells().get(0).text());
      row.put("table", "table " + table);
      row.put("head" + number, Boolean.TRUE);
      row.put("captioned", !block.caption().isBlank());
      put(row, "caption", block.caption());
      for (int i = 0; i < line.cells().size(); i++) {
        Block.Cell cell = line.cells().get(i);
        put(row, "header" + i, block.columns().get(i).header());
        put(row, "cell" + i, cell.text());
        put(row, "mark" + i, basis.sign(cell.restsOn()));
      }
    }
    keepTogether(lines, first);
  }

  /** The number of the layout that a table shares, or begins. */
  private int layout(TableLayout layout) {
    for (int i = 0; i < layouts.size(); i++) {
      if (layouts.get(i).like(layout)) {
        layouts.set(i, layouts.get(i).with(layout));
        return i;
      }
    }
    layouts.add(layout);
    return layouts.size() - 1;
  }

  /** A part's head keeps its first two rows on its page, a total the last two above it. */
  private void keepTogether(List<Block.Row> lines, int first) {
    for (int i = 0; i < lines.size(); i++) {
      if (TableLayout.heads(lines.get(i))) {
        int last = i;
        while (last < i + KEPT
            && last + 1 < lines.size()
            && !TableLayout.heads(lines.get(last + 1))) {
          last++;
        }
        keep(first + i, first + last);
      } else if (lines.get(i).total()) {
        keep(Math.max(first, first + i - KEPT), first + i);
      }
    }
  }

  private void keep(int from, int to) {
    String block = (String) rows.get(from).get("keep");
    for (int i = from; i <= to; i++) {
      rows.get(i).put("keep", block);
    }
  }

  /** An empty table still shows its head, and that nothing was forgotten. */
  private static Block.Row nothingIn(Block.Table block) {
    List<Block.Cell> cells = new ArrayList<>(Collections.nCopies(block.columns().size(), NO_CELL));
    cells.set(0, Block.Cell.of("–"));
    return new Block.Row(cells, false);
  }

  private Map<String, Object> row(String kind) {
    Map<String, Object> row = new HashMap<>();
    if (first.isPresent() || second.isPresent()) {
      section++;
    }
    first.ifPresent(heading -> put(row, "heading1", heading.text()));
    second.ifPresent(heading -> put(row, "heading2", heading.text()));
    row.put("isHeading1", first.isPresent());
    row.put("isHeading2", second.isPresent());
    first = Optional.empty();
    second = Optional.empty();
    row.put(kind, Boolean.TRUE);
    row.put("sheet", "sheet " + sheet);
    row.put("tall", "tall " + tall);
    row.put("section", "section " + section);
    row.put("table", "none " + rows.size());
    row.put("keep", "row " + rows.size());
    rows.add(row);
    return row;
  }

  private static void put(Map<String, Object> row, String name, String text) {
    LetterParts.put(row, name, text);
  }
}
