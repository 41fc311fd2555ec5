package clenchbook.billing.accounts;

import clenchbook.book.HorseRow;
import clenchbook.book.Names;
import clenchbook.jobs.BookIndex;
import clenchbook.jobs.Job;
import clenchbook.jobs.Payer;
import clenchbook.values.money.LargestRemainder;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Whose the money taken at the truck is, in balances and at the year's end alike. */
public final class TruckShares {
  private TruckShares() {}

  /**
   * Whose it is: the payer's whom the row names, or who is billed for the sharer it names; else all
   * payers' by their shares, split to the minor unit.
   *
   * @param job the job
   * @param index the book by name
   * @return amounts by name as Owners spells it, in the order of the payers; empty where nothing
   *     was taken; under the owner as typed, or no name, where nobody is billed
   */
  public static Map<String, BigDecimal> of(Job job, BookIndex index) {
    MinorUnit unit = index.book().settings().minorUnit();
    BigDecimal paid = job.visit().paid().map(unit::round).orElse(unit.zero());
    if (paid.signum() == 0) {
      return Map.of();
    }
    if (job.payers().isEmpty()) {
      return Map.of(index.ownerName(job.visit().owner()), paid);
    }
    List<Payer> payers = whose(job, index);
    List<BigDecimal> shares =
        LargestRemainder.split(paid, payers.stream().map(Payer::sharePercent).toList(), unit);
    Map<String, BigDecimal> byPayer = new LinkedHashMap<>();
    for (int payer = 0; payer < shares.size(); payer++) {
      String name = index.ownerName(payers.get(payer).name());
      byPayer.merge(name, shares.get(payer), BigDecimal::add);
    }
    return byPayer;
  }

  /**
   * Who handed the money over.
   *
   * @param job the job
   * @param index the book by name
   * @return the payer whom the row names, or who is billed for the sharer it names; else all
   *     payers, in their order
   */
  public static List<Payer> whose(Job job, BookIndex index) {
    return named(job, index).map(List::of).orElseGet(job::payers);
  }

  /** The payer whom the row means by its Owner. */
  private static Optional<Payer> named(Job job, BookIndex index) {
    String owner = job.visit().owner();
    return owner.isEmpty()
        ? Optional.empty()
        : payer(job, index, owner).or(() -> billedFor(job, index, owner));
  }

  private static Optional<Payer> payer(Job job, BookIndex index, String name) {
    String spelled = index.ownerName(name);
    return job.payers().stream()
        .filter(payer -> Names.same(index.ownerName(payer.name()), spelled))
        .findFirst();
  }

  private static Optional<Payer> billedFor(Job job, BookIndex index, String sharer) {
    String spelled = index.ownerName(sharer);
    return index.horses().named(job.visit().horse()).stream()
        .filter(horse -> horse.id().equals(job.horse()))
        .flatMap(horse -> horse.on(job.date()).stream())
        .filter(row -> Names.same(index.ownerName(row.owner()), spelled))
        .map(HorseRow::billTo)
        .flatMap(name -> payer(job, index, name).stream())
        .findFirst();
  }
}
