package clenchbook.jobs;

import clenchbook.book.HorseRow;
import clenchbook.book.Names;
import clenchbook.book.Visit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Which horse a visit means and who pays.
 *
 * @param horse which horse
 * @param known the horse of Horses; empty when that sheet does not know it
 * @param payers who pays; empty when nobody can be billed
 * @param stranger true when the named owner is none of the horse's, and pays all
 */
record Ownership(HorseId horse, Optional<Horse> known, List<Payer> payers, boolean stranger) {

  static Ownership of(Visit visit, HorseIndex index) {
    List<Horse> horses = index.named(visit.horse());
    return visit.owner().isEmpty() ? unnamed(visit, horses) : named(visit, horses);
  }

  private static Ownership unnamed(Visit visit, List<Horse> horses) {
    List<Horse> kept = horses.stream().filter(horse -> horse.kept(visit.date())).toList();
    if (kept.size() != 1) {
      HorseId id =
          horses.size() == 1 ? horses.get(0).id() : new HorseId(visit.horse(), visit.owner());
      return new Ownership(id, horses.stream().findFirst(), List.of(), false);
    }
    Horse horse = kept.get(0);
    return new Ownership(
        horse.id(), Optional.of(horse), HorseIndex.payers(horse, visit.date()), false);
  }

  private static Ownership named(Visit visit, List<Horse> horses) {
    Optional<Horse> own =
        horses.stream().filter(horse -> ownedOn(horse, visit.owner(), visit.date())).findFirst();
    if (own.isPresent()) {
      return new Ownership(own.get().id(), own, HorseIndex.payers(own.get(), visit.date()), false);
    }
    Optional<Horse> meant = meant(visit, horses);
    HorseId id = meant.map(Horse::id).orElse(new HorseId(visit.horse(), visit.owner()));
    return new Ownership(id, meant, List.of(Payer.ofAll(visit.owner())), !horses.isEmpty());
  }

  /** The horse a stranger pays for: once theirs, else the only one kept that day, else the only. */
  private static Optional<Horse> meant(Visit visit, List<Horse> horses) {
    Optional<Horse> once =
        horses.stream()
            .filter(horse -> horse.rows().stream().anyMatch(row -> is(row, visit.owner())))
            .findFirst();
    if (once.isPresent()) {
      return once;
    }
    List<Horse> kept = horses.stream().filter(horse -> horse.kept(visit.date())).toList();
    List<Horse> candidates = kept.isEmpty() ? horses : kept;
    return candidates.size() == 1 ? Optional.of(candidates.get(0)) : Optional.empty();
  }

  private static boolean ownedOn(Horse horse, String owner, LocalDate day) {
    return horse.on(day).stream().anyMatch(row -> is(row, owner));
  }

  private static boolean is(HorseRow row, String owner) {
    return Names.same(row.owner(), owner)
        || (!row.billTo().isEmpty() && Names.same(row.billTo(), owner));
  }
}
