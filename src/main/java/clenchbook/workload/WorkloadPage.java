package clenchbook.workload;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FirstPage;
import java.util.ArrayList;
import java.util.List;

/** The body on the month's page: what exceeds its limit by most, what to do, the caution. */
final class WorkloadPage {

  private WorkloadPage() {}

  static List<Block> of(WorkYear work) {
    FirstPage first = new WorkloadAnswer(work).page();
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Answer(first.answer()));
    if (!first.toDo().isEmpty()) {
      blocks.add(new Block.ToDo(first.toDo()));
    }
    blocks.add(new Block.Caution(work.text().say("workload.caution")));
    return blocks;
  }
}
