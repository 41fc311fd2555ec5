package clenchbook.commands;

import clenchbook.commands.mailing.MonthPost;
import clenchbook.commands.mailing.PostRoom;
import clenchbook.commands.mailing.RepeatedMail;
import clenchbook.commands.opening.DiskTrouble;
import clenchbook.commands.opening.Terminal;
import clenchbook.delivery.QueuedMail;
import clenchbook.delivery.message.MailAddress;
import clenchbook.delivery.wording.WordingFault;
import clenchbook.print.files.OutputFolder;
import clenchbook.texts.Message;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** A month's mails and its list of what is to be printed, as files in the month's folder. */
final class Outbox {
  private static final String NAME = "outbox";

  private final PostRoom room;
  private final Path month;
  private final Terminal terminal;

  /**
   * An empty outbox.
   *
   * @param from the farrier's address; without one all post is printed
   * @param besideWorkbook the workbook's folder, for the farrier's own wording
   * @param month the month's folder
   */
  Outbox(Optional<MailAddress> from, Path besideWorkbook, Path month, Terminal terminal) {
    this.room = new PostRoom(from, besideWorkbook);
    this.month = month;
    this.terminal = terminal;
  }

  /** Sorts the month's letters into mails and what is to be printed. */
  void sort(MadeMonth made, RepeatedMail again) {
    room.sort(new MonthPost(made.findings().billed()).posts(made.letters()), again);
  }

  /** The mails, in the order of the owners' names. */
  List<QueuedMail> mails() {
    return room.mails();
  }

  /** Whether there is post to be printed. */
  boolean printed() {
    return room.printed() > 0;
  }

  /** The paths of its files in the month's folder. */
  Set<String> paths() {
    return room.files().keySet().stream()
        .map(name -> NAME + "/" + name)
        .collect(Collectors.toSet());
  }

  /**
   * Writes it.
   *
   * @param facts what {@code run.json} says before the list of files
   * @param sentBefore whether documents of the month were issued before
   */
  void write(Map<String, Object> facts, boolean sentBefore) {
    Path folder = month.resolve(NAME);
    try {
      OutputFolder.write(folder, room.files(), facts);
    } catch (IOException e) {
      throw DiskTrouble.writing(
          Message.of("commands.disk.mails"), folder, e, Message.of("commands.disk.nothingSent"));
    }
    room.wordingFaults().stream().map(WordingFault::line).forEach(terminal::warn);
    room.unreadable().forEach(terminal::warn);
    int mails = room.mails().size();
    terminal.say(
        sentBefore
            ? Message.of("commands.mail.inFolderAgain", mails, folder.toString())
            : Message.of("commands.mail.inFolder", mails, folder.toString()));
    if (room.printed() > 0) {
      terminal.say(Message.of("commands.mail.toPrint", room.printed(), PostRoom.PRINT_LIST));
    }
  }
}
