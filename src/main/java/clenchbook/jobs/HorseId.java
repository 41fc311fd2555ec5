package clenchbook.jobs;

import clenchbook.book.Names;
import java.util.Comparator;

/**
 * Which horse: its name and the owner of its first row, since two owners may have a horse of one
 * name.
 *
 * @param name the horse's name as Horses or the first visit spells it; empty for a fee without one
 * @param owner the owner of its first row, or the name billed when Horses does not know it
 */
public record HorseId(String name, String owner) implements Comparable<HorseId> {
  private static final Comparator<HorseId> ORDER =
      Comparator.comparing(HorseId::name, Names.ORDER).thenComparing(HorseId::owner, Names.ORDER);

  @Override
  public int compareTo(HorseId other) {
    return ORDER.compare(this, other);
  }
}
