package clenchbook.reports.month;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Names;
import clenchbook.book.Owner;
import clenchbook.book.SheetKind;
import clenchbook.jobs.BookIndex;
import clenchbook.problem.NearestName;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.texts.Message;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Owners who seem to have been renamed in Owners: a name that was billed has no row there, while a
 * similar one is new, no invoice to it being out yet. Unless the row says so under Formerly, one
 * owner has two accounts.
 */
public final class RenamedOwners {
  private static final int SHORTEST_WORD = 3;

  private RenamedOwners() {}

  /**
   * Looks for them.
   *
   * @param index the book by name
   * @param documents all documents of the register
   * @return a warning for each, at the new name's cell
   */
  public static List<Problem> problems(BookIndex index, List<BilledDocument> documents) {
    Set<String> billed = new TreeSet<>(Names.ORDER);
    // A draft under the new name is this run's own: it makes nobody an old acquaintance.
    documents.stream()
        .filter(document -> document.state().fixed())
        .forEach(document -> billed.add(document.owner()));
    return problems(index, billed);
  }

  /**
   * Looks for them.
   *
   * @param index the book by name
   * @param billed the names that were billed
   * @return a warning for each, at the new name's cell
   */
  public static List<Problem> problems(BookIndex index, Set<String> billed) {
    if (!index.book().present().contains(SheetKind.OWNERS)) {
      return List.of();
    }
    Set<String> known =
        billed.stream().map(index::ownerName).map(Names::key).collect(Collectors.toSet());
    List<Owner> fresh =
        index.owners().values().stream()
            .filter(owner -> !known.contains(Names.key(owner.name())))
            .toList();
    List<Problem> problems = new ArrayList<>();
    billed.stream()
        .filter(name -> index.owner(name).isEmpty())
        .sorted(Names.ORDER)
        .forEach(name -> similar(name, fresh).ifPresent(now -> problems.add(problem(name, now))));
    return problems;
  }

  private static Problem problem(String before, Owner now) {
    return Problem.warning(
        ProblemKind.OWNER_RENAMED,
        now.source().at("Owner"),
        Message.of("month.renamed.problem", now.name(), before),
        Message.of("month.renamed.expected", before),
        now.name());
  }

  /** One whose name is a slip away, or else shares a word. */
  private static Optional<Owner> similar(String name, List<Owner> fresh) {
    Optional<String> near = NearestName.find(name, fresh.stream().map(Owner::name).toList());
    return fresh.stream()
        .filter(owner -> near.filter(owner.name()::equals).isPresent())
        .findFirst()
        .or(
            () ->
                fresh.stream()
                    .filter(owner -> shared(name, owner) > 0)
                    .max(
                        Comparator.comparingLong((Owner owner) -> shared(name, owner))
                            .thenComparing(Owner::name, Comparator.reverseOrder())));
  }

  private static long shared(String name, Owner owner) {
    Set<String> words = words(name).collect(Collectors.toSet());
    return words(owner.name()).distinct().filter(words::contains).count();
  }

  private static Stream<String> words(String name) {
    String bare =
        Normalizer.normalize(name, Normalizer.Form.NFKD)
            .replaceAll("\\p{M}", "")
            .toLowerCase(Locale.ROOT);
    return Stream.of(bare.split("[^\\p{L}]+")).filter(word -> word.length() >= SHORTEST_WORD);
  }
}
