package clenchbook.reports.month;

import clenchbook.book.Names;
import clenchbook.matching.WaitingPayments;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureText;
import java.util.List;

/** What the month's page says of bank entries that wait to be pasted into Payments. */
final class WaitingWords {
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
        text.say(
                "month.waiting.said",
                waiting.count(),
                text.money(waiting.sum()),
                waiting.sure(),
                waiting.unsure())
            + pressed(month, text);
    return List.of(
        new Block.Answers(
            List.of(new Block.Answered(text.say("month.waiting.label"), LINK, said))));
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
    List<String> named = pressed.subList(0, Math.min(MOST_NAMED, pressed.size()));
    return " "
        + (more > 0
            ? text.say("month.waiting.pressedMore", named, more)
            : text.say("month.waiting.pressed", named));
  }

  private static boolean isAmong(List<String> owners, String owner) {
    return owners.stream().anyMatch(each -> Names.same(each, owner));
  }
}
