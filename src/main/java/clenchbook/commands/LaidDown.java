package clenchbook.commands;

import clenchbook.billing.BillingDecision;
import clenchbook.billing.Unprepared;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.commands.opening.RunFault;
import clenchbook.commands.opening.Terminal;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Sees to it that what goes out is, byte for byte, what month-end or a preview last laid down to be
 * looked at: lines and amounts, and the PDF, on which payments and addresses stand too.
 */
final class LaidDown {
  private final List<BilledDocument> before;
  private final BillingDecision decision;
  private final List<Unprepared> otherwise;

  /**
   * Compares.
   *
   * @param before the register's documents, as last laid down
   * @param decision the month as the book makes it now
   */
  LaidDown(List<BilledDocument> before, BillingDecision decision) {
    this.before = List.copyOf(before);
    this.decision = decision;
    this.otherwise = new ArrayList<>(Unprepared.of(before, decision));
  }

  /**
   * Compares the print of the drafts, too.
   *
   * @param now the bytes as they are printed now, by number
   * @param stored finds the bytes as they were laid down
   */
  void compare(Map<String, byte[]> now, Function<String, Optional<byte[]>> stored) {
    Set<String> known = new HashSet<>();
    otherwise.forEach(each -> known.add(each.now().number()));
    Map<String, BilledDocument> earlier = new HashMap<>();
    before.forEach(document -> earlier.put(document.number(), document));
    for (BilledDocument document : decision.month()) {
      byte[] print = now.get(document.number());
      boolean draft = document.state() == DocumentState.DRAFT;
      boolean same =
          print == null
              || stored
                  .apply(document.number())
                  .filter(laid -> Arrays.equals(laid, print))
                  .isPresent();
      if (draft && !same && known.add(document.number())) {
        otherwise.add(
            new Unprepared(document, Optional.ofNullable(earlier.get(document.number()))));
      }
    }
    otherwise.sort(Comparator.comparing(each -> each.now().number()));
  }

  /**
   * Refuses to go on where a document is otherwise, naming each.
   *
   * @param sum writes documents and amounts
   * @throws RunFault where one is
   */
  void refuse(MonthSum sum, Terminal terminal) {
    if (otherwise.isEmpty()) {
      return;
    }
    otherwise.forEach(each -> terminal.say(line(each, sum)));
    List<String> numbers = otherwise.stream().map(each -> each.now().number()).toList();
    String month = otherwise.get(0).now().month().toString();
    throw new RunFault(Message.of("commands.laid.refused", numbers, numbers.size(), month));
  }

  private static Message line(Unprepared document, MonthSum sum) {
    Optional<BilledDocument> laid = document.before();
    BilledDocument now = document.now();
    if (laid.isEmpty()) {
      return Message.of("commands.laid.notYet", sum.line(now));
    }
    String before = sum.amount(laid.get().gross());
    if (!now.counts()) {
      return Message.of("commands.laid.nothingLeft", now.number(), now.owner(), before);
    }
    if (now.gross().compareTo(laid.get().gross()) != 0) {
      return Message.of("commands.laid.as", sum.line(now), before);
    }
    return now.saysTheSame(laid.get())
        ? Message.of("commands.laid.asButLayout", sum.line(now))
        : Message.of("commands.laid.asButLines", sum.line(now));
  }
}
