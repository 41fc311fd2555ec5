package clenchbook.jobs;

import clenchbook.book.MaterialKind;
import clenchbook.book.Shaping;
import clenchbook.book.Visit;
import clenchbook.book.WorkItem;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * A row of Visits with everything found that it takes from other sheets. Cancelled rows are jobs
 * too, so that nothing is lost; who counts work leaves them out.
 *
 * @param visit the row as written
 * @param occurrence which of the rows of this date, horse and Work it is, from 1, in row order
 * @param work the Work's row in force; empty when the Work is unknown
 * @param horse which horse; its name is empty for a fee without a horse
 * @param place where, as Places spells it; empty when neither the visit nor the horse says
 * @param parts the shoes nailed on, in the order written; empty for a trim or fee
 * @param shoes how many were nailed on
 * @param newShoes how many of them were new
 * @param shaping how they were shaped; empty when shoes were nailed on and nothing says how
 * @param nails the nails driven; empty when none or when no nail item is known
 * @param nailCount nails driven in total, whether or not their item is known
 * @param extras the extras used
 * @param minutes its minutes
 * @param payers who pays, shares adding to 100
 * @param firstOfVisit true for the visit's first row that is no fee: it bears the sundries and
 *     counts the horse
 */
public record Job(
    Visit visit,
    int occurrence,
    Optional<WorkItem> work,
    HorseId horse,
    String place,
    List<FittedPart> parts,
    int shoes,
    int newShoes,
    Optional<Shaping> shaping,
    Optional<UsedItem> nails,
    int nailCount,
    List<UsedItem> extras,
    JobMinutes minutes,
    List<Payer> payers,
    boolean firstOfVisit) {
  /** Jobs by date, then sheet and row. */
  public static final Comparator<Job> ORDER =
      Comparator.comparing(Job::date).thenComparing(job -> job.visit().source());

  /** Copies its lists. */
  public Job {
    parts = List.copyOf(parts);
    extras = List.copyOf(extras);
    payers = List.copyOf(payers);
  }

  /**
   * The day of the visit.
   *
   * @return the date
   */
  public LocalDate date() {
    return visit.date();
  }

  /**
   * The Work's name as the price list spells it, else as written.
   *
   * @return the name
   */
  public String workName() {
    return work.map(WorkItem::name).orElse(visit.work());
  }

  /**
   * Whether it is a fee: no shoes, sundries, due date or horse count.
   *
   * @return true for Kind fee
   */
  public boolean fee() {
    return work.map(WorkItem::fee).orElse(false);
  }

  /**
   * Whether it is kept but neither billed nor counted.
   *
   * @return true for a cancelled row
   */
  public boolean cancelled() {
    return visit.cancelled();
  }

  /**
   * Whether it was shaped hot.
   *
   * @return true for hot
   */
  public boolean hot() {
    return shaping.filter(Shaping.HOT::equals).isPresent();
  }

  /**
   * The kinds of shoe nailed on.
   *
   * @return each known kind once; empty for a trim or unknown shoes
   */
  public Set<MaterialKind> kinds() {
    Set<MaterialKind> kinds = new TreeSet<>();
    parts.forEach(part -> part.kind().ifPresent(kinds::add));
    return kinds;
  }

  /**
   * Whether a helper worked on this horse.
   *
   * @return true when Helper min is above zero
   */
  public boolean helped() {
    return minutes.helper().signum() > 0;
  }

  /**
   * The price before discount that the list gives for the Work alone.
   *
   * @return the list price; empty when there is none
   */
  public Optional<BigDecimal> listPrice() {
    return work.flatMap(WorkItem::price);
  }
}
