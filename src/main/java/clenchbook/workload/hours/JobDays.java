package clenchbook.workload.hours;

import clenchbook.book.Book;
import clenchbook.book.Names;
import clenchbook.book.Setting;
import clenchbook.jobs.HorseId;
import clenchbook.jobs.Job;
import clenchbook.values.Basis;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * From jobs and trips to the work of each day. Cancelled rows are nothing; a fee is a day worked
 * but no horse.
 */
public final class JobDays {

  private final List<WorkDay> days = new ArrayList<>();
  private final Set<Visited> horses = new HashSet<>();
  private final Set<LocalDate> worked = new HashSet<>();
  private final Set<Stop> lit = new HashSet<>();
  private final Set<Stop> steel = new HashSet<>();
  private final Minutes setUp;

  private record Visited(LocalDate date, HorseId horse) {}

  private record Stop(LocalDate date, String place) {}

  private JobDays(Book book) {
    Basis basis = book.settings().isGiven(Setting.FORGE_SETUP_MIN) ? Basis.STANDARD : Basis.DEFAULT;
    setUp = Minutes.of(book.settings().number(Setting.FORGE_SETUP_MIN).doubleValue(), basis);
  }

  /** All days of the book, whatever their date. */
  public static WorkDays of(Book book, List<Job> jobs) {
    List<Job> done = jobs.stream().filter(job -> !job.cancelled()).sorted(Job.ORDER).toList();
    JobDays all = new JobDays(book);
    done.forEach(all::add);
    all.days.addAll(Driving.of(book, done));
    return WorkDays.of(all.days);
  }

  private void add(Job job) {
    Map<Activity, Minutes> minutes = new EnumMap<>(PartSplit.of(job));
    ShoeTally shoes = JobShoes.of(job, shapeMinutes(minutes));
    Minutes making = Minutes.of(job.minutes().making().doubleValue(), Basis.STANDARD);
    minutes.merge(Activity.MAKE, making, Minutes::plus);
    Stop stop = new Stop(job.date(), Names.key(job.place()));
    if (job.hot() && lit.add(stop)) {
      minutes.merge(Activity.SET_UP, setUp, Minutes::plus);
    }
    boolean firstSteel = shoes.hotSteel() + shoes.coldSteel() > 0 && steel.add(stop);
    days.add(
        new WorkDay(
            job.date(),
            new Load(
                minutes,
                newHorse(job) ? 1 : 0,
                shoes,
                worked.add(job.date()) ? 1 : 0,
                firstSteel ? 1 : 0)));
  }

  private boolean newHorse(Job job) {
    return !job.fee()
        && !job.horse().name().isEmpty()
        && horses.add(new Visited(job.date(), job.horse()));
  }

  private static double shapeMinutes(Map<Activity, Minutes> minutes) {
    return minutes.getOrDefault(Activity.SHAPE_HOT, Minutes.NONE).total()
        + minutes.getOrDefault(Activity.SHAPE_COLD, Minutes.NONE).total();
  }
}
