package clenchbook.reading;

import clenchbook.book.Book;
import clenchbook.book.understood.Understood;
import clenchbook.problem.Problem;
import java.util.List;

/**
 * A workbook read. A workbook without a usable sheet of visits is read as far as it goes: {@code
 * book.present()} then lacks {@code VISITS}, and a problem says what is missing.
 *
 * @param book everything that could be read
 * @param problems what could not, in the order of sheets, rows and columns
 * @param understood what was made of each sheet and column
 * @param sha256 of the file's bytes, in small hexadecimal digits; of a folder, of its files' names
 *     and bytes in order of names
 */
public record ReadResult(Book book, List<Problem> problems, Understood understood, String sha256) {
  /** Copies its list. */
  public ReadResult {
    problems = List.copyOf(problems);
  }
}
