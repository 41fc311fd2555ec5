package clenchbook.commands;

import clenchbook.book.SheetKind;
import clenchbook.commands.opening.DiskTrouble;
import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.NextStep;
import clenchbook.commands.opening.OpenBook;
import clenchbook.commands.opening.RunFault;
import clenchbook.commands.opening.Terminal;
import clenchbook.print.files.CsvText;
import clenchbook.reading.BookReader;
import clenchbook.reading.HeadingsFile;
import clenchbook.reading.ReadOptions;
import clenchbook.reading.formats.cells.UnreadableWorkbook;
import clenchbook.reading.proposal.Proposal;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.texts.Message;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;

/** Writes what unknown sheets and headings likely mean into the file of headings beside a book. */
final class ProposedHeadings {
  private static final List<String> COLUMNS = List.of("Sheet", "Mine", "Means", "Sure", "Why");

  private final Path book;
  private final Machine machine;
  private final Terminal terminal;
  private final Path file;

  ProposedHeadings(Path book, Machine machine, Terminal terminal) {
    this.book = book;
    this.machine = machine;
    this.terminal = terminal;
    this.file = HeadingsFile.beside(book);
  }

  private String name() {
    return String.valueOf(file.getFileName());
  }

  /**
   * Refuses before anything is read: what the farrier has put right is not written over.
   *
   * @throws RunFault where the file is there
   */
  void refuseToOverwrite() {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new RunFault(there());
    }
  }

  private Message there() {
    return Message.of("commands.propose.there", name());
  }

  /**
   * Guesses, writes the file where there is anything to say, and tells of it.
   *
   * @param open the book as it is read without the guesses
   * @return whether there is a file now; not where every sheet and heading is known
   * @throws RunFault when the book can't be read or the file can't be written
   */
  boolean write(OpenBook open) {
    terminal.progress(Message.of("commands.propose.progress"));
    List<Proposal> rows = read();
    if (rows.isEmpty()) {
      terminal.say(Message.of("commands.propose.allKnown"));
      return false;
    }
    write(rows);
    tell(rows, open.book().present().contains(SheetKind.HEADINGS));
    return true;
  }

  private List<Proposal> read() {
    try {
      ReadOptions options =
          new ReadOptions(machine.password(), machine.locale(), machine.headings(), unused -> {});
      return BookReader.propose(book, options);
    } catch (UnreadableWorkbook e) {
      throw OpenBook.refused(book, e);
    } catch (IOException e) {
      throw new RunFault(
          Message.of("commands.cantRead", String.valueOf(book.getFileName()), DiskTrouble.why(e)),
          e);
    }
  }

  private void write(List<Proposal> rows) {
    FigureTable table = new FigureTable(name(), COLUMNS, rows.stream().map(this::cells).toList());
    try (OutputStream out =
        Files.newOutputStream(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      out.write(CsvText.of(table));
    } catch (FileAlreadyExistsException e) {
      throw new RunFault(there(), e);
    } catch (IOException e) {
      throw new RunFault(Message.of("commands.propose.cantWrite", name(), DiskTrouble.why(e)), e);
    }
  }

  private List<String> cells(Proposal row) {
    String why = terminal.texts().say(row.why());
    return List.of(row.sheet(), row.mine(), row.means(), Integer.toString(row.sure()), why);
  }

  private void tell(List<Proposal> rows, boolean sheetInBook) {
    int guessed = (int) rows.stream().filter(row -> !row.means().isEmpty()).count();
    terminal.say(Message.of("commands.propose.guessed", guessed, rows.size(), name()));
    String check = NextStep.command("check", book);
    boolean used = !sheetInBook && machine.headings().isEmpty();
    Message next =
        used
            ? Message.of("commands.propose.look", name(), check)
            : Message.of("commands.propose.copy", name(), check);
    terminal.say(NextStep.of(next));
  }
}
