package clenchbook.matching;

import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.evidence.NameIndex;
import clenchbook.matching.evidence.NameLevel;
import clenchbook.matching.evidence.NumberHow;
import clenchbook.matching.evidence.NumberIndex;
import clenchbook.matching.known.KnownDocument;
import clenchbook.matching.known.KnownOwner;
import clenchbook.matching.known.Ledger;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Gathers what an entry of money in may pay, with the evidence for each. Not thread-safe. */
final class CandidateFinder {
  /** Beyond this many invoices of one amount, the amount alone says nothing. */
  static final int MOST_OF_AMOUNT = 8;

  private static final int MOST_OF_OWNER = 60;

  private final NumberIndex numbers;
  private final NameIndex names;
  private final Amounts amounts;
  private final Map<String, List<KnownDocument>> openByOwner = new HashMap<>();
  private final Map<String, KnownOwner> owners = new HashMap<>();

  CandidateFinder(Ledger ledger, NumberIndex numbers, NameIndex names, Amounts amounts) {
    this.numbers = numbers;
    this.names = names;
    this.amounts = amounts;
    ledger.owners().forEach(owner -> owners.put(owner.name(), owner));
    for (KnownDocument document : ledger.documents()) {
      if (document.isOpen()) {
        openByOwner.computeIfAbsent(document.owner(), unused -> new ArrayList<>()).add(document);
      }
    }
    openByOwner
        .values()
        .forEach(list -> list.sort(java.util.Comparator.comparing(KnownDocument::date)));
  }

  /** The texts in which a payer may name an invoice. */
  static List<String> texts(BankEntry entry) {
    return List.of(entry.reference(), entry.text(), entry.endToEnd());
  }

  /** Every reading of an entry; none where nothing speaks for any. */
  List<Candidate> of(BankEntry entry) {
    return new Search(entry).run();
  }

  /** One entry's search. */
  private final class Search {
    private final BankEntry entry;
    private final BigDecimal amount;
    private final double frequency;
    private final Map<KnownDocument, NumberHow> named;
    private final Map<String, NameLevel> levels;
    private final Set<KnownDocument> plain = new LinkedHashSet<>();
    private final Map<Set<KnownDocument>, Candidate> found = new LinkedHashMap<>();
    private final Map<String, Candidate> accounts = new LinkedHashMap<>();

    Search(BankEntry entry) {
      this.entry = entry;
      amount = entry.amount();
      frequency = amounts.frequency(amount);
      named = numbers.find(entry.date(), texts(entry));
      levels = names.find(entry);
      named.forEach(
          (document, how) -> {
            if (how.plain()) {
              plain.add(document);
            }
          });
    }

    List<Candidate> run() {
      named.keySet().stream().filter(KnownDocument::isOpen).forEach(this::single);
      neighbours();
      several();
      Set<String> spoken = new LinkedHashSet<>();
      levels.forEach(
          (owner, level) -> {
            if (level.compareTo(NameLevel.ONE_WORD) <= 0) {
              spoken.add(owner);
            }
          });
      spoken.forEach(this::exactOfOwner);
      plain.forEach(document -> spoken.add(document.owner()));
      spoken.forEach(this::sumsOfOwner);
      spoken.forEach(this::account);
      byAmount();
      List<Candidate> all = new ArrayList<>(found.values());
      all.addAll(accounts.values());
      all.removeIf(candidate -> candidate.weight() < Weights.FAINT);
      return all;
    }

    /** A number that exists may still be a slip: whoever owes just this much, one slip away. */
    private void neighbours() {
      for (KnownDocument document : plain) {
        if (document.open().compareTo(amount) != 0) {
          for (KnownDocument near : numbers.oneSlipFrom(document)) {
            if (near.open().compareTo(amount) == 0 && !named.containsKey(near)) {
              add(near.owner(), List.of(near), Optional.of(NumberHow.SLIP), AmountFit.EXACT, 1);
            }
          }
        }
      }
    }

