package clenchbook.workload;

import clenchbook.book.Task;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Chart;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.FirstPage;
import clenchbook.texts.Message;
import clenchbook.workload.methods.TaskName;
import clenchbook.workload.methods.Unit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The first page about the body: what exceeds its limit by most, and what to do about it. */
final class WorkloadAnswer {
  private static final int BARS = 10;

  private final WorkYear work;
  private final FigureText text;
  private final List<Excess> all;

  WorkloadAnswer(WorkYear work) {
    this.work = work;
    this.text = work.text();
    this.all = Excess.of(work);
  }

  FirstPage page() {
    return FirstPage.of(sentence(), picture(), toDo());
  }

  private String sentence() {
    List<Excess> over = all.stream().filter(Excess::over).toList();
    if (over.isEmpty()) {
      return nothingOver();
    }
    Excess worst = over.get(0);
    return text.say(sentence(worst, over.size()));
  }

  private Message sentence(Excess worst, int count) {
    Message measure = worst.measure();
    String value = value(worst);
    String limit = limit(worst);
    Message name = worst.limitName();
    if (worst.when().isEmpty()) {
      return Message.of("workload.answer.year", measure, value, limit, name, count);
    }
    String day = text.day(worst.when().get());
    return worst.kind() == Excess.Kind.HOURS && worst.unit() == Unit.HOURS
        ? Message.of("workload.answer.week", measure, value, day, limit, name, count)
        : Message.of("workload.answer.day", measure, value, day, limit, name, count);
  }

  private String nothingOver() {
    if (work.load().hours() == 0) {
      return text.say("workload.answer.noMinutes", work.load().horses(), work.load().daysWorked());
    }
    String hours = text.hours(work.load().hours());
    return all.isEmpty()
        ? text.say("workload.answer.nothingToCompare", hours)
        : text.say("workload.answer.nothingOver", hours);
  }

  private String value(Excess one) {
    return withUnit(one, one.value());
  }

  private String limit(Excess one) {
    return withUnit(one, one.limit());
  }

  private String withUnit(Excess one, double number) {
    if (one.unit() == Unit.HOURS) {
      return text.hours(number);
    }
    String figure =
        number == one.limit() ? text.plain(number) : text.number(number, number % 1 == 0 ? 0 : 1);
    return one.unit() == Unit.NONE
        ? figure
        : figure + '\u00A0' + text.say(one.unit().written().said());
  }

  private Optional<Block.Picture> picture() {
    List<Excess> drawn = all.stream().limit(BARS).toList();
    if (drawn.isEmpty()) {
      return work.load().hours() > 0
          ? Optional.of(new YearPictures(work).weeks())
          : Optional.empty();
    }
    return Optional.of(
        new Block.Picture(
            text.say("workload.answer.picture"),
            text.say("workload.answer.pictureInWords"),
            new Chart.Columns(
                "",
                "",
                drawn.stream().map(one -> text.say(one.measure())).toList(),
                List.of(
                    new Chart.Series(
                        text.say("workload.answer.times"),
                        drawn.stream().map(Excess::times).toList(),
                        drawn.stream()
                            .map(one -> text.say("workload.answer.bar", value(one), limit(one)))
                            .toList())),
                false,
                true,
                List.of(new Chart.Limit(text.say("workload.answer.limit"), 1)))));
  }

  private List<String> toDo() {
    List<String> things = new ArrayList<>();
    Set<Excess.Kind> said = EnumSet.noneOf(Excess.Kind.class);
    for (Excess one : all) {
      if (one.over() && said.add(one.kind())) {
        things.addAll(advice(one));
      }
    }
    if (things.isEmpty() && work.load().hours() == 0) {
      things.add(text.say("workload.withoutMinutes"));
    }
    return things;
  }

  private List<String> advice(Excess one) {
    return switch (one.kind()) {
      case NOISE -> List.of(text.say("workload.advice.noise"));
      case STRAIN -> List.of(handAndWrist());
      case VIBRATION -> List.of(text.say("workload.advice.vibration"));
      case POSTURE -> List.of(text.say("workload.advice.posture"));
      case HOURS -> work.warnings();
    };
  }

  /** Names the task whose strain index is highest on its worst day, where one stands. */
  private String handAndWrist() {
    return all.stream()
        .filter(one -> one.kind() == Excess.Kind.STRAIN)
        .flatMap(one -> one.task().map(task -> hardest(one, task)).stream())
        .findFirst()
        .orElseGet(() -> text.say("workload.advice.strainOfDay"));
  }

  private String hardest(Excess one, Task task) {
    return text.say("workload.advice.strain", TaskName.of(task), value(one), limit(one));
  }
}
