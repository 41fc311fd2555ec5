package clenchbook.reports.month;

import clenchbook.book.MaterialKind;
import clenchbook.jobs.Job;
import clenchbook.reports.blocks.FigureText;

/** What the jobs of a table of margins are grouped by. */
enum MarginBy {
  WORK,
  SHOE,
  PLACE,
  OWNER;

  /** The heading of the column that names the groups. */
  String header(FigureText text) {
    return switch (this) {
      case WORK -> text.say("month.column.work");
      case SHOE -> text.say("month.column.shoe");
      case PLACE -> text.say("month.column.place");
      case OWNER -> text.say("month.column.owner");
    };
  }

  /** What stands above a table of income and costs. */
  String costs(FigureText text) {
    return switch (this) {
      case WORK -> text.say("month.margins.costsByWork");
      case SHOE -> text.say("month.margins.costsByShoe");
      case PLACE -> text.say("month.margins.costsByPlace");
      case OWNER -> text.say("month.margins.costsByOwner");
    };
  }

  /** A group's name: the book's own, save for shoes and for jobs at no place. */
  String name(MarginGroup group, FigureText text) {
    return switch (this) {
      case SHOE -> shoe(group.jobs().get(0).job(), text);
      case PLACE ->
          group.name().equals(Margins.NO_PLACE) ? text.say("month.margins.noPlace") : group.name();
      case WORK, OWNER -> group.name();
    };
  }

  private static String shoe(Job job, FigureText text) {
    if (job.fee()) {
      return text.say("month.shoe.fee");
    }
    if (job.shoes() == 0) {
      return text.say("month.shoe.none");
    }
    return job.kinds().stream()
        .map(kind -> word(kind, text))
        .reduce((one, other) -> text.say("month.shoe.two", one, other))
        .orElseGet(() -> text.say("month.shoe.unknown"));
  }

  private static String word(MaterialKind kind, FigureText text) {
    return switch (kind) {
      case KEG -> text.say("month.kind.keg");
      case HANDMADE -> text.say("month.kind.handmade");
      case ALUMINIUM -> text.say("month.kind.aluminium");
      case BAR -> text.say("month.kind.bar");
      case NAIL -> text.say("month.kind.nail");
      case PAD -> text.say("month.kind.pad");
      case STUD -> text.say("month.kind.stud");
      case ADHESIVE -> text.say("month.kind.adhesive");
      case PACKING -> text.say("month.kind.packing");
      case GAS -> text.say("month.kind.gas");
      case SUNDRY -> text.say("month.kind.sundry");
    };
  }
}
