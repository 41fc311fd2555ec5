package clenchbook.jobs;

import clenchbook.book.Book;
import clenchbook.book.Counted;
import clenchbook.book.HorseRow;
import clenchbook.book.Names;
import clenchbook.book.Shaping;
import clenchbook.book.Visit;
import clenchbook.book.WorkItem;
import clenchbook.problem.Problem;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Turns visits into jobs: finds for each row its Work, horse, payers, place and materials, and
 * fills in from the Work what the row leaves blank. Rows that nobody can be billed for or that have
 * no price are held back with a problem.
 */
public final class JobResolver {
  private final BookIndex index;
  private final List<Problem> problems = new ArrayList<>();
  private final Map<String, Integer> occurrences = new HashMap<>();
  private final Set<String> horsesSeen = new HashSet<>();

  private JobResolver(BookIndex index) {
    this.index = index;
  }

  /**
   * Resolves a whole book.
   *
   * @param written the book
   * @return its jobs and problems
   */
  public static Jobs resolve(Book written) {
    BookIndex index = BookIndex.of(written);
    Book book = index.book();
    JobResolver resolver = new JobResolver(index);
    List<Job> jobs = new ArrayList<>();
    book.visits().stream()
        .sorted(Comparator.comparing(Visit::date).thenComparing(Visit::source))
        .forEach(visit -> resolver.job(visit).ifPresent(jobs::add));
    List<Problem> problems = new ArrayList<>(resolver.problems);
    problems.addAll(SheetRules.problems(index));
    problems.addAll(RowRules.problems(book));
    problems.addAll(TradeRules.problems(jobs));
    problems.addAll(LostRules.problems(jobs));
    return new Jobs(index, jobs, problems);
  }

  private Optional<Job> job(Visit visit) {
    Optional<WorkItem> work = index.prices().find(visit.work(), visit.date());
    Ownership ownership = Ownership.of(visit, index.horses());
    VisitRules rules = new VisitRules(index, visit, work, ownership);
    Optional<Problem> held = rules.held();
    if (held.isPresent()) {
      problems.add(held.get());
      return Optional.empty();
    }
    problems.addAll(rules.warnings());
    return Optional.of(filled(visit, work, ownership));
  }

  private Job filled(Visit visit, Optional<WorkItem> work, Ownership ownership) {
    boolean fee = work.map(WorkItem::fee).orElse(false);
    List<Counted> shoe = own(visit.shoe(), work.map(WorkItem::shoe));
    int shoes = fee ? 0 : shoes(visit, work);
    int fresh = Math.min(shoes, visit.newShoes().orElse(shoes));
    List<FittedPart> parts =
        ShoeParts.of(shoe, visit.size(), shoes, fresh, index.materials(), visit.date());
    Optional<Shaping> shaping = shaping(visit, work, shoes);
    int nails = fee ? 0 : nails(visit, work, shoes);
    HorseId horse = ownership.horse();
    HorseId spelled = new HorseId(horse.name(), index.ownerName(horse.owner()));
    return new Job(
        visit,
        occurrence(visit, spelled),
        work,
        spelled,
        place(visit, ownership),
        parts,
        shoes,
        fresh,
        shaping,
        nailUse(visit, work, nails),
        nails,
        extras(visit),
        minutes(visit, work, fee, shoes, shaping, parts),
        payers(ownership),
        first(visit, spelled, fee));
  }

  private List<Payer> payers(Ownership ownership) {
    return ownership.payers().stream()
        .map(payer -> new Payer(index.ownerName(payer.name()), payer.sharePercent()))
        .toList();
  }

  private static List<Counted> own(List<Counted> own, Optional<List<Counted>> standard) {
    return own.isEmpty() ? standard.orElse(List.of()) : own;
  }

  private static int shoes(Visit visit, Optional<WorkItem> work) {
    return visit
        .shoes()
        .or(() -> ShoeParts.counted(visit.size()))
        .or(() -> ShoeParts.counted(visit.shoe()))
        .or(() -> work.flatMap(WorkItem::shoes))
        .orElse(0);
  }

  private static Optional<Shaping> shaping(Visit visit, Optional<WorkItem> work, int shoes) {
    if (visit.shaping().isPresent()) {
      return visit.shaping();
    }
    return shoes == 0 ? Optional.of(Shaping.NONE) : work.flatMap(WorkItem::shaping);
  }

