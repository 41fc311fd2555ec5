package clenchbook.print.html;

import clenchbook.reports.blocks.BasisWords;
import clenchbook.reports.blocks.Block;
import clenchbook.texts.Texts;
import java.util.Locale;

/** Writes the blocks of a report as parts of a page. */
final class HtmlBlocks {
  private final StringBuilder out;
  private final BasisWords words;
  private final Locale numbers;
  private int pictures;
  private boolean hasBases;

  HtmlBlocks(StringBuilder out, Texts texts) {
    this.out = out;
    this.words = new BasisWords(texts);
    this.numbers = texts.locale();
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
    } else if (block instanceof Block.Answer answer) {
      out.append("<p class=\"answer\">").append(Html.escaped(answer.text())).append("</p>\n");
    } else if (block instanceof Block.ToDo toDo) {
      out.append("<ol class=\"todo\">\n");
      toDo.things().forEach(thing -> element("li", thing));
      out.append("</ol>\n");
    } else if (block instanceof Block.Folded folded) {
      out.append("<details>\n");
      element("summary", folded.summary());
      folded.blocks().forEach(this::write);
      out.append("</details>\n");
    } else if (block instanceof Block.Answers answers) {
      out.append("<dl class=\"answers\">\n");
      answers.answers().forEach(this::answered);
      out.append("</dl>\n");
    } else if (block instanceof Block.KeyFigures keys) {
      keys(keys);
    } else if (block instanceof Block.Table table) {
      table(table);
    } else if (block instanceof Block.Picture picture) {
      picture(picture);
    }
  }

  private void answered(Block.Answered answered) {
    out.append("<div><dt>");
    link(answered.file(), answered.label());
    out.append("</dt><dd>").append(Html.escaped(answered.answer())).append("</dd>");
    answered
        .picture()
        .ifPresent(
            picture -> {
              out.append("<dd>");
              picture(picture);
              out.append("</dd>");
            });
    out.append("</div>\n");
  }

  private void link(String file, String words) {
    out.append("<a href=\"").append(Html.address(file)).append("\">");
    out.append(Html.escaped(words)).append("</a>");
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
      String word = words.word(figure.restsOn());
      if (!word.isEmpty()) {
        out.append("<dd class=\"basis\">").append(Html.escaped(word)).append("</dd>");
      }
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
      Block.Column column = table.columns().get(i);
      out.append(column.number() ? "<td class=\"n\"" : "<td");
      if (i > 0 && !column.header().isBlank()) {
        out.append(" data-label=\"").append(Html.escaped(column.header())).append('"');
      }
      out.append('>');
      if (cell.link().isBlank()) {
        out.append(Html.escaped(cell.text()));
      } else {
        link(cell.link(), cell.text());
      }
      mark(cell);
      out.append("</td>");
    }
    out.append("</tr>\n");
  }

  private void mark(Block.Cell cell) {
    String word = words.word(cell.restsOn());
    if (!word.isEmpty()) {
      hasBases = true;
      out.append("&nbsp;<abbr title=\"").append(Html.escaped(word)).append("\">");
      out.append(Html.escaped(words.sign(cell.restsOn()))).append("</abbr>");
    }
  }

  private void picture(Block.Picture picture) {
    pictures++;
    out.append("<figure>\n<figcaption>").append(Html.escaped(picture.title()));
    out.append("</figcaption>\n").append(ChartSvg.of(picture, "picture" + pictures, numbers));
    out.append("\n<p>").append(Html.escaped(picture.inWords())).append("</p>\n</figure>\n");
  }
}
