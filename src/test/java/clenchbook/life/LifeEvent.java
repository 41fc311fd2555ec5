package clenchbook.life;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Something that happens in a book's life. Its three numbers are taken modulo whatever there is to
 * choose from at that moment, so that an event stays sound when others before it are left out.
 */
record LifeEvent(Kind kind, int one, int two, int three) {

  enum Kind {
    ADD(6),
    DELETE(5),
    RESTORE(4),
    CHARGE(6),
    DATE(4),
    WORK(2),
    OWNER(2),
    SHARE(1),
    PRICE(1),
    CANCEL(1),
    HOLD(1),
    UNHOLD(2),
    PAYMENT(4),
    MONTH_END(12),
    EARLIER(3),
    SEND(9),
    CORRECT(4),
    KILLED(2);

    private final int weight;

    Kind(int weight) {
      this.weight = weight;
    }
  }

  static List<LifeEvent> sequence(long seed, int length) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Kind> urn = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      for (int time = 0; time < kind.weight; time++) {
        urn.add(kind);
      }
    }
    List<LifeEvent> events = new ArrayList<>();
    for (int turn = 0; turn < length; turn++) {
      events.add(
          new LifeEvent(
              urn.get(random.nextInt(urn.size())),
              random.nextInt(1000),
              random.nextInt(1000),
              random.nextInt(1000)));
    }
    return events;
  }
}
