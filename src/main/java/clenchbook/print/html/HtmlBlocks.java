package clenchbook.print.html;

import clenchbook.print.pdf.ReportRows;
import clenchbook.reports.blocks.Block;
import clenchbook.values.Basis;
import java.util.Optional;

/** Writes the blocks of a report as parts of a page. */
final class HtmlBlocks {
  private final StringBuilder out;
  private int pictures;
  private boolean hasBases;

  HtmlBlocks(StringBuilder out) {
    this.out = out;
  }

  /** Whether a figure so far bore the mark of its basis. */
  boolean hasBases() {
    return hasBases;
  }

  void write(Block block) {
    if (block instanceof Block.Heading heading) {
      String tag = heading.level() == 1 ? "h3" : "h4";
      element(tag, heading.text());
    } else if (block instanceof Block.Paragraph paragraph) {
      element("p", paragraph.text());
    } else if (block instanceof Block.Caution caution) {
      out.append("<p class=\"caution\">").append(Html.escaped(caution.text())).append("</p>\n");
    } else if (block instanceof Block.KeyFigures keys) {
      keys(keys);
    } else if (block instanceof Block.Table table) {
      table(table);
    } else if (block instanceof Block.Picture picture) {
      picture(picture);
    }
  }

  private void element(String tag, String text) {
    out.append('<').append(tag).append('>').append(Html.escaped(text));
    out.append("</").append(tag).append(">\n");
  }

  private void keys(Block.KeyFigures keys) {
    out.append("<dl class=\"keys\">\n");
    for (Block.KeyFigure figure : keys.figures()) {
      out.append("<div><dt>").append(Html.escaped(figure.label())).append("</dt><dd>");
      out.append(Html.escaped(figure.value())).append("</dd>");
      figure
          .basis()
          .ifPresent(
              basis ->
                  out.append("<dd class=\"basis\">")
                      .append(ReportRows.word(basis))
                      .append("</dd>"));
      out.append("</div>\n");
    }
    out.append("</dl>\n");
  }

  private void table(Block.Table table) {
    out.append("<div class=\"scroll\"");
    if (!table.caption().isBlank()) {
      // One can scroll it by keys only when it can be reached and has a name.
      out.append(" tabindex=\"0\" role=\"region\" aria-label=\"")
          .append(Html.escaped(table.caption()))
          .append('"');
    }
    out.append("><table>\n");
    if (!table.caption().isBlank()) {
      element("caption", table.caption());
    }
    out.append("<thead><tr>");
    for (Block.Column column : table.columns()) {
      out.append("<th scope=\"col\"").append(column.number() ? " class=\"n\">" : ">");
      out.append(Html.escaped(column.header())).append("</th>");
    }
    out.append("</tr></thead>\n<tbody>\n");
    table.rows().forEach(row -> row(table, row));
    out.append("</tbody></table></div>\n");
  }

  private void row(Block.Table table, Block.Row row) {
    out.append(row.total() ? "<tr class=\"total\">" : "<tr>");
    for (int i = 0; i < row.cells().size(); i++) {
      Block.Cell cell = row.cells().get(i);
      out.append(table.columns().get(i).number() ? "<td class=\"n\">" : "<td>");
      out.append(Html.escaped(cell.text()));
      mark(cell.basis());
      out.append("</td>");
    }
    out.append("</tr>\n");
  }

  private void mark(Optional<Basis> basis) {
    basis.ifPresent(
        known -> {
          hasBases = true;
          out.append("&nbsp;<abbr title=\"").append(ReportRows.word(known)).append("\">");
          out.append(ReportRows.mark(known)).append("</abbr>");
        });
  }

  private void picture(Block.Picture picture) {
    pictures++;
    out.append("<figure>\n<figcaption>").append(Html.escaped(picture.title()));
    out.append("</figcaption>\n").append(ChartSvg.of(picture, "picture" + pictures));
    out.append("\n<p>").append(Html.escaped(picture.inWords())).append("</p>\n</figure>\n");
  }
}
