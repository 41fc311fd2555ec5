package clenchbook.jobs;

import clenchbook.book.MaterialKind;
import clenchbook.book.Names;
import clenchbook.book.SheetKind;
import clenchbook.book.Visit;
import clenchbook.book.WorkItem;
import clenchbook.problem.CellRef;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.texts.BookName;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Facts of the trade (common practice, no source) that a row should not go against. */
final class TradeRules {
  private static final BigDecimal MINUTES_OF_A_DAY = new BigDecimal(24 * 60);
  private static final BigDecimal FEWEST_MINUTES = new BigDecimal(5);
  private static final BigDecimal MOST_HOURS = new BigDecimal(3);
  private static final BigDecimal FEWEST_NAILS = new BigDecimal(4);
  private static final BigDecimal MOST_NAILS = new BigDecimal(10);

  private final List<Problem> problems = new ArrayList<>();
  private final Set<String> seen = new HashSet<>();
  private final Map<LocalDate, BigDecimal> day = new HashMap<>();

  private TradeRules() {}

  static List<Problem> problems(List<Job> jobs) {
    TradeRules rules = new TradeRules();
    jobs.stream().filter(job -> !job.cancelled()).forEach(rules::check);
    return rules.problems;
  }

  private void check(Job job) {
    aluminium(job);
    trimWithShoes(job);
    nails(job);
    counts(job);
    minutes(job);
    fewMinutes(job);
    duplicate(job);
  }

  private void aluminium(Job job) {
    if (job.hot() && job.kinds().contains(MaterialKind.ALUMINIUM)) {
      warn(
          ProblemKind.ALUMINIUM_HOT,
          firstGiven(job.visit(), "Shaping", job.visit().shaping().isPresent(), "Shoe"),
          Message.of("jobs.trade.aluminiumHot"),
          Message.of("jobs.trade.cold"),
          job.visit().shaping().map(shaping -> shaping.word()).orElse(""));
    }
  }

  private void trimWithShoes(Job job) {
    if (job.shoes() > 0 && job.work().filter(TradeRules::trimOnly).isPresent()) {
      warn(
          ProblemKind.TRIM_WITH_SHOES,
          firstGiven(job.visit(), "Shoes", job.visit().shoes().isPresent(), "Size"),
          Message.of("jobs.trade.trimWithShoes", job.workName()),
          Message.of("jobs.trade.noShoesOrWork"),
          Integer.toString(job.shoes()));
    }
  }

  private static boolean trimOnly(WorkItem work) {
    boolean shod =
        work.shoes().orElse(0) > 0
            || !work.shoe().isEmpty()
            || work.nailMin().isPresent()
            || work.shapeMin().isPresent()
            || work.nailsPerShoe().isPresent();
    return !work.fee() && !shod && (work.shoes().isPresent() || work.trimMin().isPresent());
  }

  private void nails(Job job) {
    if (job.shoes() == 0) {
      return;
    }
    if (job.nailCount() == 0) {
      if (!glued(job)) {
        warn(
            ProblemKind.SHOES_WITHOUT_NAILS,
            job.visit().source().at("Nails"),
            Message.of("jobs.trade.noNails"),
            Message.of("jobs.trade.howManyNails"),
            job.visit().nails().map(String::valueOf).orElse(""));
      }
      return;
    }
    BigDecimal perShoe =
        BigDecimal.valueOf(job.nailCount())
            .divide(BigDecimal.valueOf(job.shoes()), 1, RoundingMode.HALF_UP);
    if (perShoe.compareTo(FEWEST_NAILS) < 0 || perShoe.compareTo(MOST_NAILS) > 0) {
      warn(
          ProblemKind.NAILS_PER_SHOE_ODD,
          job.visit().source().at("Nails"),
          Message.of("jobs.trade.oddNails", job.nailCount(), job.shoes()),
          Message.of("jobs.trade.nailsAShoe"),
          Integer.toString(job.nailCount()));
    }
  }

  private static boolean glued(Job job) {
    return job.extras().stream()
        .anyMatch(
            extra ->
                extra.material().filter(row -> row.kind() == MaterialKind.ADHESIVE).isPresent());
  }

  private void counts(Job job) {
    Visit visit = job.visit();
    if (visit.newShoes().orElse(0) > job.shoes() && !job.fee()) {
      warn(
          ProblemKind.NEW_SHOES_ABOVE_SHOES,
          visit.source().at("New shoes"),
          Message.of("jobs.trade.newAboveShoes", visit.newShoes().orElse(0), job.shoes()),
          Message.of("jobs.trade.atMost", job.shoes()),
          visit.newShoes().map(String::valueOf).orElse(""));
    }
    parts(job, "Shoe", ShoeParts.counted(visit.shoe()), ShoeParts.written(visit.shoe()));
    parts(job, "Size", ShoeParts.counted(visit.size()), ShoeParts.written(visit.size()));
  }

