package clenchbook.matching;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Counts, over many generated months, how proposals compare with the truth. */
final class TruthTable {
  /** What became of the payments of one kind. */
  private static final class Counts {
    private int all;
    private int right;
    private int wrong;
    private int ownerRight;
    private int ownerWrong;

    void add(Counts other) {
      all += other.all;
      right += other.right;
      wrong += other.wrong;
      ownerRight += other.ownerRight;
      ownerWrong += other.ownerWrong;
    }
  }

  private final Map<PaymentCase, Counts> counts = new EnumMap<>(PaymentCase.class);

  /** Compares one month; gives what was proposed as sure and is wrong. */
  List<String> add(GeneratedMonth month, MatchResult result) {
    Map<String, Proposal> proposals = new HashMap<>();
    result.toAdd().forEach(proposal -> proposals.put(proposal.entry().label(), proposal));
    List<String> wrong = new ArrayList<>();
    for (GeneratedMonth.Known known : month.entries()) {
      Counts kind = counts.computeIfAbsent(known.payment(), unused -> new Counts());
      kind.all++;
      Proposal proposal = proposals.get(known.entry().label());
      if (proposal == null) {
        continue;
      }
      if (proposal.sure() < Proposal.SURE_ENOUGH) {
        unsure(kind, proposal.rows().get(0).owner(), known.truth());
      } else if (same(proposal.rows(), known.truth())) {
        kind.right++;
      } else {
        kind.wrong++;
        wrong.add(known + " -> " + proposal);
      }
    }
    return wrong;
  }

  /** A row that names an owner though no invoice is sure. */
  private static void unsure(Counts kind, String owner, List<PaymentRow> truth) {
    if (!owner.isEmpty()) {
      boolean right = !truth.isEmpty() && truth.get(0).owner().equals(owner);
      kind.ownerRight += right ? 1 : 0;
      kind.ownerWrong += right ? 0 : 1;
    }
  }

  private static boolean same(List<PaymentRow> one, List<PaymentRow> other) {
    return one.size() == other.size()
        && one.stream()
            .allMatch(
                row ->
                    other.stream()
                        .anyMatch(
                            truth ->
                                truth.owner().equals(row.owner())
                                    && truth.invoice().equals(row.invoice())
                                    && truth.kind() == row.kind()
                                    && truth.amount().compareTo(row.amount()) == 0));
  }

  int wrong() {
    return sum(false).wrong;
  }

  int clear() {
    return sum(true).all;
  }

  int clearAndRight() {
    return sum(true).right;
  }

  private Counts sum(boolean clearOnly) {
    Counts sum = new Counts();
    counts.forEach(
        (kind, of) -> {
          if (kind.clear() || !clearOnly) {
            sum.add(of);
          }
        });
    return sum;
  }

  /** The table as docs print it, with what is clear added up, and the sentence below it. */
  String printed() {
    StringBuilder text =
        new StringBuilder(
            "| payment | entries | proposed, right | proposed, wrong | unsure, owner right |"
                + " unsure, owner wrong |\n| --- | ---: | ---: | ---: | ---: | ---: |\n");
    counts.forEach((kind, of) -> text.append(kind.clear() ? row(kind.words(), of, "") : ""));
    text.append(row("**the clear ones**", sum(true), "**"));
    counts.forEach((kind, of) -> text.append(kind.clear() ? "" : row(kind.words(), of, "")));
    int right = sum(false).right;
    return text.append(
            String.format(
                Locale.ROOT,
                "\nRecall of the clear ones %.2f %%; precision of what is proposed at 90 or above"
                    + " %,d of %,d.",
                Math.floor(10_000.0 * clearAndRight() / clear()) / 100,
                right,
                right + wrong()))
        .toString();
  }

  private static String row(String name, Counts of, String mark) {
    return IntStream.of(of.all, of.right, of.wrong, of.ownerRight, of.ownerWrong)
        .mapToObj(count -> mark + count + mark)
        .collect(Collectors.joining(" | ", "| " + name + " | ", " |\n"));
  }
}
