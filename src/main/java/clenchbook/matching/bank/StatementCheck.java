package clenchbook.matching.bank;

import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Whether statements are whole: opening plus movements is closing, and no days lie between one
 * statement of an account and the next.
 *
 * @param faults what is wrong, a sentence each
 * @param notes what could not be checked, a sentence each
 */
public record StatementCheck(List<Message> faults, List<Message> notes) {
  /** Copies its lists. */
  public StatementCheck {
    faults = List.copyOf(faults);
    notes = List.copyOf(notes);
  }

  /**
   * Checks statements.
   *
   * @param statements all of a run
   * @param entries their entries; what is only announced does not count
   * @return faults and notes in the order of the statements
   */
  public static StatementCheck of(List<BankStatement> statements, List<BankEntry> entries) {
    return new Checker(statements, entries).check();
  }

  private static final class Checker {
    private final List<BankStatement> statements;
    private final BigDecimal[] sums;
    private final List<Message> faults = new ArrayList<>();
    private final List<Message> notes = new ArrayList<>();

    Checker(List<BankStatement> statements, List<BankEntry> entries) {
      this.statements = statements;
      sums = new BigDecimal[statements.size()];
      java.util.Arrays.fill(sums, BigDecimal.ZERO);
      for (BankEntry entry : entries) {
        if (entry.standing() != BankEntry.Standing.PENDING) {
          sums[entry.statement()] = sums[entry.statement()].add(entry.amount());
        }
      }
    }

    StatementCheck check() {
      for (int at = 0; at < sums.length; at++) {
        balances(statements.get(at), sums[at]);
      }
      List<List<Integer>> accounts = new ArrayList<>();
      for (int at = 0; at < sums.length; at++) {
        if (statements.get(at).whole()) {
          account(accounts, at).add(at);
        }
      }
      accounts.forEach(this::gaps);
      return new StatementCheck(faults, notes);
    }

    private void balances(BankStatement statement, BigDecimal sum) {
      if (!statement.whole()) {
        return;
      }
      if (statement.opening().isEmpty() || statement.closing().isEmpty()) {
        notes.add(Message.of("matching.check.noBalance", statement.name()));
        return;
      }
      BigDecimal expected = statement.opening().get().add(sum);
      BigDecimal difference = statement.closing().get().subtract(expected);
      if (difference.signum() != 0) {
        faults.add(
            Message.of(
                "matching.check.off",
                statement.name(),
                plain(statement.opening().get()),
                plain(sum),
                plain(expected),
                plain(statement.closing().get()),
                plain(difference)));
      }
    }

    private List<Integer> account(List<List<Integer>> accounts, int at) {
      BankStatement statement = statements.get(at);
      for (List<Integer> group : accounts) {
        BankStatement other = statements.get(group.get(0));
        boolean known = statement.account().isEmpty() == other.account().isEmpty();
        boolean currency = statement.currency().equals(other.currency());
        if (known && currency && statement.sameAccount(other)) {
          return group;
        }
      }
      List<Integer> group = new ArrayList<>();
      accounts.add(group);
      return group;
    }

    private void gaps(List<Integer> group) {
      List<BankStatement> sorted =
          group.stream()
              .map(statements::get)
              .filter(statement -> statement.from().isPresent() && statement.to().isPresent())
              .sorted(
                  Comparator.comparing((BankStatement s) -> s.from().orElse(LocalDate.MIN))
                      .thenComparing(s -> s.to().orElse(LocalDate.MIN)))
              .toList();
      Optional<BankStatement> last = Optional.empty();
      for (BankStatement statement : sorted) {
        last.ifPresent(earlier -> gap(earlier, statement));
        boolean further = last.isEmpty() || !end(last.get()).isAfter(end(statement));
        last = further ? Optional.of(statement) : last;
      }
    }

    private static LocalDate end(BankStatement statement) {
      return statement.to().orElse(LocalDate.MIN);
    }

    private void gap(BankStatement earlier, BankStatement later) {
      LocalDate end = end(earlier);
      LocalDate begin = later.from().orElse(LocalDate.MAX);
      boolean known = earlier.closing().isPresent() && later.opening().isPresent();
      boolean follows = known && earlier.isFollowedBy(later);
      if (overlap(earlier, later, end, begin) && !follows) {
        return;
      }
      boolean between = begin.isAfter(end.plusDays(1));
      if (follows && (!between || nothingBetween(earlier, later, end, begin))) {
        return;
      }
      boolean jumps = known && !follows;
      boolean dated = earlier.dated() && later.dated();
      if (between && (dated || known)) {
        faults.add(missing(earlier, later, jumps));
      } else if (jumps) {
        faults.add(
            Message.of(
                "matching.check.jump",
                earlier.name(),
                later.name(),
                closing(earlier),
                opening(later)));
      } else if (between) {
        notes.add(
            Message.of(
                "matching.check.untold",
                earlier.name(),
                later.name(),
                end.plusDays(1),
                begin.minusDays(1)));
      }
    }

    private static Message missing(BankStatement earlier, BankStatement later, boolean jumps) {
      LocalDate first = end(earlier).plusDays(1);
      LocalDate last = later.from().orElse(LocalDate.MAX).minusDays(1);
      return jumps
          ? Message.of(
              "matching.check.daysAndJump",
              earlier.name(),
              later.name(),
              first,
              last,
              closing(earlier),
              opening(later))
          : Message.of("matching.check.days", earlier.name(), later.name(), first, last);
    }

    /** One day may be in both: where entries alone date them, or both begin with it. */
    private static boolean overlap(
        BankStatement earlier, BankStatement later, LocalDate end, LocalDate begin) {
      boolean dated = earlier.dated() && later.dated();
      boolean sameBegin = earlier.from().equals(later.from());
      return begin.isBefore(end) || (begin.equals(end) && (!dated || sameBegin));
    }

    /** The bank's own numbers follow on, or only a weekend lies between; or nothing is dated. */
    private static boolean nothingBetween(
        BankStatement earlier, BankStatement later, LocalDate end, LocalDate begin) {
      return !earlier.dated()
          || !later.dated()
          || isNext(earlier.number(), later.number())
          || end.plusDays(1).datesUntil(begin).allMatch(Checker::isWeekend);
    }

    private static boolean isWeekend(LocalDate day) {
      return day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY;
    }

    private static boolean isNext(String number, String next) {
      String one = number.replaceFirst("/.*", "");
      String other = next.replaceFirst("/.*", "");
      return one.matches("\\d{1,9}")
          && other.matches("\\d{1,9}")
          && Integer.parseInt(one) > 0
          && Integer.parseInt(other) == Integer.parseInt(one) + 1;
    }

    private static String closing(BankStatement statement) {
      return plain(statement.closing().orElse(BigDecimal.ZERO));
    }

    private static String opening(BankStatement statement) {
      return plain(statement.opening().orElse(BigDecimal.ZERO));
    }

    private static String plain(BigDecimal amount) {
      return amount.toPlainString();
    }
  }
}
