package clenchbook.matching;

import clenchbook.billing.accounts.EnteredPayments;
import clenchbook.book.Names;
import clenchbook.book.Payment;
import clenchbook.book.PaymentKind;
import clenchbook.matching.bank.BankEntry;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Finds the entries that Payments holds: the same amount and invoice, the same amount and owner, or
 * the same amount and reference, within five days. One row speaks for one entry; several rows of
 * one reference or of one owner and day speak for an entry of their sum. Not thread-safe.
 */
final class AlreadyEntered {
  /** How many days may lie between an entry and its row. */
  static final int DAYS = 5;

  /** Several rows together. */
  static final int TOGETHER = 3;

  /** The least sure kind of evidence. */
  static final int LAST_RANK = 4;

  private final List<Payment> rows;
  private final boolean[] used;
  private final Map<BigDecimal, List<Integer>> byAmount = new HashMap<>();
  private final Map<String, List<Integer>> byReference = new LinkedHashMap<>();
  private final Map<String, List<Integer>> byOwnerAndDay = new LinkedHashMap<>();
  private final boolean severalTogether;

  /** Who and what an entry names, as far as it does. */
  record Identity(Set<String> invoices, Set<String> owners, String reference) {}

  AlreadyEntered(List<Payment> payments) {
    rows = payments.stream().filter(AlreadyEntered::moved).toList();
    used = new boolean[rows.size()];
    for (int at = 0; at < rows.size(); at++) {
      Payment row = rows.get(at);
      byAmount.computeIfAbsent(Amounts.key(signed(row)), unused -> new ArrayList<>(1)).add(at);
      if (!row.reference().isBlank()) {
        byReference
            .computeIfAbsent(Names.key(row.reference()), unused -> new ArrayList<>(1))
            .add(at);
      }
      byOwnerAndDay
          .computeIfAbsent(Names.key(row.owner()) + "|" + row.date(), unused -> new ArrayList<>(1))
          .add(at);
    }
    severalTogether =
        byOwnerAndDay.values().stream().anyMatch(group -> group.size() > 1)
            || byReference.values().stream().anyMatch(group -> group.size() > 1);
  }

  /** Written off: no money moved. */
  private static boolean moved(Payment payment) {
    return payment.kind() != PaymentKind.WRITTEN_OFF;
  }

  /** As the bank shows it: what was paid back is negative. */
  static BigDecimal signed(Payment payment) {
    BigDecimal size = payment.amount();
    return payment.kind() == PaymentKind.REFUND ? size.negate() : size;
  }

  /** Whether a row of this amount lies near this day, or rows together may. */
  boolean mayHold(BankEntry entry) {
    return severalTogether
        || byAmount.getOrDefault(Amounts.key(entry.amount()), List.of()).stream()
            .anyMatch(at -> days(rows.get(at), entry) <= DAYS);
  }

  /**
   * The nearest row that stands for an entry by one kind of evidence, taken from then on.
   *
   * @param rank the kind: from 0, the surest, to {@link #LAST_RANK}
   * @return a sentence; {@link Message#NONE} where no row does
   */
  Message take(BankEntry entry, Identity identity, int rank) {
    if (rank == TOGETHER) {
      return together(entry, identity);
    }
    int best = -1;
    long bestDays = DAYS + 1L;
    for (int at : byAmount.getOrDefault(Amounts.key(entry.amount()), List.of())) {
      long days = days(rows.get(at), entry);
      if (!used[at] && days < bestDays && rank(rows.get(at), entry, identity) == rank) {
        best = at;
        bestDays = days;
      }
    }
    if (best < 0) {
      return Message.NONE;
    }
    used[best] = true;
    return said(rows.get(best), rank);
  }

  /** How surely a row stands for an entry; beyond {@link #LAST_RANK} not at all. */
  private static int rank(Payment row, BankEntry entry, Identity identity) {
    if (!row.reference().isBlank() && Names.same(row.reference(), identity.reference())) {
      return 0;
    }
    if (!row.invoice().isBlank() && identity.invoices().contains(Names.key(row.invoice()))) {
      return 1;
    }
    if (identity.owners().contains(Names.key(row.owner()))) {
      return 2;
    }
    boolean nameless = identity.owners().isEmpty() && identity.invoices().isEmpty();
    return nameless && row.date().equals(entry.date()) && !EnteredPayments.isByHand(row)
        ? LAST_RANK
        : LAST_RANK + 1;
  }

  private static long days(Payment row, BankEntry entry) {
    return Math.abs(row.date().toEpochDay() - entry.date().toEpochDay());
  }

  private static Message said(Payment row, int rank) {
    String place = Integer.toString(row.source().row());
    return switch (rank) {
      case 0 -> Message.of("matching.entered.reference", place, row.date());
      case 1 -> Message.of("matching.entered.invoice", place, row.date());
      case 2 -> Message.of("matching.entered.owner", place, row.date());
      default -> Message.of("matching.entered.day", place, row.date());
    };
  }

  /** Several rows whose sum is the entry: one payment for several invoices. */
  private Message together(BankEntry entry, Identity identity) {
    List<List<Integer>> groups = new ArrayList<>();
    groups.add(byReference.getOrDefault(Names.key(identity.reference()), List.of()));
    for (String owner : identity.owners()) {
      groups.add(byOwnerAndDay.getOrDefault(owner + "|" + entry.date(), List.of()));
    }
    for (List<Integer> group : groups) {
      List<Integer> free =
          group.stream().filter(at -> !used[at] && days(rows.get(at), entry) <= DAYS).toList();
      BigDecimal sum =
          free.stream().map(at -> signed(rows.get(at))).reduce(BigDecimal.ZERO, BigDecimal::add);
      if (free.size() > 1 && sum.compareTo(entry.amount()) == 0) {
        free.forEach(at -> used[at] = true);
        return Message.of(
            "matching.entered.together",
            free.stream().map(at -> Integer.toString(rows.get(at).source().row())).toList());
      }
    }
    return Message.NONE;
  }
}
