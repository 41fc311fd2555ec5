package clenchbook.jobs;

import clenchbook.book.Names;
import clenchbook.book.WorkItem;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** The Work sheet by name and date. */
public final class PriceList {
  private final DatedRows<String, WorkItem> rows;
  private final List<String> names;

  /**
   * Indexes the Work sheet.
   *
   * @param work its rows, in row order
   */
  public PriceList(List<WorkItem> work) {
    rows = new DatedRows<>(work, item -> Names.key(item.name()), WorkItem::from);
    TreeSet<String> sorted = new TreeSet<>(Names.ORDER);
    work.forEach(item -> sorted.add(item.name()));
    names = List.copyOf(sorted);
  }

  /**
   * The row in force.
   *
   * @param name the Work's name
   * @param day the day of the visit
   * @return the newest row from on or before the day; empty when there is none
   */
  public Optional<WorkItem> find(String name, LocalDate day) {
    return rows.find(Names.key(name), day);
  }

  /**
   * Whether any row has this name, whatever its date.
   *
   * @param name the Work's name
   * @return true when it is known
   */
  public boolean knows(String name) {
    return rows.knows(Names.key(name));
  }

  /**
   * All names.
   *
   * @return in order, each once
   */
  public List<String> names() {
    return names;
  }

  /**
   * Rows that override another of the same name and date.
   *
   * @return in row order
   */
  public List<WorkItem> overriding() {
    return rows.overriding();
  }
}