  private static int nails(Visit visit, Optional<WorkItem> work, int shoes) {
    return visit
        .nails()
        .orElseGet(
            () ->
                work.flatMap(WorkItem::nailsPerShoe)
                    .map(perShoe -> perShoe.multiply(BigDecimal.valueOf(shoes)))
                    .map(total -> total.setScale(0, RoundingMode.HALF_UP).intValueExact())
                    .orElse(0));
  }

  private Optional<UsedItem> nailUse(Visit visit, Optional<WorkItem> work, int nails) {
    String name = visit.nail().isEmpty() ? work.map(WorkItem::nail).orElse("") : visit.nail();
    String item = name.isEmpty() ? index.materials().onlyNail().orElse("") : name;
    return nails == 0 || item.isEmpty() ? Optional.empty() : Optional.of(used(item, nails, visit));
  }

  private List<UsedItem> extras(Visit visit) {
    return visit.extras().stream()
        .map(extra -> used(extra.name(), extra.count().orElse(1), visit))
        .toList();
  }

  private UsedItem used(String name, int count, Visit visit) {
    Optional<StockKey> key = index.materials().findKey(name, "");
    return new UsedItem(
        key.map(StockKey::item).orElse(name),
        key.map(StockKey::size).orElse(""),
        count,
        key.flatMap(found -> index.materials().find(found, visit.date())));
  }

  private static JobMinutes minutes(
      Visit visit,
      Optional<WorkItem> work,
      boolean fee,
      int shoes,
      Optional<Shaping> shaping,
      List<FittedPart> parts) {
    boolean hot = shaping.filter(Shaping.HOT::equals).isPresent();
    Timed trim = Timed.of(visit, work, Visit::trimMin, WorkItem::trimMin);
    Timed shape = Timed.of(visit, work, Visit::shapeMin, WorkItem::shapeMin);
    Timed nail = Timed.of(visit, work, Visit::nailMin, WorkItem::nailMin);
    Timed grind = Timed.of(visit, work, Visit::grindMin, WorkItem::grindMin);
    Timed forge =
        Timed.of(visit, hot ? work : Optional.empty(), Visit::forgeMin, WorkItem::forgeMin);
    return new JobMinutes(
        trim,
        shape,
        nail,
        grind,
        visit.totalMin(),
        forge,
        visit.helperMin().orElse(BigDecimal.ZERO),
        making(parts, part -> part.material().flatMap(m -> m.makingMin())),
        making(parts, part -> part.material().flatMap(m -> m.makingForgeMin())),
        fee ? Measured.YES : measured(visit, shoes));
  }

  private static BigDecimal making(
      List<FittedPart> parts, Function<FittedPart, Optional<BigDecimal>> perShoe) {
    return parts.stream()
        .map(
            part ->
                perShoe
                    .apply(part)
                    .orElse(BigDecimal.ZERO)
                    .multiply(BigDecimal.valueOf(part.newCount())))
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static Measured measured(Visit visit, int shoes) {
    if (visit.totalMin().isPresent()) {
      return Measured.YES;
    }
    List<Optional<BigDecimal>> needed =
        shoes == 0
            ? List.of(visit.trimMin())
            : List.of(visit.trimMin(), visit.shapeMin(), visit.nailMin());
    long given = needed.stream().filter(Optional::isPresent).count();
    if (given == needed.size()) {
      return Measured.YES;
    }
    return given > 0 || visit.grindMin().isPresent() ? Measured.PART : Measured.NO;
  }

  private String place(Visit visit, Ownership ownership) {
    if (!visit.place().isEmpty()) {
      return index.placeName(visit.place());
    }
    return index.placeName(
        ownership.known().map(horse -> horse.rowAt(visit.date())).map(HorseRow::place).orElse(""));
  }

  private int occurrence(Visit visit, HorseId horse) {
    String key = visit.date() + "\n" + Names.key(horse.name()) + "\n" + Names.key(visit.work());
    return occurrences.merge(key, 1, Integer::sum);
  }

  private boolean first(Visit visit, HorseId horse, boolean fee) {
    return !fee && !visit.cancelled() && horsesSeen.add(dayKey(visit, horse));
  }

  private static String dayKey(Visit visit, HorseId horse) {
    return visit.date() + "\n" + Names.key(horse.name()) + "\n" + Names.key(horse.owner());
  }
}
