package clenchbook.commands.mailing;

import clenchbook.commands.opening.RegisterChoice;
import clenchbook.delivery.SmtpServer.Protection;
import java.nio.file.Path;
import java.time.Duration;
import java.time.YearMonth;
import java.util.Optional;
import java.util.Set;

/**
 * What send was asked.
 *
 * @param book the workbook
 * @param month the month
 * @param out the folder of reports; empty for the one beside the book
 * @param register which register
 * @param preview true to write the mails and mark nothing
 * @param deliver true to hand the mails to the mail server
 * @param yes true to issue without asking
 * @param again owners whose mail goes off again, whatever became of it
 * @param protection how much of TLS is insisted on
 * @param pause the pause between two mails
 */
public record SendRequest(
    Path book,
    YearMonth month,
    Optional<Path> out,
    RegisterChoice register,
    boolean preview,
    boolean deliver,
    boolean yes,
    Set<String> again,
    Protection protection,
    Duration pause) {
  /** Copies the set. */
  public SendRequest {
    again = Set.copyOf(again);
  }
}
