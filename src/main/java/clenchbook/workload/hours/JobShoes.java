package clenchbook.workload.hours;

import clenchbook.book.MaterialKind;
import clenchbook.book.Shaping;
import clenchbook.jobs.FittedPart;
import clenchbook.jobs.Job;

/** The shoes of one job, told apart by metal and shaping. */
public final class JobShoes {

  private JobShoes() {}

  /** Shoes whose kind the book does not know count as steel, as most are. */
  public static ShoeTally of(Job job, double shapeMinutes) {
    double aluminium = aluminium(job);
    double steel = Math.max(0, job.shoes() - aluminium);
    double made = made(job);
    if (job.shaping().filter(Shaping.NONE::equals).isPresent()) {
      return new ShoeTally(0, 0, 0, 0, job.shoes(), made, 0, 0);
    }
    double steelMinutes = job.shoes() > 0 ? shapeMinutes * steel / job.shoes() : 0;
    return job.hot()
        ? new ShoeTally(steel, 0, aluminium, 0, 0, made, steelMinutes, 0)
        : new ShoeTally(0, steel, 0, aluminium, 0, made, 0, steelMinutes);
  }

  private static double aluminium(Job job) {
    double count =
        job.parts().stream()
            .filter(part -> part.kind().filter(MaterialKind.ALUMINIUM::equals).isPresent())
            .mapToInt(FittedPart::count)
            .sum();
    return Math.min(count, job.shoes());
  }

  private static double made(Job job) {
    return job.parts().stream()
        .filter(part -> part.kind().filter(MaterialKind.HANDMADE::equals).isPresent())
        .mapToInt(FittedPart::newCount)
        .sum();
  }
}
