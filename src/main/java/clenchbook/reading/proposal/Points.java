package clenchbook.reading.proposal;

import clenchbook.reading.proposal.KnownValues.Of;

/** How well cells go with what a column may hold; see {@link Contents}. */
final class Points {
  /** What can't be. */
  static final int CLASH = -100;

  private static final int FEWEST_SHARED = 2;

  private Points() {}

  static int days(Evidence of) {
    int days = of.share(Trait.DAY);
    if (days >= 90) {
      return 24;
    }
    return days >= 60 ? 12 : days >= 30 ? 0 : CLASH;
  }

  static int money(Evidence of) {
    boolean other =
        of.share(Trait.DAY) > 20
            || of.share(Trait.CLOCK) + of.share(Trait.MINUTES) > 30
            || of.share(Trait.PERCENT) > 30
            || of.share(Trait.NUMBER) < 60;
    if (other || of.profile().countedUp() > 80 || of.share(Trait.PHONE) > 30) {
      return CLASH;
    }
    if (of.running()) {
      return -60;
    }
    if (of.share(Trait.MONEY) >= 50) {
      return 22;
    }
    int plain = of.share(Trait.CENTS) >= 60 ? 14 : of.share(Trait.WHOLE) < 80 ? 6 : 0;
    int listed = of.recurs(Of.PRICE) >= 60 && of.shared(Of.PRICE) > FEWEST_SHARED ? 8 : 0;
    return plain + listed + (of.base() ? 8 : 0) + (of.profile().medianIn(15, 600) ? 4 : -6);
  }

  static int minutes(Evidence of) {
    if (of.share(Trait.CLOCK) >= 60) {
      boolean ofDay = of.profile().medianIn(6 * 60L, 24 * 60L);
      return ofDay ? -40 : 22;
    }
    if (of.share(Trait.MINUTES) >= 60) {
      return 24;
    }
    if (!of.isNumbers() || of.share(Trait.MONEY) > 20 || of.share(Trait.CENTS) > 40) {
      return CLASH;
    }
    if (of.running() || of.profile().countedUp() > 80) {
      return -60;
    }
    boolean likely = of.share(Trait.OF_A_JOB) >= 80 && of.profile().medianIn(5, 180);
    return likely ? 6 : of.profile().medianIn(1, 300) ? -2 : -40;
  }

  static int shoes(Evidence of) {
    if (!of.isNumbers() || of.share(Trait.MONEY) > 10 || of.share(Trait.FEW) < 80) {
      return CLASH;
    }
    boolean pairs = of.profile().shareIn(2, 2) + of.profile().shareIn(4, 4) >= 50;
    return of.share(Trait.FEW) >= 97 && pairs ? 16 : 0;
  }

  static int nails(Evidence of) {
    if (!of.isNumbers() || of.share(Trait.MONEY) > 10 || of.profile().shareIn(0, 80) < 97) {
      return CLASH;
    }
    boolean usual = of.profile().medianIn(10, 36) && of.share(Trait.WHOLE) >= 98;
    return usual ? 4 : -20;
  }

  static int size(Evidence of) {
    int sure = of.share(Trait.SIZE);
    int plain = of.share(Trait.PLAIN_SIZE) + of.share(Trait.PARTS);
    int recurs = of.recurs(Of.SIZE);
    if (sure + plain < 60) {
      return CLASH;
    }
    int known = recurs >= 70 && of.shared(Of.SIZE) >= FEWEST_SHARED && sure > 5 ? 10 : 0;
    return known + (sure >= 15 ? 16 : sure > 3 ? 8 : -6);
  }

  static int shaping(Evidence of) {
    boolean usual = of.share(Trait.SHAPING) >= 85 && of.share(Trait.HOT_COLD) >= 15;
    return usual ? 34 : of.share(Trait.SHAPING) >= 60 ? 6 : CLASH;
  }

  /** A column that holds one of the program's own words. */
  static int choice(Evidence of, Trait trait, int points) {
    int share = of.share(trait);
    return share >= 85 ? points : share >= 60 ? points / 3 : -60;
  }

  /** A column of names that the book may name elsewhere. */
  static int named(Evidence of, Of what) {
    if (!of.isWords() || of.share(Trait.EMAIL) > 20) {
      return CLASH;
    }
    int recurs = of.recurs(what);
    if (recurs < 0) {
      return 0;
    }
    if (recurs >= 80 && of.shared(what) >= FEWEST_SHARED) {
      return of.shared(what) >= 4 ? 34 : 26;
    }
    return recurs >= 40 ? 16 : recurs >= 15 ? -4 : -20;
  }

  /** Horses mostly have one name, and give their owner. */
  static int horse(Evidence of) {
    int one = of.share(Trait.ONE_WORD);
    int names = one >= 60 ? 5 : one < 20 ? -6 : 0;
    int person = of.share(Trait.PERSON) >= 60 ? -5 : 0;
    return named(of, Of.HORSE) + names + person + figures(of) + 6 * Math.min(2, of.settles());
  }

  /** Owners mostly have two names, and follow from their horse. */
  static int owner(Evidence of) {
    int share = of.share(Trait.PERSON);
    int names = share >= 60 ? 10 : share < 20 ? -6 : 0;
    return named(of, Of.OWNER) + names + figures(of) + 4 * Math.min(1, of.settled());
  }

  /** Names hold few figures. */
  private static int figures(Evidence of) {
    return of.share(Trait.FIGURES) >= 50 ? -16 : 0;
  }

  /** Names of shoes and nails; without a list of materials hardly anything speaks for one. */
  static int material(Evidence of) {
    boolean listed = of.recurs(Of.ITEM) >= 0;
    return named(of, Of.ITEM) - (listed || of.share(Trait.CODE) >= 30 ? 0 : 8);
  }

  static int work(Evidence of) {
    int trade = of.share(Trait.WORK) >= 60 ? 20 : of.share(Trait.WORK) >= 30 ? 8 : -6;
    return Math.min(36, named(of, Of.WORK) + trade);
  }

  static int extras(Evidence of) {
    if (of.share(Trait.PARTS) >= 60 && of.share(Trait.SIZE) < 10) {
      return 12;
    }
    return of.isWords() ? -8 : CLASH;
  }

  static int notes(Evidence of) {
    if (of.share(Trait.TEXT) < 50) {
      return CLASH;
    }
    boolean differ = of.profile().distinct() * 3 > of.profile().filled();
    return of.share(Trait.LONG) >= 40 && differ ? 14 : -2;
  }

  static int words(Evidence of) {
    boolean other = of.share(Trait.DAY) > 30 || of.share(Trait.NUMBER) > 60;
    return other || of.share(Trait.EMAIL) > 20 ? CLASH : 0;
  }

  static int postcode(Evidence of) {
    boolean numbers = of.share(Trait.NUMBER) >= 80 && of.profile().medianIn(1_000, 99_999);
    boolean mixed = of.share(Trait.CODE) >= 80;
    return (numbers && of.share(Trait.CENTS) < 10) || mixed ? 10 : CLASH;
  }

  static int percent(Evidence of) {
    if (of.share(Trait.PERCENT) >= 60) {
      return 20;
    }
    return of.isNumbers() && of.profile().shareIn(0, 100) >= 95 ? 0 : CLASH;
  }

  static int code(Evidence of) {
    int recurs = of.recurs(Of.CODE);
    if (of.share(Trait.DAY) > 20 || of.share(Trait.LONG) > 30) {
      return CLASH;
    }
    return recurs >= 80 ? 30 : -4;
  }
}