  /** Where Shoes is blank the Work says how many a set has. */
  private void parts(Job job, String heading, Optional<Integer> counted, String written) {
    Optional<Integer> ofWork = job.work().flatMap(WorkItem::shoes).filter(shoes -> shoes > 0);
    boolean byWork = job.visit().shoes().isEmpty() && ofWork.isPresent();
    int wanted = byWork ? ofWork.get() : job.shoes();
    if (!job.fee() && counted.isPresent() && counted.get() != wanted) {
      BookName called = BookName.of(SheetKind.VISITS.title(), heading);
      warn(
          ProblemKind.PARTS_DIFFER_FROM_SHOES,
          job.visit().source().at(heading),
          byWork
              ? Message.of("jobs.trade.partsOffWork", called, counted.get(), job.workName(), wanted)
              : Message.of("jobs.trade.partsOffShoes", called, counted.get(), wanted),
          Message.of("jobs.trade.countsThatAdd", wanted),
          written);
    }
  }

  private void minutes(Job job) {
    Visit visit = job.visit();
    BigDecimal before = day.getOrDefault(job.date(), BigDecimal.ZERO);
    BigDecimal after = before.add(job.minutes().work());
    day.put(job.date(), after);
    if (before.compareTo(MINUTES_OF_A_DAY) <= 0 && after.compareTo(MINUTES_OF_A_DAY) > 0) {
      String heading = longest(visit);
      warn(
          ProblemKind.MINUTES_IMPOSSIBLE,
          visit.source().at(heading),
          Message.of("jobs.trade.dayTooLong", after.toPlainString()),
          Message.of("jobs.trade.minutesOfHorse"),
          minutesOf(visit, heading).map(BigDecimal::toPlainString).orElse(""));
    }
  }

  /**
   * Hours typed for minutes: under 5 for a shod horse, or a part of an hour for any. Parts alone
   * say so where trimming and nailing both stand there.
   */
  private void fewMinutes(Job job) {
    Visit visit = job.visit();
    boolean parts = visit.trimMin().isPresent() && visit.nailMin().isPresent();
    boolean known =
        visit.totalMin().isPresent() || (job.shoes() == 0 ? visit.trimMin().isPresent() : parts);
    BigDecimal typed = visit.totalMin().orElseGet(() -> partsTyped(visit));
    boolean few = job.shoes() > 0 && typed.compareTo(FEWEST_MINUTES) < 0;
    boolean partOfAnHour =
        typed.compareTo(MOST_HOURS) < 0 && typed.stripTrailingZeros().scale() > 0;
    if (!job.fee() && known && (few || partOfAnHour)) {
      String heading = longest(visit);
      warn(
          ProblemKind.MINUTES_FEW,
          visit.source().at(heading),
          job.shoes() > 0
              ? Message.of("jobs.trade.fewForShod", typed.stripTrailingZeros())
              : Message.of("jobs.trade.fewForHorse", typed.stripTrailingZeros()),
          Message.of("jobs.trade.minutesOrClock"),
          minutesOf(visit, heading).map(TradeRules::plain).orElse(""));
    }
  }

  private static BigDecimal partsTyped(Visit visit) {
    return Stream.of(visit.trimMin(), visit.shapeMin(), visit.nailMin(), visit.grindMin())
        .flatMap(Optional::stream)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  /** The heading of the row's largest minutes: the likeliest slip. */
  private static String longest(Visit visit) {
    String heading = "Total min";
    BigDecimal most = BigDecimal.ZERO;
    for (String candidate :
        List.of("Trim min", "Shape min", "Nail min", "Grind min", "Total min")) {
      BigDecimal minutes = minutesOf(visit, candidate).orElse(BigDecimal.ZERO);
      if (minutes.compareTo(most) > 0) {
        most = minutes;
        heading = candidate;
      }
    }
    return heading;
  }

  private static Optional<BigDecimal> minutesOf(Visit visit, String heading) {
    return switch (heading) {
      case "Trim min" -> visit.trimMin();
      case "Shape min" -> visit.shapeMin();
      case "Nail min" -> visit.nailMin();
      case "Grind min" -> visit.grindMin();
      default -> visit.totalMin();
    };
  }

  private void duplicate(Job job) {
    Visit visit = job.visit();
    String key =
        String.join(
            "\n",
            visit.date().toString(),
            Names.key(job.horse().name()),
            Names.key(job.horse().owner()),
            Names.key(visit.work()),
            Names.key(ShoeParts.written(visit.shoe())),
            Names.key(ShoeParts.written(visit.size())));
    if (!seen.add(key)) {
      warn(
          ProblemKind.DUPLICATE_VISIT,
          visit.source().at("Horse"),
          Message.of("jobs.trade.duplicate"),
          Message.of("jobs.trade.oneRowAWork"),
          visit.horse());
    }
  }

  private static CellRef firstGiven(Visit visit, String heading, boolean given, String otherwise) {
    CellRef cell = visit.source().at(given ? heading : otherwise);
    return cell.column().isEmpty() ? visit.source().at("Work") : cell;
  }

  private void warn(ProblemKind kind, CellRef at, Message what, Message expected, String value) {
    problems.add(Problem.warning(kind, at, what, expected, value));
  }
}
