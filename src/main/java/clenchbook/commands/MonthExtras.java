package clenchbook.commands;

import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.OpenBook;
import clenchbook.print.files.OutputFile;
import clenchbook.print.html.HtmlPage;
import clenchbook.reports.month.MonthFindings;
import clenchbook.reports.month.MonthPages;
import clenchbook.writing.MarkedCopyWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** The month's page, and the marked copy where there are problems. */
final class MonthExtras {
  private MonthExtras() {}

  static Map<String, OutputFile> of(
      OpenBook open,
      Machine machine,
      MonthFindings month,
      Set<String> files,
      Map<String, String> documents) {
    Map<String, OutputFile> extras = new LinkedHashMap<>();
    if (!month.problems().isEmpty()) {
      extras.put(
          "marked-copy.xlsx",
          out ->
              MarkedCopyWriter.write(
                  open.file(),
                  machine.password(),
                  month.problems(),
                  open.book().settings().texts(),
                  out));
    }
    Set<String> all = new TreeSet<>(files);
    all.addAll(extras.keySet());
    byte[] page =
        HtmlPage.of(MonthPages.of(month, open.understood(), documents, all), RunFacts.version());
    extras.put("index.html", OutputFile.of(page));
    return extras;
  }
}
