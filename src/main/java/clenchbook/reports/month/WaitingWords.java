package clenchbook.reports.month;

import clenchbook.book.Names;
import clenchbook.matching.WaitingPayments;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureText;
import java.util.List;

/** What the month's page says of bank entries that wait to be pasted into Payments. */
public final class WaitingWords {
  /** The file that holds them, seen from the month's page. */
  static final String LINK = "../payments/payments-to-add.csv";

  private static final int MOST_NAMED = 5;

  private WaitingWords() {}

  /** How many wait, and whom statements would press although money of theirs may be among it. */
  static List<Block> of(MonthFindings month, FigureText text) {
    WaitingPayments waiting = month.waiting();
    if (waiting.count() == 0) {
      return List.of();
    }
    String said =
        count(waiting)
            + ", "
            + text.money(waiting.sum())
            + " in all: "
            + text.count(waiting.sure())
            + " sure, "
            + text.count(waiting.unsure())
            + " to look at. Until they stand in Payments the money counts as unpaid."
            + pressed(month, text);
    return List.of(
        new Block.Answers(List.of(new Block.Answered("Payments to be pasted", LINK, said))));
  }

  /**
   * How many wait.
   *
   * @param waiting at least one
   * @return a clause without its end
   */
  public static String count(WaitingPayments waiting) {
    return waiting.count() == 1 ? "1 payment waits" : waiting.count() + " payments wait";
  }

  private static String pressed(MonthFindings month, FigureText text) {
    List<String> pressed =
        Statements.due(month.accounts()).stream()
            .filter(account -> account.asked().current().compareTo(account.balance()) < 0)
            .map(account -> month.jobs().index().ownerName(account.owner()))
            .filter(owner -> isAmong(month.waiting().owners(), owner))
            .toList();
    if (pressed.isEmpty()) {
      return "";
    }
    int more = pressed.size() - MOST_NAMED;
    return " Paste before statements go out: they press "
        + String.join(", ", pressed.subList(0, Math.min(MOST_NAMED, pressed.size())))
        + (more > 0 ? " and " + text.count(more) + " more" : "")
        + ", whose money is among it.";
  }

  private static boolean isAmong(List<String> owners, String owner) {
    return owners.stream().anyMatch(each -> Names.same(each, owner));
  }
}
