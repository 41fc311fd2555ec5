package clenchbook.matching;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Counts, over many generated months, how proposals compare with the truth. */
final class TruthTable {
  /** What became of the payments of one kind. */
  static final class Counts {
    private int all;
    private int right;
    private int wrong;
    private int ownerRight;
    private int ownerWrong;
    private int left;

    int all() {
      return all;
    }

    int right() {
      return right;
    }

    int wrong() {
      return wrong;
    }

    int ownerWrong() {
      return ownerWrong;
    }
  }

  private final Map<PaymentCase, Counts> counts = new EnumMap<>(PaymentCase.class);
  private final Map<Integer, int[]> bySureness = new java.util.TreeMap<>();

  /** Compares one month. */
  List<String> add(GeneratedMonth month, MatchResult result) {
    Map<String, Proposal> proposals = new java.util.HashMap<>();
    result.toAdd().forEach(proposal -> proposals.put(proposal.entry().label(), proposal));
    List<String> wrong = new java.util.ArrayList<>();
    for (GeneratedMonth.Known known : month.entries()) {
      Counts kind = counts.computeIfAbsent(known.payment(), unused -> new Counts());
      kind.all++;
      Proposal proposal = proposals.get(known.entry().label());
      if (proposal == null) {
        kind.left++;
        continue;
      }
      boolean same = same(proposal.rows(), known.truth());
      int[] band = bySureness.computeIfAbsent(proposal.sure() / 10 * 10, unused -> new int[2]);
      boolean sure = proposal.sure() >= Proposal.SURE_ENOUGH;
      if (sure) {
        band[same ? 0 : 1]++;
        kind.right += same ? 1 : 0;
        kind.wrong += same ? 0 : 1;
        if (!same) {
          wrong.add(
              known + " -> " + proposal.rows() + " " + proposal.sure() + " " + proposal.why());
        }
      } else {
        String owner = proposal.rows().get(0).owner();
        boolean right = !known.truth().isEmpty() && known.truth().get(0).owner().equals(owner);
        kind.ownerRight += !owner.isEmpty() && right ? 1 : 0;
        kind.ownerWrong += !owner.isEmpty() && !right ? 1 : 0;
        if (!owner.isEmpty() && !right) {
          wrong.add(
              "OWNER "
                  + known
                  + " -> "
                  + proposal.rows()
                  + " "
                  + proposal.sure()
                  + " "
                  + proposal.why());
        }
      }
    }
    return wrong;
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

  Counts of(PaymentCase kind) {
    return counts.getOrDefault(kind, new Counts());
  }

  int wrong() {
    return counts.values().stream().mapToInt(Counts::wrong).sum();
  }

  int clear() {
    return sum(true, false);
  }

  int clearAndRight() {
    return sum(true, true);
  }

  private int sum(boolean clear, boolean right) {
    return counts.entrySet().stream()
        .filter(each -> each.getKey().clear() == clear)
        .mapToInt(each -> right ? each.getValue().right : each.getValue().all)
        .sum();
  }

  /** The table as docs print it. */
  String printed() {
    StringBuilder text =
        new StringBuilder(
            "| payment | entries | proposed, right | proposed, wrong | unsure, owner right |"
                + " unsure, owner wrong | left alone |\n");
    text.append("| --- | ---: | ---: | ---: | ---: | ---: | ---: |\n");
    counts.forEach(
        (kind, c) ->
            text.append(
                String.format(
                    "| %s | %d | %d | %d | %d | %d | %d |%n",
                    kind.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '),
                    c.all,
                    c.right,
                    c.wrong,
                    c.ownerRight,
                    c.ownerWrong,
                    c.left)));
    return text.toString();
  }
}
