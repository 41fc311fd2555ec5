package clenchbook.life;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Something that happens in a book's life. Its three numbers say what it happens to, by what there
 * is to choose from at that moment, so that an event stays sound when others before it are left
 * out.
 */
record LifeEvent(Kind kind, int one, int two, int three) {
  private static final int RANGE = 1000;

  enum Kind {
    ADD(6, true),
    DELETE(6, true),
    RESTORE(5, true),
    CHARGE(6, true),
    DATE(4, true),
    WORK(2, true),
    OWNER(3, true),
    HORSE(2, true),
    SHARE(2, true),
    PRICE(2, true),
    RENAME(2, true),
    FORMERLY(1, true),
    SOLD(2, true),
    DOTTY(1, true),
    CANCEL(2, true),
    HOLD(2, true),
    UNHOLD(2, true),
    UNDO(10, true),
    PAYMENT(6, true),
    UNPAY(1, true),
    MONTH_END(18, false),
    EARLIER(3, false),
    SEND(14, false),
    PREVIEW(2, false),
    CORRECT(5, false),
    KILLED(2, false),
    KILLED_SEND(2, false);

    private final int weight;
    private final boolean change;

    Kind(int weight, boolean change) {
      this.weight = weight;
      this.change = change;
    }

    /** A kind by weight, of those that change the book or of the commands. */
    private static Kind any(boolean change, SplittableRandom random) {
      List<Kind> urn = new ArrayList<>();
      for (Kind kind : values()) {
        for (int time = 0; time < kind.weight && kind.change == change; time++) {
          urn.add(kind);
        }
      }
      return urn.get(random.nextInt(urn.size()));
    }
  }

  /**
   * A life: visits that are run and sent, then changes and commands, mostly by turns.
   *
   * @param seed of the draws
   * @param length how many events
   */
  static List<LifeEvent> sequence(long seed, int length) {
    SplittableRandom random = new SplittableRandom(seed);
    List<LifeEvent> events = new ArrayList<>();
    for (int visits = 1 + random.nextInt(2); visits > 0; visits--) {
      events.add(drawn(Kind.ADD, random));
    }
    events.add(new LifeEvent(Kind.MONTH_END, 0, 0, 0));
    events.add(new LifeEvent(Kind.SEND, 0, 0, 0));
    boolean change = true;
    while (events.size() < length) {
      events.add(drawn(Kind.any(change, random), random));
      change = change ? random.nextInt(4) == 0 : random.nextInt(2) == 0;
    }
    return events;
  }

  private static LifeEvent drawn(Kind kind, SplittableRandom random) {
    return new LifeEvent(kind, random.nextInt(RANGE), random.nextInt(RANGE), random.nextInt(RANGE));
  }

  /**
   * Which of several things it happens to, the one last touched standing first: mostly that one,
   * since what goes wrong goes wrong where one change follows another.
   */
  int of(int size) {
    return one < RANGE * 6 / 10 ? 0 : one % size;
  }

  /**
   * Which month a command is for: half the time that of the visit last touched, else the one after
   * it, seldom any other.
   */
  int month(int touched, int months) {
    if (one < RANGE / 2) {
      return touched;
    }
    return one < RANGE * 8 / 10 ? Math.min(touched + 1, months - 1) : one % months;
  }

  /** The event, and before a month-end or a send the same command killed. */
  List<LifeEvent> killedFirst() {
    return switch (kind) {
      case MONTH_END -> List.of(new LifeEvent(Kind.KILLED, one, two, three), this);
      case SEND -> List.of(new LifeEvent(Kind.KILLED_SEND, one, two, three), this);
      default -> List.of(this);
    };
  }
}
