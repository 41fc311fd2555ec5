package clenchbook.matching;

import clenchbook.matching.known.KnownDocument;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Weighs all readings of all entries against each other at once: an entry has one reading, and an
 * invoice is settled by one entry. How likely each reading is follows by passing messages between
 * entries and invoices until they settle (the sum-product algorithm on the factor graph of a
 * matching: Kschischang, Frey and Loeliger, "Factor graphs and the sum-product algorithm", IEEE
 * Transactions on Information Theory 47 (2001), section II). It is exact where no ring of entries
 * and invoices exists, and even-handed where one does: two owners with the same amount and two
 * nameless entries leave all four readings at one half.
 */
final class Assignment {
  private static final int MOST_ROUNDS = 60;
  private static final double SETTLED = 1e-7;

  private final List<List<Candidate>> readings;
  private final Map<KnownDocument, Integer> places = new HashMap<>();
  private final List<List<Edge>> byDocument = new ArrayList<>();
  private final List<List<Edge>> byEntry = new ArrayList<>();
  private final double[][] likely;

  /** One entry and one invoice that it may settle. */
  private static final class Edge {
    private final int document;

    /** The odds that the entry wants the invoice, as far as its other readings tell. */
    private double wanted;

    /** The chance that no other entry settles the invoice. */
    private double free = 1;

    Edge(int document) {
      this.document = document;
    }
  }

  private Assignment(List<List<Candidate>> readings) {
    this.readings = readings;
    this.likely = new double[readings.size()][];
    for (int entry = 0; entry < readings.size(); entry++) {
      byEntry.add(edges(entry));
    }
  }

  /**
   * How likely each reading is.
   *
   * @param readings the readings of each entry
   * @return for each entry and reading a number from 0 to 1; what is missing to 1 is other money
   */
  static double[][] of(List<List<Candidate>> readings) {
    Assignment assignment = new Assignment(readings);
    assignment.settle();
    return assignment.likely;
  }

  private List<Edge> edges(int entry) {
    Map<Integer, Edge> edges = new java.util.LinkedHashMap<>();
    for (Candidate candidate : readings.get(entry)) {
      if (candidate.settles()) {
        for (Share share : candidate.shares()) {
          int document = place(share.document());
          edges.computeIfAbsent(
              document,
              unused -> {
                Edge edge = new Edge(document);
                byDocument.get(document).add(edge);
                return edge;
              });
        }
      }
    }
    return List.copyOf(edges.values());
  }

  private int place(KnownDocument document) {
    return places.computeIfAbsent(
        document,
        unused -> {
          byDocument.add(new ArrayList<>(2));
          return byDocument.size() - 1;
        });
  }

  private void settle() {
    for (int round = 0; round < MOST_ROUNDS; round++) {
      for (int entry = 0; entry < readings.size(); entry++) {
        want(entry);
      }
      double moved = 0;
      for (List<Edge> edges : byDocument) {
        moved = Math.max(moved, release(edges));
      }
      if (moved < SETTLED) {
        break;
      }
    }
    for (int entry = 0; entry < readings.size(); entry++) {
      likely[entry] = marginal(entry);
    }
  }

  /** The weight of a reading with the chances that its invoices are free. */
  private double weight(int entry, Candidate candidate) {
    double weight = candidate.weight();
    if (candidate.settles()) {
      for (Share share : candidate.shares()) {
        weight *= edge(entry, share).free;
      }
    }
    return weight;
  }

  private Edge edge(int entry, Share share) {
    int document = place(share.document());
    for (Edge edge : byEntry.get(entry)) {
      if (edge.document == document) {
        return edge;
      }
    }
    throw new IllegalStateException(
        "no edge of entry " + entry + " to " + share.document().number());
  }

  private void want(int entry) {
    List<Candidate> candidates = readings.get(entry);
    double all = 1;
    double[] weights = new double[candidates.size()];
    for (int at = 0; at < weights.length; at++) {
      weights[at] = weight(entry, candidates.get(at));
      all += weights[at];
    }
    for (Edge edge : byEntry.get(entry)) {
      double with = 0;
      for (int at = 0; at < weights.length; at++) {
        with += uses(candidates.get(at), edge) ? weights[at] : 0;
      }
      double without = Math.max(all - with, 1);
      edge.wanted = edge.free > 0 ? with / edge.free / without : 0;
    }
  }

  private boolean uses(Candidate candidate, Edge edge) {
    if (!candidate.settles()) {
      return false;
    }
    for (Share share : candidate.shares()) {
      if (place(share.document()) == edge.document) {
        return true;
      }
    }
    return false;
  }

  /** Tells each entry how free an invoice is of the others; gives the largest change. */
  private static double release(List<Edge> edges) {
    double all = 0;
    for (Edge edge : edges) {
      all += edge.wanted;
    }
    double moved = 0;
    for (Edge edge : edges) {
      double free = 1 / (1 + Math.max(0, all - edge.wanted));
      // Half of the old value keeps rings from swinging to and fro.
      double next = (edge.free + free) / 2;
      moved = Math.max(moved, Math.abs(next - edge.free));
      edge.free = next;
    }
    return moved;
  }

  private double[] marginal(int entry) {
    List<Candidate> candidates = readings.get(entry);
    double[] shares = new double[candidates.size()];
    double all = 1;
    for (int at = 0; at < shares.length; at++) {
      shares[at] = weight(entry, candidates.get(at));
      all += shares[at];
    }
    for (int at = 0; at < shares.length; at++) {
      shares[at] /= all;
    }
    return shares;
  }
}
