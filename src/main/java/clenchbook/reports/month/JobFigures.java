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
import clenchbook.reports.blocks.FiguresOf;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The table {@code jobs}: each of the month's visits with what it cost and left. */
final class JobFigures {
  private final BookIndex index;

  JobFigures(BookIndex index) {
    this.index = index;
  }

  FigureTable table(List<JobCost> costs) {
    return FiguresOf.rows(costs)
        .column("row", cost -> Figures.count(cost.job().visit().source().row()))
        .column("date", cost -> cost.job().date().toString())
        .column("owner", cost -> owner(cost.job()))
        .column("horse", cost -> cost.job().horse().name())
        .column("place", cost -> cost.job().place())
        .column("work", cost -> cost.job().workName())
        .column("shoe", cost -> listed(cost.job().parts(), FittedPart::item))
        .column("size", cost -> listed(cost.job().parts(), FittedPart::size))
        .column("shoes", cost -> Figures.count(cost.job().cancelled() ? 0 : cost.job().shoes()))
        .column("shaping", cost -> cost.job().shaping().map(Shaping::word).orElse(""))
        .column("reason", cost -> cost.job().visit().reason().word())
        .amount("charge_net", JobCost::chargeNet)
        .amount("materials", JobCost::materials)
        .amount("gas", JobCost::gas)
        .amount("sundries", JobCost::sundries)
        .amount("travel", JobCost::travel)
        .amount("overhead", JobCost::overhead)
        .amount("labour", JobCost::labour)
        .amount("margin_before_labour", JobCost::marginBeforeLabour)
        .amount("margin_after_labour", JobCost::marginAfterLabour)
        .column("job_minutes", cost -> Figures.minutes(cost.jobMinutes()))
        .column("drive_minutes", cost -> Figures.minutes(cost.driveMinutes()))
        .column(
            "earned_per_hour",
            cost -> cost.job().cancelled() ? "0" : Figures.money(cost.earnedPerHour()))
        .column(
            "measured",
            cost -> cost.job().cancelled() ? "no" : cost.job().minutes().measured().word())
        .column("sheet", cost -> cost.job().visit().source().sheet())
        .column(
            "making_minutes",
            cost -> cost.job().cancelled() ? "0" : Figures.minutes(cost.job().minutes().making()))
        .column(
            "helper_minutes",
            cost -> cost.job().cancelled() ? "0" : Figures.minutes(cost.job().minutes().helper()))
        .column("setup_minutes", cost -> Figures.minutes(cost.setupMinutes()))
        .column("materials_basis", cost -> BasisText.basis(cost.materialsBasis()))
        .column("time_basis", cost -> BasisText.basis(cost.timeBasis()))
        .column("travel_basis", cost -> BasisText.basis(cost.travelBasis()))
        .named("jobs");
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
