package clenchbook.life;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.billing.documents.VisitKey;
import clenchbook.life.LifeRow.Group;
import clenchbook.life.LiveVisits.Part;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A plain model of what each owner owes. Whatever a document says is compared, to the cent, with
 * what rows ask at the moment it is laid down; in the end each row has to be billed whole, once, as
 * one of those said it, and nothing else may be.
 */
final class LifeModel {
  private final LifeBounds bounds = new LifeBounds();
  private final Map<String, List<Part>> laid = new HashMap<>();
  private final Map<String, Integer> wholes = new HashMap<>();
  private Map<Ask, Integer> asks = Map.of();
  private Map<Own, Integer> amounts = Map.of();
  private LifeTerms terms = LifeTerms.first();

  /** What rows ask of one owner. */
  private record Ask(Own own, String owner, int cents) {}

  /** What a row says, whatever it is worth. */
  private record Own(Group group, int cents) {}

  /** Remembers what the book asks for now. */
  void meets(LifeBook book) {
    bounds.meets(book);
    terms = book.terms();
    asks = new HashMap<>();
    amounts = new HashMap<>();
    for (LifeRow row : book.rows()) {
      if (row.counts()) {
        Own own = new Own(row.group(terms), row.cents);
        amounts.put(own, row.amount(terms));
        row.parts(terms)
            .forEach((owner, cents) -> asks.merge(new Ask(own, owner, cents), 1, Integer::sum));
      }
    }
  }

  /**
   * What is wrong with the documents after a command.
   *
   * @param run the month whose drafts were laid down; empty for none
   */
  Optional<String> faults(List<BilledDocument> documents, Optional<YearMonth> run) {
    return laidDown(documents, run).or(() -> billedTwice(documents));
  }

  /** What a new or changed invoice says has to be what rows ask now, each row once. */
  private Optional<String> laidDown(List<BilledDocument> documents, Optional<YearMonth> run) {
    Map<Ask, Integer> left = new HashMap<>(asks);
    for (BilledDocument document : documents) {
      boolean draft = document.state() == DocumentState.DRAFT;
      boolean anew = draft && run.filter(document.month()::equals).isPresent();
      List<Part> parts = LiveVisits.parts(document);
      boolean same = parts.equals(laid.get(document.number()));
      if (document.counts() && document.invoice() && (anew || !same)) {
        for (Part part : parts) {
          Own own = new Own(part.group(), part.own());
          if (left.merge(new Ask(own, part.owner(), part.cents()), -1, Integer::sum) < 0) {
            return Optional.of("no row asks now for " + part);
          }
          wholes.put(part.number() + part.visit(), amounts.getOrDefault(own, 0));
        }
      }
      laid.put(document.number(), parts);
    }
    return Optional.empty();
  }

  /**
   * A visit billed twice to one payer, or more visits than there can be.
   *
   * @param documents as they are, or as they would be after another command
   */
  Optional<String> billedTwice(List<BilledDocument> documents) {
    List<String> faults = new ArrayList<>();
    Map<VisitKey, List<Part>> live = LiveVisits.of(documents, faults);
    for (List<Part> parts : live.values()) {
      Set<String> payers = new HashSet<>();
      for (Part part : parts) {
        if (!payers.add(terms.account(part.owner()))) {
          faults.add(part.owner() + " is billed twice: " + parts);
        }
      }
    }
    return faults.stream().sorted().findFirst().or(() -> bounds.tooMany(live));
  }

  /** Where what is out is not what the rows ask for, once everything has been run and sent. */
  Optional<String> unsettled(LifeBook book, List<BilledDocument> documents) {
    List<String> faults = new ArrayList<>();
    List<List<Part>> visits = new ArrayList<>(LiveVisits.of(documents, faults).values());
    visits.forEach(parts -> whole(parts).ifPresent(faults::add));
    List<LifeRow> rows = book.rows().stream().filter(LifeRow::counts).toList();
    if (faults.isEmpty() && !paired(rows, visits)) {
      faults.add(
          "in the end these are billed "
              + visits
              + ", and the rows say "
              + rows.stream().map(row -> row.line(terms)).toList());
    }
    return faults.stream().sorted().findFirst();
  }

  /** The parts of a visit have to add to all that its row asked when they were laid down. */
  private Optional<String> whole(List<Part> parts) {
    int sum = parts.stream().mapToInt(Part::cents).sum();
    return parts.stream()
        .filter(part -> sum != wholes.getOrDefault(part.number() + part.visit(), -1))
        .map(part -> "in the end not all of a visit is billed: " + parts)
        .findFirst();
  }

  /** Whether each row has a visit of its own, and no visit is left over. */
  private boolean paired(List<LifeRow> rows, List<List<Part>> visits) {
    if (rows.isEmpty()) {
      return visits.isEmpty();
    }
    for (List<Part> visit : visits) {
      if (says(visit, rows.get(0))) {
        List<List<Part>> others = new ArrayList<>(visits);
        others.remove(visit);
        if (paired(rows.subList(1, rows.size()), others)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether the row says what is billed: the same words, or another way to the same amount. */
  private boolean says(List<Part> visit, LifeRow row) {
    int sum = visit.stream().mapToInt(Part::cents).sum();
    return visit.get(0).group().equals(row.group(terms))
        && (visit.get(0).own() == row.cents || sum == row.amount(terms));
  }
}