    private void single(KnownDocument document) {
      add(
          document.owner(),
          List.of(document),
          Optional.ofNullable(named.get(document)),
          fit(document),
          1);
    }

    private AmountFit fit(KnownDocument document) {
      int compared = amount.compareTo(document.open());
      return compared == 0 ? AmountFit.EXACT : compared < 0 ? AmountFit.PART : AmountFit.OVER;
    }

    /** A text that names several invoices, whoever owes them. */
    private void several() {
      List<KnownDocument> open = plain.stream().filter(KnownDocument::isOpen).toList();
      BigDecimal sum =
          open.stream().map(KnownDocument::open).reduce(BigDecimal.ZERO, BigDecimal::add);
      if (open.size() > 1 && sum.compareTo(amount) == 0) {
        add(open.get(0).owner(), open, Optional.of(NumberHow.EXACT), AmountFit.SUM, 1);
      }
    }

    private void exactOfOwner(String owner) {
      List<KnownDocument> open = openByOwner.getOrDefault(owner, List.of());
      for (KnownDocument document : open.subList(0, Math.min(open.size(), MOST_OF_OWNER))) {
        if (document.open().compareTo(amount) == 0 && !named.containsKey(document)) {
          add(owner, List.of(document), Optional.empty(), AmountFit.EXACT, 1);
        }
      }
    }

    private void sumsOfOwner(String owner) {
      List<KnownDocument> open = openByOwner.getOrDefault(owner, List.of());
      if (open.size() < 2) {
        return;
      }
      Set<KnownDocument> must = new LinkedHashSet<>(plain);
      must.removeIf(document -> !document.owner().equals(owner) || !document.isOpen());
      Optional<NumberHow> how = must.isEmpty() ? Optional.empty() : Optional.of(NumberHow.EXACT);
      for (List<KnownDocument> set : Sums.of(open, amount, must)) {
        boolean all = set.size() == open.size();
        boolean oldest = set.equals(open.subList(0, set.size()));
        add(owner, set, how, AmountFit.SUM, all || oldest ? 1 : Sums.ways(open.size()));
      }
    }

    /** The owner's money for no invoice in particular, or for all that is owed. */
    private void account(String owner) {
      NameLevel level = level(owner);
      boolean numbered = plain.stream().anyMatch(document -> document.owner().equals(owner));
      boolean settled = plain.stream().anyMatch(d -> d.owner().equals(owner) && !d.isOpen());
      Optional<NumberHow> how = numbered ? Optional.of(NumberHow.EXACT) : Optional.empty();
      KnownOwner known = owners.get(owner);
      // Where invoices make up the balance, these are what is paid.
      boolean balance =
          known != null && known.balance().compareTo(amount) == 0 && !hasFitting(owner);
      AmountFit fit = balance ? AmountFit.BALANCE : AmountFit.NONE;
      boolean another = !plain.isEmpty() && !numbered;
      double weight =
          Weights.PRIOR
              * level.likelihood()
              * (numbered
                  ? Weights.accountNumbered(settled)
                  : Weights.number(Optional.empty(), another))
              * Weights.accountAmount(level, fit, frequency);
      if (level.named() || numbered) {
        int cap = balance && level.named() && !another ? 95 : 75;
        accounts.put(
            owner, new Candidate(owner, List.of(), how, level, fit, weight, cap, Message.NONE));
      }
    }

    private boolean hasFitting(String owner) {
      return found.values().stream()
          .filter(candidate -> candidate.owner().equals(owner))
          .anyMatch(c -> c.fit() == AmountFit.EXACT || c.fit() == AmountFit.SUM);
    }

    private void byAmount() {
      List<KnownDocument> open = amounts.open(amount);
      if (open.size() <= MOST_OF_AMOUNT) {
        for (KnownDocument document : open) {
          if (!found.containsKey(Set.of(document))) {
            add(document.owner(), List.of(document), Optional.empty(), AmountFit.EXACT, 1);
          }
        }
      }
    }

