package clenchbook.delivery;

import clenchbook.billing.mails.MailId;
import clenchbook.billing.mails.MailLedger;
import clenchbook.billing.mails.MailState;
import clenchbook.delivery.DeliveryOutcome.Result;
import clenchbook.delivery.message.MailMessage;
import clenchbook.delivery.message.OutgoingMail;
import clenchbook.texts.Message;
import clenchbook.texts.Texts;
import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Delivers mails over one kept connection, each at most once.
 *
 * <p>Each mail goes through steps that are on disk before the next is taken: intended, handed over,
 * then delivered or refused. A mail that the ledger knows as handed over without an answer, from
 * this run or one that was killed, is unsure: it is reported and not sent. What a server cannot
 * take just now is tried again after the others, with growing waits, and stays intended.
 *
 * <p>The run stops early where going on would help nobody: the server cannot be reached, does not
 * accept the login, or twice in a row lost the line with a mail just handed over.
 */
public final class SmtpDelivery {
  private static final int LOST_IN_A_ROW = 2;

  private final SmtpLine line;
  private final Pace pace;
  private final Clock clock;
  private final Texts kept;
  private final Sleeper sleeper;

  /**
   * @param server where the mails go
   * @param pace how fast
   * @param clock gives each message its date
   * @param kept the language in which the ledger keeps why, the same whatever the farrier reads
   */
  public SmtpDelivery(SmtpServer server, Pace pace, Clock clock, Texts kept) {
    this(new SmtpLine(server, Optional.empty()), pace, clock, kept, Sleeper.REAL);
  }

  SmtpDelivery(SmtpLine line, Pace pace, Clock clock, Texts kept, Sleeper sleeper) {
    this.line = line;
    this.pace = pace;
    this.clock = clock;
    this.kept = kept;
    this.sleeper = sleeper;
  }

  /** Waits, or pretends to. */
  @FunctionalInterface
  interface Sleeper {
    /** Sleeps for real; an interruption ends the wait and stays noted. */
    Sleeper REAL =
        duration -> {
          try {
            Thread.sleep(duration.toMillis());
          } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
          }
        };

