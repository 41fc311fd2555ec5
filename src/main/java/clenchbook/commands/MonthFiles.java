package clenchbook.commands;

import clenchbook.commands.opening.OpenBook;
import clenchbook.print.files.CsvText;
import clenchbook.print.files.OutputFile;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.month.BookFigures;
import clenchbook.reports.month.MonthFindings;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The files of a month that stand in tables. */
final class MonthFiles {
  private MonthFiles() {}

  /** Everything that is text. */
  static Map<String, OutputFile> tables(MonthFindings month) {
    Map<String, OutputFile> files = new LinkedHashMap<>();
    for (FigureTable table : month.tables()) {
      files.put("figures/" + table.name() + ".csv", csv(table));
    }
    files.put(
        "problems.csv",
        csv(
            BookFigures.problems(
                month.problems(), month.jobs().index().book().settings().texts())));
    files.put("due.ics", OutputFile.of(month.due().calendar().getBytes(StandardCharsets.UTF_8)));
    return files;
  }

  /** What was made of each sheet and column. */
  static Map<String, OutputFile> understood(OpenBook open) {
    FigureTable table = BookFigures.understood(open.understood(), open.book().settings().texts());
    return Map.of("figures/" + table.name() + ".csv", csv(table));
  }

  static OutputFile csv(FigureTable table) {
    return OutputFile.of(CsvText.of(table));
  }

  static Map<String, OutputFile> files(List<Map<String, byte[]>> parts) {
    Map<String, OutputFile> files = new LinkedHashMap<>();
    parts.forEach(part -> part.forEach((path, bytes) -> files.put(path, OutputFile.of(bytes))));
    return files;
  }
}
