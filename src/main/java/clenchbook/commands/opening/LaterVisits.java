package clenchbook.commands.opening;

import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import clenchbook.texts.Message;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Visits dated after the day of the run: the first few by their cells, the others by number. */
final class LaterVisits {
  private static final int NAMED = 5;

  private LaterVisits() {}

  /** The warnings, one line each; none where no visit is dated after the day. */
  static List<Message> warnings(Jobs jobs, LocalDate today) {
    List<Job> later = jobs.all().stream().filter(job -> job.date().isAfter(today)).toList();
    List<Message> lines = new ArrayList<>();
    later.stream()
        .limit(NAMED)
        .forEach(job -> lines.add(Message.of("commands.later", cell(job), job.date(), today)));
    if (later.size() > NAMED) {
      lines.add(others(later.size() - NAMED, later.get(later.size() - 1)));
    }
    return lines;
  }

  private static Message others(int number, Job last) {
    return Message.of("commands.laterOthers", number, cell(last), last.date());
  }

  private static Message cell(Job job) {
    return job.visit().source().at("Date").place();
  }
}
