package clenchbook.comparison.questions;

import clenchbook.book.MaterialKind;
import clenchbook.book.Reason;
import clenchbook.book.Shaping;
import clenchbook.book.SourceRow;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One row of Visits as the comparisons need it: standards applied, costs worked out.
 *
 * @param source the row
 * @param date the day
 * @param horse what tells this horse from all others; empty only for a fee
 * @param horseName the horse's name as people read it
 * @param stop what tells this stop, one date and place, from all others
 * @param owner who owns or is billed for the horse, as people read it
 * @param work the Work's name
 * @param compareAs the name it is compared under; empty = each question's own rule
 * @param fee whether it is a fee rather than work on a horse
 * @param reason why the horse was visited
 * @param shaping how the shoes were shaped; empty where shoes were nailed on and nothing says how
 * @param parts the shoes nailed on, by kind; empty for a trim
 * @param shoes how many were nailed on
 * @param newShoes how many of them were new
 * @param lost how many were found lost; empty where the row does not say
 * @param time its minutes
 * @param money its charge and costs
 */
public record ComparedJob(
    SourceRow source,
    LocalDate date,
    String horse,
    String horseName,
    String stop,
    String owner,
    String work,
    String compareAs,
    boolean fee,
    Reason reason,
    Optional<Shaping> shaping,
    List<ShoeCount> parts,
    int shoes,
    int newShoes,
    OptionalInt lost,
    JobTime time,
    JobMoney money) {

  /** By date, then sheet and row: the order in which jobs are drawn again. */
  public static final Comparator<ComparedJob> ORDER =
      Comparator.comparing(ComparedJob::date).thenComparing(ComparedJob::source);

  /** Copies the list. */
  public ComparedJob {
    parts = List.copyOf(parts);
  }

  /** Whether it is work that was done: neither cancelled nor a fee. */
  public boolean done() {
    return reason != Reason.CANCELLED && !fee;
  }

  /** Whether it was shaped this way. */
  public boolean shaped(Shaping how) {
    return shaping.filter(how::equals).isPresent();
  }

  /** Whether any of its shoes is of this kind. */
  public boolean has(MaterialKind kind) {
    return parts.stream().anyMatch(part -> part.kind().filter(kind::equals).isPresent());
  }

  /** Whether its shoes are of more than one kind; an unknown kind is a kind. */
  public boolean mixed() {
    return parts.stream().map(ShoeCount::kind).distinct().count() > 1;
  }

  /** The one kind of its shoes; empty where they are mixed or unknown. */
  public Optional<MaterialKind> kind() {
    return parts.isEmpty() || mixed() ? Optional.empty() : parts.get(0).kind();
  }

  /** Whether somebody helped. */
  public boolean helped() {
    return time.helper().signum() > 0;
  }
}
