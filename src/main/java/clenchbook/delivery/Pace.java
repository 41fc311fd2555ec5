package clenchbook.delivery;

import java.time.Duration;
import java.util.List;

/**
 * How fast mails follow one another.
 *
 * @param betweenMails the pause after each mail; providers take a burst for unwanted mail
 * @param backOff the wait before each further round over the mails a server could not take just
 *     then; as many rounds as waits
 */
public record Pace(Duration betweenMails, List<Duration> backOff) {
  /** One second between mails; three further rounds, after 5 s, 30 s and 2 minutes. */
  public static final Pace GENTLE =
      new Pace(
          Duration.ofSeconds(1),
          List.of(Duration.ofSeconds(5), Duration.ofSeconds(30), Duration.ofMinutes(2)));

  /** Copies the list. */
  public Pace {
    backOff = List.copyOf(backOff);
  }

  /** The same back-off with another pause between mails. */
  public Pace withPause(Duration pause) {
    return new Pace(pause, backOff);
  }
}
