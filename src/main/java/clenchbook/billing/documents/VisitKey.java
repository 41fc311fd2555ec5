package clenchbook.billing.documents;

import clenchbook.book.Names;
import clenchbook.jobs.Job;
import java.time.LocalDate;

/**
 * What a row of Visits is known by on documents, whatever its position in the sheet.
 *
 * @param date the day
 * @param horse the horse's name as looked up; empty for a fee without one
 * @param work the Work's name as looked up
 * @param owner the owner typed in the row, else the horse's, as looked up; it tells apart two
 *     horses of one name and two rows that differ in nothing else; empty on documents of registers
 *     that did not keep it yet
 * @param occurrence which row of this date, horse, Work and owner, from 1
 */
public record VisitKey(LocalDate date, String horse, String work, String owner, int occurrence) {
  /**
   * The key that a row has by itself.
   *
   * @param job the row
   * @param occurrence which of the rows that are alike, from 1
   * @return its key
   */
  public static VisitKey of(Job job, int occurrence) {
    String owner = job.visit().owner().isEmpty() ? job.horse().owner() : job.visit().owner();
    return new VisitKey(
        job.date(),
        Names.key(job.visit().horse()),
        Names.key(job.visit().work()),
        Names.key(owner),
        occurrence);
  }

  /**
   * The key of another row that is alike.
   *
   * @param other which of them, from 1
   * @return the same date, horse, Work and owner
   */
  public VisitKey at(int other) {
    return new VisitKey(date, horse, work, owner, other);
  }

  /**
   * The key in one line, for a register.
   *
   * @return its parts, parted by bars
   */
  public String line() {
    return date + "|" + horse + "|" + work + "|" + owner + "|" + occurrence;
  }
}
