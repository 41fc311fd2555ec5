package clenchbook.print.html;

import clenchbook.print.fonts.Typefaces;
import clenchbook.reports.blocks.MonthPage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * Writes the month's page: one HTML file that needs nothing else, neither a network nor a script.
 * It reads well on a phone, on a desk and on paper.
 */
public final class HtmlPage {
  private final StringBuilder out = new StringBuilder(64 * 1024);
  private final HtmlBlocks blocks;
  private final MonthPage page;
  private final String version;

  private HtmlPage(MonthPage page, String version) {
    this.page = page;
    this.version = version;
    this.blocks = new HtmlBlocks(out, page.texts());
  }

  /**
   * The page as a file.
   *
   * @param page what it says
   * @param version of the program, for the page's foot; empty for one that is not packaged
   * @return HTML in UTF-8
   */
  public static byte[] of(MonthPage page, String version) {
    Typefaces.prepare();
    return new HtmlPage(page, version).write().getBytes(StandardCharsets.UTF_8);
  }

  private String write() {
    head();
    for (int i = 0; i < page.sections().size(); i++) {
      section(page.sections().get(i), "part" + (i + 1));
    }
    problems();
    reading();
    files();
    foot();
    return out.toString();
  }

  private void head() {
    String name = page.business().isBlank() ? page.title() : page.title() + " · " + page.business();
    out.append("<!DOCTYPE html>\n<html lang=\"").append(Html.escaped(page.texts().spoken()));
    out.append("\">\n<head>\n<meta charset=\"utf-8\">\n");
    out.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
    out.append(
        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src"
            + " 'unsafe-inline'\">\n");
    out.append("<meta name=\"referrer\" content=\"no-referrer\">\n");
    out.append("<title>").append(Html.escaped(name)).append("</title>\n");
    out.append("<style>\n").append(style()).append("</style>\n</head>\n<body>\n<header>\n");
    if (!page.business().isBlank()) {
      out.append("<p>").append(Html.escaped(page.business())).append("</p>\n");
    }
    out.append("<h1>").append(Html.escaped(page.title())).append("</h1>\n");
    navigation();
    out.append("</header>\n<main>\n");
  }

  private void navigation() {
    out.append("<nav aria-label=\"").append(words("print.page.parts")).append("\">\n<ul>\n");
    for (int i = 0; i < page.sections().size(); i++) {
      jump("part" + (i + 1), page.sections().get(i).title());
    }
    jump("files", page.texts().say("print.page.files"));
    out.append("</ul>\n</nav>\n");
  }

  private void jump(String id, String words) {
    out.append("<li><a href=\"#").append(id).append("\">").append(Html.escaped(words));
    out.append("</a></li>\n");
  }

  private void problems() {
    boolean none = page.notices().isEmpty() && page.problems().links().isEmpty();
    out.append(none ? "<section class=\"problems none\"" : "<section class=\"problems\"");
    out.append(" aria-label=\"").append(words("print.page.problems")).append("\">\n");
    if (!page.notices().isEmpty()) {
      out.append("<ul>\n");
      for (String notice : page.notices()) {
        out.append("<li>").append(Html.escaped(notice)).append("</li>\n");
      }
      out.append("</ul>\n");
    }
    out.append("<p>").append(Html.escaped(page.problems().count()));
    for (MonthPage.FileLink link : page.problems().links()) {
      out.append(" <a href=\"").append(Html.address(link.path())).append("\">");
      out.append(Html.escaped(link.label())).append("</a>");
    }
    out.append("</p>\n</section>\n");
  }

  private void reading() {
    if (page.reading().lines().isEmpty()) {
      return;
    }
    out.append("<section id=\"reading\">\n<h2>").append(words("print.page.reading"));
    out.append("</h2>\n");
    for (String line : page.reading().lines()) {
      out.append("<p>").append(Html.escaped(line)).append("</p>\n");
    }
    for (MonthPage.FileLink link : page.reading().links()) {
      out.append("<p><a href=\"").append(Html.address(link.path())).append("\">");
      out.append(Html.escaped(link.label())).append("</a></p>\n");
    }
    out.append("</section>\n");
  }

  private void section(MonthPage.Section section, String id) {
    out.append("<section id=\"").append(id).append("\">\n<h2>");
    out.append(Html.escaped(section.title())).append("</h2>\n");
    section.blocks().forEach(blocks::write);
    if (!section.file().isBlank()) {
      out.append("<p class=\"whole\"><a href=\"").append(Html.address(section.file()));
      out.append("\">").append(words("print.page.whole", section.file())).append("</a></p>\n");
    }
    out.append("</section>\n");
  }

  private void files() {
    out.append("<section id=\"files\">\n<h2>").append(words("print.page.files"));
    out.append("</h2>\n");
    for (MonthPage.FileGroup group : page.files()) {
      out.append("<h3>")
          .append(Html.escaped(group.title()))
          .append("</h3>\n<ul class=\"files\">\n");
      for (MonthPage.FileLink file : group.files()) {
        out.append("<li><a href=\"").append(Html.address(file.path())).append("\">");
        out.append(Html.escaped(file.label())).append("</a>");
        if (!file.note().isBlank()) {
          out.append(" <span>").append(Html.escaped(file.note())).append("</span>");
        }
        out.append("</li>\n");
      }
      out.append("</ul>\n");
    }
    out.append("</section>\n");
  }

  private void foot() {
    out.append("</main>\n<footer>\n");
    if (blocks.hasBases()) {
      out.append("<p>").append(words("print.page.bases")).append("</p>\n");
    }
    String program = version.isEmpty() ? "Clenchbook" : "Clenchbook " + version;
    out.append("<p>").append(words("print.page.madeBy", program)).append("</p>\n");
    out.append("</footer>\n</body>\n</html>\n");
  }

  private String words(String key, Object... gaps) {
    return Html.escaped(page.texts().say(key, gaps));
  }

  private static String style() {
    try (InputStream in = HtmlPage.class.getResourceAsStream("/page/month.css")) {
      if (in == null) {
        throw new IOException("the page's style is missing from the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
