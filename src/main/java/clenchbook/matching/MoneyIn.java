package clenchbook.matching;

import clenchbook.book.PaymentKind;
import clenchbook.matching.bank.AccountMask;
import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.evidence.NameIndex;
import clenchbook.matching.evidence.NameLevel;
import clenchbook.matching.evidence.NumberHow;
import clenchbook.matching.known.KnownDocument;
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

/** Weighs all money that came in at once. Not thread-safe. */
final class MoneyIn {
  private static final double LEARNED_FROM = 0.95;
  private static final double OWNER_KNOWN = 0.8;
  private static final int FOR_THE_ACCOUNT = 100;

  private final List<BankEntry> entries;
  private final CandidateFinder finder;
  private final NameIndex names;
  private final Amounts amounts;
  private final AccountMask mask;
  private final List<List<Candidate>> readings = new ArrayList<>();
  private List<List<Candidate>> weighed = List.of();
  private double[][] likely = new double[0][];

  /**
   * Takes all money in of a run.
   *
   * @param entries the entries that Payments does not hold
   */
  MoneyIn(
      List<BankEntry> entries,
      CandidateFinder finder,
      NameIndex names,
      Amounts amounts,
      AccountMask mask) {
    this.entries = entries;
    this.finder = finder;
    this.names = names;
    this.amounts = amounts;
    this.mask = mask;
  }

  /** A proposal for each entry that something speaks for, in the order given; else empty. */
  List<Optional<Proposal>> proposals() {
    entries.forEach(entry -> readings.add(finder.of(entry)));
    weigh();
    if (learn()) {
      weigh();
    }
    int[] footing = Footing.of(weighed, likely);
    List<Optional<Proposal>> proposals = new ArrayList<>(entries.size());
    for (int at = 0; at < entries.size(); at++) {
      proposals.add(proposal(at, footing[at]));
    }
    return proposals;
  }

  private void weigh() {
    List<List<Candidate>> ordered = new ArrayList<>(readings);
    new SecondPayments(entries, ordered).lower();
    likely = Assignment.of(ordered);
    weighed = ordered;
  }

  /** Payers whom an exact number has shown to pay for an owner; whether others are seen anew. */
  private boolean learn() {
    for (int at = 0; at < entries.size(); at++) {
      BankEntry entry = entries.get(at);
      for (int which = 0; which < likely[at].length; which++) {
        Candidate candidate = weighed.get(at).get(which);
        if (likely[at][which] >= LEARNED_FROM && teaches(candidate, entry)) {
          names.paysElsewhere(entry, candidate.owner());
        }
      }
    }
    boolean changed = false;
    for (int at = 0; at < entries.size(); at++) {
      if (names.isPayerElsewhere(entries.get(at))) {
        readings.set(at, finder.of(entries.get(at)));
        changed = true;
      }
    }
    return changed;
  }

  private static boolean teaches(Candidate candidate, BankEntry entry) {
    boolean numbered = candidate.number().filter(NumberHow::plain).isPresent();
    boolean fits = candidate.fit() == AmountFit.EXACT || candidate.fit() == AmountFit.SUM;
    boolean oneOwner =
        candidate.shares().stream().allMatch(s -> s.document().owner().equals(candidate.owner()));
    return numbered
        && fits
        && oneOwner
        && candidate.against().isEmpty()
        && !isOwner(candidate, entry);
  }

  private static boolean isOwner(Candidate candidate, BankEntry entry) {
    return candidate.name() == NameLevel.FULL && entry.account().isEmpty();
  }

  private Optional<Proposal> proposal(int at, int footing) {
    BankEntry entry = entries.get(at);
    List<Candidate> candidates = weighed.get(at);
    if (candidates.isEmpty()) {
      List<KnownDocument> open = amounts.open(entry.amount());
      return open.isEmpty()
          ? Optional.empty()
          : Optional.of(unsure(entry, "", 100 / (open.size() + 1), Why.many(open, entry)));
    }
    Integer[] order = new Integer[candidates.size()];
    Arrays.setAll(order, place -> place);
    double[] chances = likely[at];
    Arrays.sort(order, Comparator.comparingDouble((Integer place) -> -chances[place]));
    Candidate best = candidates.get(order[0]);
    int sure = Math.min(footing, sure(chances[order[0]], best));
    if (sure >= Proposal.SURE_ENOUGH && (!best.shares().isEmpty() || best.cap() > 90)) {
      return Optional.of(
          new Proposal(
              entry,
              rows(best, entry),
              EntryReference.of(entry, mask),
              sure,
              Why.proposed(best, entry)));
    }
    List<Candidate> sorted = Arrays.stream(order).map(candidates::get).toList();
    List<Integer> percents =
        Arrays.stream(order)
            .map(
                place ->
                    Math.min(
                        sure(chances[place], candidates.get(place)),
                        place.equals(order[0]) ? sure : 100))
            .toList();
    return Optional.of(
        unsure(
            entry,
            owner(candidates, chances),
            Math.min(sure, Proposal.SURE_ENOUGH - 1),
            Why.unsure(sorted, percents, entry)));
  }

