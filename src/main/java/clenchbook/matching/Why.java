package clenchbook.matching;

import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.evidence.NameLevel;
import clenchbook.matching.known.KnownDocument;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** The sentences that say why. */
final class Why {
  private static final int MOST_NAMED = 5;

  private Why() {}

  /** The numbers of documents, in order. */
  static String numbers(Collection<KnownDocument> documents) {
    return documents.stream().map(KnownDocument::number).sorted().collect(Collectors.joining(", "));
  }

  /** A reading that is proposed. */
  static String proposed(Candidate candidate, BankEntry entry) {
    return evidence(candidate, entry) + against(candidate);
  }

  private static String against(Candidate candidate) {
    return candidate.against().isEmpty() ? "" : "; but " + candidate.against();
  }

  private static String evidence(Candidate candidate, BankEntry entry) {
    StringBuilder why = new StringBuilder();
    String numbers = numbers(candidate.shares().stream().map(Share::document).toList());
    candidate
        .number()
        .filter(how -> !candidate.shares().isEmpty())
        .ifPresent(how -> add(why, "the text bears " + how.words() + " of " + numbers));
    if (candidate.name().named() || candidate.name() == NameLevel.ONE_WORD) {
      add(why, candidate.name().words() + " (" + candidate.owner() + ")");
    } else if (candidate.name() == NameLevel.UNKNOWN && candidate.number().isPresent()) {
      add(why, "the payer's name is not known");
    }
    add(why, fit(candidate, entry, numbers));
    return why.toString();
  }

  private static void add(StringBuilder why, String part) {
    why.append(why.isEmpty() || part.isEmpty() ? "" : "; ").append(part);
  }

  private static String fit(Candidate candidate, BankEntry entry, String numbers) {
    String amount = entry.amount().toPlainString();
    return switch (candidate.fit()) {
      case EXACT -> amount + " is what " + numbers + " has open";
      case SUM -> amount + " is the sum of what " + numbers + " have open";
      case BALANCE -> amount + " is all that " + candidate.owner() + " owes";
      case PART ->
          "a part of "
              + numbers
              + ", which has "
              + candidate.shares().get(0).document().open().toPlainString()
              + " open";
      case OVER ->
          "more than "
              + numbers
              + " has open ("
              + candidate.shares().get(0).document().open().toPlainString()
              + "); the rest is credit";
      case NONE -> "no open invoice of " + candidate.owner() + " fits " + amount;
    };
  }

  /** Readings of which none is sure enough, with how likely each is. */
  static String unsure(List<Candidate> candidates, List<Integer> sure, BankEntry entry) {
    StringBuilder why = new StringBuilder("candidates: ");
    int named = Math.min(MOST_NAMED, candidates.size());
    for (int at = 0; at < named; at++) {
      Candidate candidate = candidates.get(at);
      String what =
          candidate.shares().isEmpty()
              ? candidate.owner() + ", no invoice in particular"
              : numbers(candidate.shares().stream().map(Share::document).toList())
                  + " of "
                  + candidate.owner();
      why.append(at == 0 ? "" : " | ")
          .append(what)
          .append(" (")
          .append(sure.get(at))
          .append(" %: ")
          .append(proposed(candidate, entry))
          .append(')');
    }
    int more = candidates.size() - named;
    return why.append(more > 0 ? " | and " + more + " more" : "").toString();
  }

  /** Many invoices of one amount and nothing else. */
  static String many(List<KnownDocument> open, BankEntry entry) {
    String first =
        open.stream()
            .limit(MOST_NAMED)
            .map(document -> document.number() + " of " + document.owner())
            .collect(Collectors.joining(" | "));
    return "candidates: "
        + first
        + " | and "
        + (open.size() - Math.min(MOST_NAMED, open.size()))
        + " more; all have "
        + entry.amount().toPlainString()
        + " open, and nothing else speaks for one of them";
  }
}
