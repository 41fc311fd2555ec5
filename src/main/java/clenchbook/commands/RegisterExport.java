package clenchbook.commands;

import clenchbook.commands.opening.DiskTrouble;
import clenchbook.commands.opening.Terminal;
import clenchbook.print.files.CsvText;
import clenchbook.print.files.OwnerOnly;
import clenchbook.register.Register;
import clenchbook.register.RegisterCheck;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.texts.Message;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;

/** Writes every table of the register as CSV, each document's PDF beside, and verifies it all. */
final class RegisterExport {
  private final Register register;

  RegisterExport(Register register) {
    this.register = register;
  }

  void writeTo(Path folder, Terminal terminal) {
    try {
      OwnerOnly.makeFolders(folder);
      for (String table : Register.TABLES) {
        List<List<String>> rows = register.dump(table);
        FigureTable figures = new FigureTable(table, rows.get(0), rows.subList(1, rows.size()));
        try (OutputStream out = OwnerOnly.open(folder.resolve(table + ".csv"))) {
          out.write(CsvText.of(figures));
        }
      }
    } catch (IOException e) {
      throw DiskTrouble.writing(
          Message.of("commands.disk.registerTables"),
          folder,
          e,
          Message.of("commands.disk.nothingLost"));
    }
    List<Message> faults = RegisterCheck.faults(register.documents());
    faults.forEach(fault -> terminal.warn(Message.of("commands.register.fault", fault)));
    terminal.say(
        faults.isEmpty()
            ? Message.of("commands.register.whole", register.documents().size())
            : Message.of("commands.register.faults", faults.size()));
  }
}
