package clenchbook.matching;

import clenchbook.book.Names;
import clenchbook.book.Payment;
import clenchbook.matching.bank.AccountMask;
import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.bank.BankStatement;
import clenchbook.matching.evidence.NameIndex;
import clenchbook.matching.evidence.NumberIndex;
import clenchbook.matching.evidence.Segments;
import clenchbook.matching.known.KnownDocument;
import clenchbook.matching.known.KnownOwner;
import clenchbook.matching.known.Ledger;
import clenchbook.texts.Message;
import clenchbook.values.CreditorReference;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Sets bank entries against the ledger: what is there twice or entered already is put aside, all
 * money in is weighed at once, and of the money out only what came back or was paid back is
 * proposed.
 */
public final class Matching {
  private final Ledger ledger;
  private final List<BankStatement> statements;
  private final List<BankEntry> entries;
  private final NumberIndex numbers;
  private final NameIndex names;
  private final AccountMask mask;
  private final Message[] there;
  private final Message[] left;

  private Matching(Ledger ledger, List<BankStatement> statements, List<BankEntry> entries) {
    this.ledger = ledger;
    this.statements = statements;
    this.entries = entries;
    numbers = new NumberIndex(ledger.documents());
    names = new NameIndex(ledger.owners());
    mask = new AccountMask(invoiceNumbers(ledger));
    there = Copies.of(statements, entries);
    left = new Message[entries.size()];
  }

  /**
   * Finds a place for every entry.
   *
   * @param ledger the book and the register
   * @param statements the statements read
   * @param entries their entries
   * @return each entry in exactly one list
   */
  public static MatchResult of(
      Ledger ledger, List<BankStatement> statements, List<BankEntry> entries) {
    return new Matching(ledger, statements, entries).run();
  }

  /**
   * What no text hides: invoices' numbers and references, letters and digits alone.
   *
   * @param ledger the book and the register
   * @return the numbers
   */
  public static Set<String> invoiceNumbers(Ledger ledger) {
    Set<String> bare = new HashSet<>();
    for (KnownDocument document : ledger.documents()) {
      bare.add(Segments.of(document.number()).compact());
      CreditorReference.of(document.number()).map(CreditorReference::compact).ifPresent(bare::add);
    }
    return bare;
  }

  private MatchResult run() {
    for (Payment payment : ledger.payments()) {
      if (!payment.reference().isBlank() && !payment.owner().isBlank()) {
        ownerNamed(payment.owner())
            .ifPresent(o -> names.paidBefore(EntryReference.who(payment.reference()), o));
      }
    }
    putAside();
    entered();
    return sorted(proposals());
  }

  private Optional<String> ownerNamed(String written) {
    return ledger.owners().stream()
        .map(KnownOwner::name)
        .filter(name -> Names.same(name, written))
        .findFirst();
  }

  /** What is no payment whatever it says. */
  private void putAside() {
    for (int at = 0; at < left.length; at++) {
      BankEntry entry = entries.get(at);
      String currency =
          entry.currency().isEmpty()
              ? statements.get(entry.statement()).currency()
              : entry.currency();
      if (entry.standing() == BankEntry.Standing.PENDING) {
        left[at] = Message.of("matching.aside.pending");
      } else if (!currency.isEmpty() && !currency.equalsIgnoreCase(ledger.currency())) {
        left[at] = Message.of("matching.aside.currency", currency, ledger.currency());
      } else if (entry.amount().signum() == 0) {
        left[at] = Message.of("matching.aside.noMoney");
      } else if (ledger.openingDate().filter(entry.date()::isBefore).isPresent()) {
        left[at] = Message.of("matching.aside.beforeOpening");
      } else {
        left[at] = Message.NONE;
      }
    }
  }

