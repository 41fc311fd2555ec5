package clenchbook.reports.month;

import clenchbook.book.HorseRow;
import clenchbook.book.Names;
import clenchbook.book.Shaping;
import clenchbook.costing.JobCost;
import clenchbook.jobs.BookIndex;
import clenchbook.jobs.FittedPart;
import clenchbook.jobs.Horse;
import clenchbook.jobs.Job;
import clenchbook.jobs.Payer;
import clenchbook.reports.blocks.FigureTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The table {@code jobs}: each of the month's visits with what it cost and left. */
final class JobFigures {
  private static final List<String> COLUMNS =
      List.of(
          "row",
          "date",
          "owner",
          "horse",
          "place",
          "work",
          "shoe",
          "size",
          "shoes",
          "shaping",
          "reason",
          "charge_net",
          "materials",
          "gas",
          "sundries",
          "travel",
          "overhead",
          "labour",
          "margin_before_labour",
          "margin_after_labour",
          "job_minutes",
          "drive_minutes",
          "earned_per_hour",
          "measured",
          "sheet",
          "making_minutes",
          "helper_minutes",
          "setup_minutes",
          "materials_basis",
          "time_basis",
          "travel_basis");

  private final BookIndex index;

  JobFigures(BookIndex index) {
    this.index = index;
  }

  FigureTable table(List<JobCost> costs) {
    return new FigureTable("jobs", COLUMNS, costs.stream().map(this::row).toList());
  }

  private List<String> row(JobCost cost) {
    Job job = cost.job();
    List<String> row = new ArrayList<>();
    row.add(Figures.count(job.visit().source().row()));
    row.add(job.date().toString());
    row.add(owner(job));
    row.add(job.horse().name());
    row.add(job.place());
    row.add(job.workName());
    row.add(listed(job.parts(), FittedPart::item));
    row.add(listed(job.parts(), FittedPart::size));
    row.add(Figures.count(job.cancelled() ? 0 : job.shoes()));
    row.add(job.shaping().map(Shaping::word).orElse(""));
    row.add(job.visit().reason().word());
    row.addAll(amounts(cost));
    row.add(Figures.minutes(cost.jobMinutes()));
    row.add(Figures.minutes(cost.driveMinutes()));
    row.add(job.cancelled() ? "0" : Figures.money(cost.earnedPerHour()));
    row.add(job.cancelled() ? "no" : job.minutes().measured().word());
    row.add(job.visit().source().sheet());
    row.add(job.cancelled() ? "0" : Figures.minutes(job.minutes().making()));
    row.add(job.cancelled() ? "0" : Figures.minutes(job.minutes().helper()));
    row.add(Figures.minutes(cost.setupMinutes()));
    row.add(BasisText.basis(cost.materialsBasis()));
    row.add(BasisText.basis(cost.timeBasis()));
    row.add(BasisText.basis(cost.travelBasis()));
    return row;
  }

  private static List<String> amounts(JobCost cost) {
    return List.of(
        Figures.money(cost.chargeNet()),
        Figures.money(cost.materials()),
        Figures.money(cost.gas()),
        Figures.money(cost.sundries()),
        Figures.money(cost.travel()),
        Figures.money(cost.overhead()),
        Figures.money(cost.labour()),
        Figures.money(cost.marginBeforeLabour()),
        Figures.money(cost.marginAfterLabour()));
  }

  /** The named owner, else the horse's owners of that day, else who pays. */
  String owner(Job job) {
    if (!job.visit().owner().isEmpty()) {
      return index.ownerName(job.visit().owner());
    }
    Optional<Horse> horse =
        index.horses().named(job.horse().name()).stream()
            .filter(known -> Names.same(known.id().owner(), job.horse().owner()))
            .findFirst();
    List<String> owners =
        horse.map(known -> known.on(job.date())).orElse(List.of()).stream()
            .map(HorseRow::owner)
            .map(index::ownerName)
            .distinct()
            .toList();
    return owners.isEmpty()
        ? job.payers().stream().map(Payer::name).collect(Collectors.joining("; "))
        : String.join("; ", owners);
  }

  /** One name alone, several with their counts. */
  static String listed(List<FittedPart> parts, Function<FittedPart, String> name) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    parts.forEach(part -> counts.merge(name.apply(part), part.count(), Integer::sum));
    counts.remove("");
    if (counts.size() == 1) {
      return counts.keySet().iterator().next();
    }
    return counts.entrySet().stream()
        .map(entry -> entry.getKey() + ": " + entry.getValue())
        .collect(Collectors.joining("; "));
  }
}