  private static int sure(double chance, Candidate candidate) {
    return Math.min(candidate.cap(), (int) Math.floor(chance * 100));
  }

  private static List<PaymentRow> rows(Candidate candidate, BankEntry entry) {
    if (candidate.shares().isEmpty()) {
      return List.of(new PaymentRow(candidate.owner(), entry.amount(), "", PaymentKind.PAYMENT));
    }
    return candidate.shares().stream()
        .map(
            share ->
                new PaymentRow(
                    share.document().owner(),
                    share.amount(),
                    share.document().number(),
                    PaymentKind.PAYMENT))
        .toList();
  }

  private Proposal unsure(BankEntry entry, String owner, int sure, Message why) {
    return new Proposal(
        entry,
        List.of(new PaymentRow(owner, entry.amount(), "", PaymentKind.PAYMENT)),
        EntryReference.of(entry, mask),
        sure,
        why);
  }

  /** The owner whose money it is, where that is clear though the invoice is not; else empty. */
  private static String owner(List<Candidate> candidates, double[] chances) {
    Map<String, Double> byOwner = new HashMap<>();
    Set<String> spokenFor = new HashSet<>();
    for (int at = 0; at < chances.length; at++) {
      Candidate candidate = candidates.get(at);
      byOwner.merge(candidate.owner(), chances[at], Double::sum);
      boolean numbered = candidate.number().filter(NumberHow::plain).isPresent();
      if (candidate.name().identifies() || numbered) {
        spokenFor.add(candidate.owner());
      }
    }
    return byOwner.entrySet().stream()
        .filter(entry -> entry.getValue() >= OWNER_KNOWN && spokenFor.contains(entry.getKey()))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse("");
  }

  /**
   * Where several entries would pay one invoice in full by number or name, the first one does, and
   * the others are money for the owner's account.
   */
  private record SecondPayments(List<BankEntry> entries, List<List<Candidate>> readings) {
    private record Claim(int entry, int candidate, boolean numbered) {}

    void lower() {
      Map<KnownDocument, List<Claim>> claims = new java.util.LinkedHashMap<>();
      for (int entry = 0; entry < readings.size(); entry++) {
        List<Candidate> candidates = readings.get(entry);
        for (int at = 0; at < candidates.size(); at++) {
          Candidate candidate = candidates.get(at);
          boolean numbered = candidate.number().filter(NumberHow::plain).isPresent();
          boolean whole = candidate.fit() == AmountFit.EXACT && candidate.shares().size() == 1;
          if (whole
              && candidate.against().isEmpty()
              && (numbered || isOnly(candidate, candidates))) {
            claims
                .computeIfAbsent(candidate.shares().get(0).document(), unused -> new ArrayList<>(1))
                .add(new Claim(entry, at, numbered));
          }
        }
      }
      claims.values().stream().filter(list -> list.size() > 1).forEach(this::lower);
    }

    /** By name: only where the owner has one invoice of the amount. */
    private static boolean isOnly(Candidate candidate, List<Candidate> candidates) {
      return candidate.name().identifies()
          && candidate.number().isEmpty()
          && candidates.stream()
                  .filter(other -> other.owner().equals(candidate.owner()))
                  .filter(other -> other.fit() == AmountFit.EXACT)
                  .count()
              == 1;
    }

    private void lower(List<Claim> claims) {
      List<Claim> sorted = new ArrayList<>(claims);
      sorted.sort(
          Comparator.comparing((Claim claim) -> !claim.numbered())
              .thenComparing(claim -> entries.get(claim.entry()).date())
              .thenComparing(Claim::entry));
      BankEntry first = entries.get(sorted.get(0).entry());
      for (Claim claim : sorted.subList(1, sorted.size())) {
        List<Candidate> changed = new ArrayList<>(readings.get(claim.entry()));
        Candidate candidate = changed.get(claim.candidate());
        Message why = Message.of("matching.against.paid", first.label(), first.date());
        changed.set(claim.candidate(), candidate.lessLikely(Weights.AGAIN, why));
        for (int at = 0; at < changed.size(); at++) {
          Candidate other = changed.get(at);
          if (other.shares().isEmpty() && other.owner().equals(candidate.owner())) {
            changed.set(at, other.lessLikely(FOR_THE_ACCOUNT, other.against()));
          }
        }
        readings.set(claim.entry(), changed);
      }
    }
  }
}