    private NameLevel level(String owner) {
      NameLevel level = levels.get(owner);
      if (level != null) {
        return level;
      }
      return entry.who().isEmpty() ? NameLevel.NONE : NameLevel.UNKNOWN;
    }

    private void add(
        String owner,
        List<KnownDocument> documents,
        Optional<NumberHow> how,
        AmountFit fit,
        int ways) {
      Set<KnownDocument> key = Set.copyOf(documents);
      boolean another = plain.stream().anyMatch(document -> !key.contains(document));
      boolean noneNamed = documents.stream().noneMatch(plain::contains);
      NameLevel level = level(owner);
      double weight =
          Weights.PRIOR
              * Weights.number(how, another && noneNamed)
              * level.likelihood()
              * Weights.amount(fit, frequency, ways);
      Doubt doubt = doubt(owner, how, fit, another, level);
      if (doubt.against().isEmpty() && how.isEmpty() && fit == AmountFit.EXACT) {
        doubt = perhapsPart(documents.get(0));
      }
      int cap = Math.min(doubt.cap(), Weights.cap(how, level, fit));
      boolean guessed = ways > 11 && how.isEmpty();
      Candidate candidate =
          new Candidate(
              owner,
              shares(documents),
              how,
              level,
              fit,
              weight,
              guessed ? Math.min(cap, 85) : cap,
              doubt.against());
      found.merge(key, candidate, (one, other) -> one.weight() >= other.weight() ? one : other);
    }

    private List<Share> shares(List<KnownDocument> documents) {
      if (documents.size() == 1) {
        return List.of(new Share(documents.get(0), amount));
      }
      return documents.stream().map(document -> new Share(document, document.open())).toList();
    }

    private record Doubt(int cap, Message against) {
      static final Doubt NONE = new Doubt(99, Message.NONE);
    }

    /**
     * Without a number, what an older invoice has open may as well be a part of the latest: people
     * pay the letter that came last. Pasted without a number it pays the oldest first anyway.
     */
    private Doubt perhapsPart(KnownDocument document) {
      List<KnownDocument> open = openByOwner.getOrDefault(document.owner(), List.of());
      KnownDocument latest = open.get(open.size() - 1);
      boolean larger = latest.open().compareTo(amount) > 0;
      return larger && latest.date().isAfter(document.date())
          ? new Doubt(85, Message.of("matching.against.maybePart", latest.number()))
          : Doubt.NONE;
    }

    /** What speaks against a reading, and how sure it may be all the same. */
    private Doubt doubt(
        String owner, Optional<NumberHow> how, AmountFit fit, boolean another, NameLevel level) {
      if (another) {
        return new Doubt(85, Message.of("matching.against.otherNumber", Why.numbers(plain)));
      }
      boolean numbered = how.isPresent() && how.get().plain();
      List<String> others =
          level.named()
              ? List.of()
              : levels.entrySet().stream()
                  .filter(e -> e.getValue().compareTo(NameLevel.COVERED) <= 0)
                  .map(Map.Entry::getKey)
                  .filter(name -> !name.equals(owner))
                  .toList();
      if (others.isEmpty()) {
        return Doubt.NONE;
      }
      boolean fits = fit == AmountFit.EXACT || fit == AmountFit.SUM;
      boolean oneOwesTheSame =
          others.stream()
              .flatMap(other -> openByOwner.getOrDefault(other, List.of()).stream())
              .anyMatch(document -> document.open().compareTo(amount) == 0);
      int cap = numbered && fits && !oneOwesTheSame ? 93 : 80;
      Message either =
          others.stream()
              .map(Message::literal)
              .reduce((one, other) -> Message.of("matching.against.or", one, other))
              .orElse(Message.NONE);
      return new Doubt(cap, Message.of("matching.against.otherPayer", either));
    }
  }
}
