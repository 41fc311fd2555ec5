package clenchbook.commands.opening;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How the next command is typed: with the same book, and the same places where this one was given
 * any; left out, the next would look elsewhere.
 *
 * @param book the workbook, as it was named
 * @param out the folder of reports, where it was named
 * @param register which register
 * @param headings the file of headings, where it was named
 */
public record Typing(
    Path book, Optional<Path> out, RegisterChoice register, Optional<Path> headings) {

  /**
   * A command as it is typed.
   *
   * @param name the command
   * @param more options, each with its value; may be empty
   * @return such as {@code clenchbook send "my book.xlsx" --month 2026-10}
   */
  public String command(String name, String... more) {
    List<String> options = new ArrayList<>(List.of(more));
    out.ifPresent(folder -> options.add(option("--out", folder)));
    register.file().ifPresent(file -> options.add(option("--register", file)));
    if (register.sameBook()) {
      options.add("--same-book");
    }
    headings.ifPresent(file -> options.add(option("--headings", file)));
    return NextStep.command(name, book, options.toArray(String[]::new));
  }

  private static String option(String name, Path place) {
    return name + " " + StartedAs.quoted(place.toString());
  }
}
