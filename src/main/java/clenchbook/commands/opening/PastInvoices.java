package clenchbook.commands.opening;

import clenchbook.texts.Message;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The invoices that earlier runs have left in a folder of reports.
 *
 * @param folder where those of the last month lie
 * @param last the last month that has any; of no meaning where there are none
 * @param names the names of their files, without ending, over all months
 */
record PastInvoices(Path folder, YearMonth last, List<String> names) {
  private static final String ENDING = ".pdf";

  PastInvoices {
    names = List.copyOf(names);
  }

  static PastInvoices in(Path reports) {
    Path folder = reports;
    YearMonth last = YearMonth.of(1, 1);
    List<String> names = new ArrayList<>();
    for (Path path : list(reports)) {
      Optional<YearMonth> month = month(path);
      List<String> invoices = month.isPresent() ? invoices(path.resolve("invoices")) : List.of();
      if (!invoices.isEmpty() && month.orElse(last).isAfter(last)) {
        last = month.orElse(last);
        folder = path.resolve("invoices");
      }
      names.addAll(invoices);
    }
    return new PastInvoices(folder, last, names.stream().sorted().toList());
  }

  private static List<String> invoices(Path folder) {
    return list(folder).stream()
        .map(path -> String.valueOf(path.getFileName()))
        .filter(name -> name.endsWith(ENDING))
        .map(name -> name.substring(0, name.length() - ENDING.length()))
        .toList();
  }

  private static Optional<YearMonth> month(Path folder) {
    try {
      return Optional.of(YearMonth.parse(String.valueOf(folder.getFileName())));
    } catch (DateTimeParseException another) {
      return Optional.empty();
    }
  }

  private static List<Path> list(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    List<Path> paths = new ArrayList<>();
    try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
      entries.forEach(paths::add);
    } catch (IOException | java.nio.file.DirectoryIteratorException e) {
      throw new RunFault(
          Message.of("commands.cantList", folder.toString(), String.valueOf(e.getMessage())), e);
    }
    return paths;
  }
}
