package clenchbook.commands;

import clenchbook.commands.mailing.PostRoom;
import clenchbook.commands.mailing.SendRequest;
import clenchbook.commands.opening.Typing;
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
  String inWords() {
    return request.preview() ? afterPreview() : afterSending();
  }

  private String month(String command, String... more) {
    List<String> options = new ArrayList<>(List.of("--month", request.month().toString()));
    options.addAll(List.of(more));
    return typing.command(command, options.toArray(String[]::new));
  }

  private String afterPreview() {
    if (held) {
      return "put the rows right that are held back; then " + month("month-end");
    }
    if (!drafts) {
      return "nothing is left to issue; " + whenMoneyComes();
    }
    List<String> what = new ArrayList<>();
    if (mails) {
      what.add("the mails");
    }
    if (letters) {
      what.add("the letters that " + OUTBOX + PostRoom.PRINT_LIST + " names");
    }
    return "look at " + String.join(" and ", what) + "; if they are right, " + month("send");
  }

  private String afterSending() {
    List<String> steps = new ArrayList<>();
    if (mails) {
      mails(steps);
    }
    if (letters) {
      steps.add("print what " + OUTBOX + PostRoom.PRINT_LIST + " names");
    }
    if (held) {
      steps.add("put the rows right that are held back, then " + month("month-end"));
    }
    return steps.isEmpty() ? whenMoneyComes() : String.join("; ", steps);
  }

  private void mails(List<String> steps) {
    String deliver = month("send", "--deliver");
    if (request.deliver() && !gone) {
      steps.add("try what has not gone again, " + deliver);
    } else if (!request.deliver() && server) {
      steps.add("send the mails in the folder outbox yourself, or let " + deliver + " do it");
    } else if (!request.deliver()) {
      steps.add(
          "send the mails in the folder outbox yourself (with an SMTP host in Settings, --deliver"
              + " does it)");
    }
  }

  private String whenMoneyComes() {
    return "when money comes in, " + typing.command("payments", "--statement", "FILE");
  }
}