    void sleep(Duration duration);
  }

  /**
   * Delivers what has not been delivered.
   *
   * @param mails in the order they go off
   * @param ledger where each step is written down
   * @param listener hears each outcome as it is known
   * @return an outcome for every mail
   * @throws RuntimeException what the ledger throws where a step cannot be written; the mail whose
   *     step it was is not sent, or is found unsure by the next run
   */
  public DeliveryReport deliver(
      List<QueuedMail> mails, MailLedger ledger, DeliveryListener listener) {
    if (mails.stream().map(QueuedMail::id).distinct().count() < mails.size()) {
      throw new IllegalArgumentException("a mail stands in the list twice");
    }
    Run run = new Run(mails, ledger, listener);
    try {
      run.allRounds();
    } finally {
      line.close();
    }
    return run.report();
  }

  /** The state of one call. */
  private final class Run {
    private final List<QueuedMail> mails;
    private final MailLedger ledger;
    private final DeliveryListener listener;
    private final Map<MailId, DeliveryOutcome> outcomes = new HashMap<>();
    private Optional<Message> stopped = Optional.empty();
    private int lostInARow;
    private Optional<Message> noLine = Optional.empty();

    Run(List<QueuedMail> mails, MailLedger ledger, DeliveryListener listener) {
      this.mails = mails.stream().map(mail -> mail.knownTo(ledger)).toList();
      this.ledger = ledger;
      this.listener = listener;
    }

    void allRounds() {
      List<QueuedMail> waiting = oneRound(claimed());
      for (Duration wait : pace.backOff()) {
        if (waiting.isEmpty() || stopped.isPresent()) {
          break;
        }
        line.close();
        sleeper.sleep(wait);
        waiting = oneRound(waiting);
      }
      stopped = stopped.or(() -> noLine);
    }

    private List<QueuedMail> claimed() {
      List<QueuedMail> claimed = new ArrayList<>();
      List<DeliveryOutcome> left = new ArrayList<>();
      ledger.together(
          () -> {
            for (QueuedMail queued : mails) {
              if (ledger.intend(queued.id(), queued.again())) {
                claimed.add(queued);
              } else {
                left.add(notSent(queued.id()));
              }
            }
          });
      left.forEach(this::finish);
      return claimed;
    }

    private DeliveryOutcome notSent(MailId id) {
      MailState state = ledger.find(id).orElse(MailState.INTENDED);
      if (state == MailState.DELIVERED) {
        return new DeliveryOutcome(id, Result.DELIVERED_BEFORE, Message.NONE);
      }
      if (state == MailState.HANDED_OVER) {
        ledger.unsure(id, kept.say("delivery.interrupted"));
      }
      return new DeliveryOutcome(id, Result.UNSURE, Message.of("delivery.unlearned"));
    }

    /** One try of each; gives those to try again. */
    private List<QueuedMail> oneRound(List<QueuedMail> waiting) {
      noLine = Optional.empty();
      List<QueuedMail> again = new ArrayList<>();
      for (QueuedMail queued : waiting) {
        DeliveryOutcome outcome = outcomeOf(queued);
        finish(outcome);
        if (outcome.result() == Result.PUT_OFF) {
          again.add(queued);
        }
        watchForLosses(outcome);
        if (outcome.result() == Result.DELIVERED) {
          sleeper.sleep(pace.betweenMails());
        }
      }
      return again;
    }

    private void watchForLosses(DeliveryOutcome outcome) {
      lostInARow = outcome.result() == Result.UNSURE ? lostInARow + 1 : 0;
      if (lostInARow == LOST_IN_A_ROW) {
        stop(Message.of("delivery.lostTwice"));
      }
    }

    private DeliveryOutcome outcomeOf(QueuedMail queued) {
      MailId id = queued.id();
      Optional<Message> hindrance = stopped.or(() -> noLine);
      if (hindrance.isPresent()) {
        return new DeliveryOutcome(id, Result.PUT_OFF, hindrance.get());
      }
      try {
        line.send(bytesOf(queued.mail()), queued.mail(), () -> ledger.handedOver(id));
        ledger.delivered(id);
        return new DeliveryOutcome(id, Result.DELIVERED, Message.NONE);
      } catch (ServerReply reply) {
        return answered(id, reply);
      } catch (LineLost lost) {
        return lost.afterHandingOver() ? unsure(id, lost) : putOff(id, lost.message());
      } catch (NoLine none) {
        noLine = Optional.of(none.message());
        stopped = none.mayPass() ? stopped : noLine;
        return putOff(id, none.message());
      }
    }

    private DeliveryOutcome answered(MailId id, ServerReply reply) {
      Message words = reply.message();
      if (reply.asksForLogin()) {
        stop(Message.of("delivery.asksForLogin", words));
      } else if (reply.isPermanent()) {
        ledger.refused(id, kept.say(words));
        return new DeliveryOutcome(id, Result.REFUSED, words);
      }
      return putOff(id, words);
    }

    private DeliveryOutcome unsure(MailId id, LineLost lost) {
      Message words = Message.of("delivery.noAnswer", lost.message());
      ledger.unsure(id, kept.say(words));
      return new DeliveryOutcome(id, Result.UNSURE, words);
    }

    private DeliveryOutcome putOff(MailId id, Message words) {
      ledger.putOff(id, kept.say(words));
      return new DeliveryOutcome(id, Result.PUT_OFF, words);
    }

    private byte[] bytesOf(OutgoingMail mail) {
      OffsetDateTime now = OffsetDateTime.now(clock).truncatedTo(ChronoUnit.SECONDS);
      return MailMessage.of(mail).deliveryBytes(now);
    }

    private void stop(Message why) {
      stopped = Optional.of(why);
    }

    private void finish(DeliveryOutcome outcome) {
      outcomes.put(outcome.id(), outcome);
      long done =
          outcomes.values().stream().filter(known -> known.result() != Result.PUT_OFF).count();
      listener.heard(outcome, (int) done, mails.size());
    }

    DeliveryReport report() {
      List<DeliveryOutcome> inOrder = new ArrayList<>();
      for (QueuedMail queued : mails) {
        Optional.ofNullable(outcomes.get(queued.id())).ifPresent(inOrder::add);
      }
      return new DeliveryReport(inOrder, stopped);
    }
  }
}
