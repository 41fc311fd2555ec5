package clenchbook.print.pdf;

import clenchbook.reports.blocks.Block;
import java.util.ArrayList;
import java.util.List;

/**
 * The columns of a table as they are laid out; tables of one layout share their bands.
 *
 * @param columns in order
 */
record TableLayout(List<Column> columns) {
  TableLayout {
    columns = List.copyOf(columns);
  }

  /**
   * A column.
   *
   * @param weight its relative width
   * @param number true when set to the right
   * @param marked true when a figure in it bears the mark of its basis
   */
  record Column(int weight, boolean number, boolean marked) {}

  static TableLayout of(Block.Table table) {
    List<Column> columns = new ArrayList<>();
    for (int i = 0; i < table.columns().size(); i++) {
      int at = i;
      boolean marked =
          table.rows().stream().anyMatch(row -> row.cells().get(at).restsOn().isPresent());
      Block.Column column = table.columns().get(i);
      columns.add(new Column(column.weight(), column.number(), marked));
    }
    return new TableLayout(columns);
  }

  /** Where each column begins when all share a width, and at the end the width itself. */
  List<Integer> edges(int width) {
    int all = columns.stream().mapToInt(Column::weight).sum();
    List<Integer> edges = new ArrayList<>(List.of(0));
    int before = 0;
    for (Column column : columns) {
      before += column.weight();
      edges.add((int) Math.round((double) width * before / all));
    }
    return edges;
  }
}
