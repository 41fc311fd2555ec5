package clenchbook.samples;

import clenchbook.samples.Scenario.Kind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** The people, places and horses of a sample, with what the diary remembers of each. */
final class Stable {
  /** How an owner pays. */
  enum Habit {
    TRUCK,
    INVOICE,
    COMMERCIAL
  }

  /** An owner who pays for horses. */
  static final class Owner {
    String name = "";
    Habit habit = Habit.TRUCK;
    double discount;
    boolean exempt;
    int terms;
    String address = "";
  }

  /** A place with its distance from home and its position, both in miles. */
  static final class Yard {
    String name = "";
    String address = "";
    String kind = "";
    double x;
    double y;
    int horses;
    int distance;
    int minutes;

    double milesTo(Yard other) {
      return Math.hypot(x - other.x, y - other.y) * 1.25;
    }
  }

  /** A share in a horse. */
  record Share(Owner owner, int percent) {}

  /** A horse, its usual shoeing, and the running state of the diary. */
  static final class Horse {
    String name = "";
    Owner owner = new Owner();
    Yard yard = new Yard();
    List<Share> shares = new ArrayList<>();
    Owner billTo;
    Kind usual = Kind.TRIM;
    String front = "1";
    String hind = "1";
    boolean heavy;
    boolean alwaysHot;
    boolean alwaysCold;
    boolean resets;
    boolean studs;
    int interval = 7;
    double shapeEffect;
    double trimEffect;
    int nailsPerShoe = 7;
    LocalDate due = LocalDate.EPOCH;
    LocalDate arrives = LocalDate.EPOCH;
    LocalDate leaves = LocalDate.MAX;
    boolean lastWasReset;
    boolean shod;
    boolean lastHot;
    int lost;
    boolean everSeen;
    boolean namesake;

    Owner payer() {
      return billTo == null ? owner : billTo;
    }
  }

  final List<Owner> owners = new ArrayList<>();
  final List<Yard> yards = new ArrayList<>();
  final List<Horse> horses = new ArrayList<>();
}
