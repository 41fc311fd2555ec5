package clenchbook.matching;

import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.evidence.NameLevel;
import clenchbook.matching.known.KnownDocument;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** The sentences that say why. */
final class Why {
  private static final int MOST_NAMED = 5;
  private static final String BETWEEN = " | ";

  private Why() {}

  /** The numbers of documents, in order. */
  static String numbers(Collection<KnownDocument> documents) {
    return documents.stream().map(KnownDocument::number).sorted().collect(Collectors.joining(", "));
  }

  /** A reading that is proposed. */
  static Message proposed(Candidate candidate, BankEntry entry) {
    Message evidence = Message.joined("; ", evidence(candidate, entry));
    return candidate.against().isEmpty()
        ? evidence
        : Message.of("matching.but", evidence, candidate.against());
  }

  private static List<Message> evidence(Candidate candidate, BankEntry entry) {
    List<Message> evidence = new ArrayList<>(3);
    String numbers = numbers(candidate.shares().stream().map(Share::document).toList());
    candidate
        .number()
        .filter(how -> !candidate.shares().isEmpty())
        .ifPresent(how -> evidence.add(how.of(numbers)));
    boolean unknown = candidate.name() == NameLevel.UNKNOWN && candidate.number().isPresent();
    if (unknown || candidate.name().named() || candidate.name() == NameLevel.ONE_WORD) {
      evidence.add(candidate.name().of(candidate.owner()));
    }
    evidence.add(fit(candidate, entry, numbers));
    return evidence;
  }

  private static Message fit(Candidate candidate, BankEntry entry, String numbers) {
    String amount = entry.amount().toPlainString();
    return switch (candidate.fit()) {
      case EXACT -> Message.of("matching.amount.exact", amount, numbers);
      case SUM -> Message.of("matching.amount.sum", amount, numbers);
      case BALANCE -> Message.of("matching.amount.balance", amount, candidate.owner());
      case PART -> Message.of("matching.amount.part", numbers, open(candidate));
      case OVER -> Message.of("matching.amount.over", numbers, open(candidate));
      case NONE -> Message.of("matching.amount.none", candidate.owner(), amount);
    };
  }

  private static String open(Candidate candidate) {
    return candidate.shares().get(0).document().open().toPlainString();
  }

  /** Readings of which none is sure enough, with how likely each is. */
  static Message unsure(List<Candidate> candidates, List<Integer> sure, BankEntry entry) {
    List<Message> named = new ArrayList<>(MOST_NAMED + 1);
    for (int at = 0; at < Math.min(MOST_NAMED, candidates.size()); at++) {
      named.add(named(candidates.get(at), sure.get(at), entry));
    }
    int more = candidates.size() - named.size();
    if (more > 0) {
      named.add(Message.of("matching.candidates.more", more));
    }
    return Message.of("matching.candidates", Message.joined(BETWEEN, named));
  }

  private static Message named(Candidate candidate, int sure, BankEntry entry) {
    Message why = proposed(candidate, entry);
    if (candidate.shares().isEmpty()) {
      return Message.of("matching.candidates.account", candidate.owner(), sure, why);
    }
    String numbers = numbers(candidate.shares().stream().map(Share::document).toList());
    return Message.of("matching.candidates.invoice", numbers, candidate.owner(), sure, why);
  }

  /** Many invoices of one amount and nothing else. */
  static Message many(List<KnownDocument> open, BankEntry entry) {
    List<Message> named = new ArrayList<>(MOST_NAMED + 1);
    open.stream()
        .limit(MOST_NAMED)
        .map(each -> Message.of("matching.candidates.one", each.number(), each.owner()))
        .forEach(named::add);
    named.add(Message.of("matching.candidates.more", open.size() - named.size()));
    return Message.of(
        "matching.candidates.alike",
        Message.joined(BETWEEN, named),
        entry.amount().toPlainString());
  }
}
