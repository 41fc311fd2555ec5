package clenchbook.workload.methods;

import clenchbook.texts.Message;
import clenchbook.workload.hours.Phrase;

/** The unit of a score. */
public enum Unit {
  /** A bare number: an index or a count. */
  NONE(sign("")),
  /** Of an allowed dose. */
  PERCENT(sign("%")),
  /** Of a level at the ear, A-weighted. */
  DECIBELS(sign("dB(A)")),
  /** Metres per second squared, of vibration. */
  ACCELERATION(sign("m/s2")),
  /** Of vibration, 100 at the action value. */
  POINTS(Phrase.of("points", "workload.unit.points")),
  /** Of time. */
  HOURS(Phrase.of("hours", "workload.unit.hours"));

  private final Phrase name;

  Unit(Phrase name) {
    this.name = name;
  }

  private static Phrase sign(String sign) {
    return new Phrase(sign, Message.literal(sign));
  }

  /**
   * The unit as written.
   *
   * @return empty words for a bare number
   */
  public Phrase written() {
    return name;
  }
}