  /** What Payments holds; the surest evidence takes its row first. */
  private void entered() {
    AlreadyEntered already = new AlreadyEntered(ledger.payments());
    Map<Integer, AlreadyEntered.Identity> asked = new java.util.LinkedHashMap<>();
    for (int at = 0; at < left.length; at++) {
      if (isFree(at) && already.mayHold(entries.get(at))) {
        asked.put(at, identity(entries.get(at)));
      }
    }
    for (int rank = 0; rank <= AlreadyEntered.LAST_RANK; rank++) {
      for (Map.Entry<Integer, AlreadyEntered.Identity> one : asked.entrySet()) {
        int at = one.getKey();
        if (there[at].isEmpty()) {
          there[at] = already.take(entries.get(at), one.getValue(), rank);
        }
      }
    }
  }

  private boolean isFree(int at) {
    return there[at].isEmpty() && left[at].isEmpty();
  }

  private AlreadyEntered.Identity identity(BankEntry entry) {
    Set<String> invoices = new HashSet<>();
    Set<String> owners = new HashSet<>();
    numbers
        .find(entry.date(), CandidateFinder.texts(entry))
        .forEach(
            (document, how) -> {
              if (how.plain()) {
                invoices.add(Names.key(document.number()));
                owners.add(Names.key(document.owner()));
              }
            });
    names
        .find(entry)
        .forEach(
            (owner, level) -> {
              if (level.named()) {
                owners.add(Names.key(owner));
              }
            });
    return new AlreadyEntered.Identity(invoices, owners, EntryReference.of(entry, mask));
  }

  private Map<Integer, Proposal> proposals() {
    List<Integer> places = new ArrayList<>();
    List<BankEntry> in = new ArrayList<>();
    for (int at = 0; at < left.length; at++) {
      BankEntry entry = entries.get(at);
      if (isFree(at) && entry.moneyIn() && isPayment(at, entry)) {
        places.add(at);
        in.add(entry);
      }
    }
    Amounts amounts = new Amounts(ledger.documents(), in);
    CandidateFinder finder = new CandidateFinder(ledger, numbers, names, amounts);
    Map<Integer, Proposal> proposals = new HashMap<>();
    List<Optional<Proposal>> found = new MoneyIn(in, finder, names, amounts, mask).proposals();
    for (int which = 0; which < places.size(); which++) {
      int at = places.get(which);
      found
          .get(which)
          .ifPresentOrElse(
              proposal -> proposals.put(at, proposal),
              () -> left[at] = Message.of("matching.aside.unknown"));
    }
    moneyOut(proposals);
    return proposals;
  }

  /** Money in that came back to the farrier, or a batch in one piece, pays no invoice. */
  private boolean isPayment(int at, BankEntry entry) {
    if (entry.standing() == BankEntry.Standing.CHARGE) {
      left[at] = Message.of("matching.aside.ofTheBank");
    } else if (entry.standing() == BankEntry.Standing.RETURNED) {
      left[at] = Message.of("matching.aside.ownCameBack");
    } else if (!entry.note().isEmpty()) {
      left[at] = entry.note();
    }
    return left[at].isEmpty();
  }

  private void moneyOut(Map<Integer, Proposal> proposals) {
    List<Proposal> in = proposals.keySet().stream().sorted().map(proposals::get).toList();
    MoneyOut out = new MoneyOut(ledger, numbers, names, in, mask);
    for (int at = 0; at < left.length; at++) {
      BankEntry entry = entries.get(at);
      if (isFree(at) && entry.amount().signum() < 0) {
        int place = at;
        out.proposal(entry)
            .ifPresentOrElse(
                proposal -> proposals.put(place, proposal),
                () -> left[place] = MoneyOut.leftAlone(entry));
      }
    }
  }

  private MatchResult sorted(Map<Integer, Proposal> proposals) {
    List<Proposal> toAdd = new ArrayList<>();
    List<LeftEntry> unmatched = new ArrayList<>();
    List<LeftEntry> alreadyThere = new ArrayList<>();
    for (int at = 0; at < left.length; at++) {
      BankEntry entry = entries.get(at);
      Proposal proposal = proposals.get(at);
      if (!there[at].isEmpty()) {
        alreadyThere.add(new LeftEntry(entry, there[at]));
      } else if (proposal != null) {
        toAdd.add(proposal);
      } else {
        unmatched.add(new LeftEntry(entry, left[at]));
      }
    }
    return Tied.checked(entries, new MatchResult(toAdd, unmatched, alreadyThere));
  }
}
