package clenchbook.commands;

import clenchbook.commands.mailing.PostRoom;
import clenchbook.commands.mailing.SendRequest;
import clenchbook.commands.opening.Typing;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.List;

/**
 * What sending a month, or its preview, is followed by.
 *
 * @param typing how the next command is typed
 * @param request what was asked
 * @param drafts whether documents were left to issue when it began
 * @param mails whether there are mails
 * @param letters whether there are owners whose post has to be printed
 * @param server whether Settings name a mail server
 * @param gone whether every mail has gone, of those that were to go
 * @param held whether rows are held back
 */
record AfterSend(
    Typing typing,
    SendRequest request,
    boolean drafts,
    boolean mails,
    boolean letters,
    boolean server,
    boolean gone,
    boolean held) {
  private static final String OUTBOX = "outbox/";

  /** A clause in the imperative, or several in the order in which they are done. */
  Message inWords() {
    return request.preview() ? afterPreview() : afterSending();
  }

  private String month(String command, String... more) {
    List<String> options = new ArrayList<>(List.of("--month", request.month().toString()));
    options.addAll(List.of(more));
    return typing.command(command, options.toArray(String[]::new));
  }

  private Message afterPreview() {
    if (held) {
      return Message.of("commands.send.nextHeld", month("month-end"));
    }
    if (!drafts) {
      return Message.of("commands.send.nextNothing", whenMoneyComes());
    }
    String send = month("send");
    String list = OUTBOX + PostRoom.PRINT_LIST;
    if (mails && letters) {
      return Message.of("commands.send.nextPreviewBoth", list, send);
    }
    return mails
        ? Message.of("commands.send.nextPreviewMails", send)
        : Message.of("commands.send.nextPreviewLetters", list, send);
  }

  private Message afterSending() {
    List<Message> steps = new ArrayList<>();
    if (mails) {
      mails(steps);
    }
    if (letters) {
      steps.add(Message.of("commands.send.nextPrint", OUTBOX + PostRoom.PRINT_LIST));
    }
    if (held) {
      steps.add(Message.of("commands.send.nextThenHeld", month("month-end")));
    }
    return steps.isEmpty() ? whenMoneyComes() : Message.joined("; ", steps);
  }

  private void mails(List<Message> steps) {
    String deliver = month("send", "--deliver");
    if (request.deliver() && !gone) {
      steps.add(Message.of("commands.send.nextAgain", deliver));
    } else if (!request.deliver() && server) {
      steps.add(Message.of("commands.send.nextDeliver", deliver));
    } else if (!request.deliver()) {
      steps.add(Message.of("commands.send.nextYourself"));
    }
  }

  private Message whenMoneyComes() {
    return Message.of(
        "commands.send.nextPayments", typing.command("payments", "--statement", "FILE"));
  }
}
