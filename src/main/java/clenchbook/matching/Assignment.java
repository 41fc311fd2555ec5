package clenchbook.matching;

import clenchbook.matching.known.KnownDocument;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

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
  private final Map<KnownDocument, List<Edge>> byDocument = new LinkedHashMap<>();
  private final List<List<Edge>> byEntry = new ArrayList<>();

  /** For each entry and reading the edges to what it settles. */
  private final List<List<List<Edge>>> byReading = new ArrayList<>();

  private final double[][] likely;

  /** One entry and one invoice that it may settle. */
  private static final class Edge {
    /** The odds that the entry wants the invoice, as far as its other readings tell. */
    private double wanted;

    /** The chance that no other entry settles the invoice. */
    private double free = 1;

    /** Whether several entries may settle the invoice. */
    private boolean contested;
  }

  private Assignment(List<List<Candidate>> readings) {
    this.readings = readings;
    this.likely = new double[readings.size()][];
    for (int entry = 0; entry < readings.size(); entry++) {
      edges(entry);
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

  private void edges(int entry) {
    Map<KnownDocument, Edge> edges = new LinkedHashMap<>();
    List<List<Edge>> each = new ArrayList<>(readings.get(entry).size());
    for (Candidate candidate : readings.get(entry)) {
      List<Edge> settled = new ArrayList<>(1);
      if (candidate.settles()) {
        for (Share share : candidate.shares()) {
          settled.add(edges.computeIfAbsent(share.document(), this::edge));
        }
      }
      each.add(settled);
    }
    byReading.add(each);
    byEntry.add(List.copyOf(edges.values()));
  }

  private Edge edge(KnownDocument document) {
    Edge edge = new Edge();
    byDocument.computeIfAbsent(document, unused -> new ArrayList<>(2)).add(edge);
    return edge;
  }

  private void settle() {
    List<List<Edge>> contested =
        byDocument.values().stream().filter(edges -> edges.size() > 1).toList();
    contested.forEach(edges -> edges.forEach(edge -> edge.contested = true));
    int[] asked = IntStream.range(0, readings.size()).filter(this::isContested).toArray();
    for (int round = 0; round < MOST_ROUNDS; round++) {
      for (int entry : asked) {
        want(entry);
      }
      double moved = 0;
      for (List<Edge> edges : contested) {
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

  /** Whether other entries may settle what this one may; where none may, nothing moves. */
  private boolean isContested(int entry) {
    return byEntry.get(entry).stream().anyMatch(edge -> edge.contested);
  }

  /** The weight of a reading with the chances that its invoices are free. */
  private double weight(int entry, int reading) {
    double weight = readings.get(entry).get(reading).weight();
    for (Edge edge : byReading.get(entry).get(reading)) {
      weight *= edge.free;
    }
    return weight;
  }

  private void want(int entry) {
    List<List<Edge>> settled = byReading.get(entry);
    double all = 1;
    double[] weights = new double[settled.size()];
    for (int at = 0; at < weights.length; at++) {
      weights[at] = weight(entry, at);
      all += weights[at];
    }
    for (Edge edge : byEntry.get(entry)) {
      double with = 0;
      for (int at = 0; at < weights.length; at++) {
        with += settled.get(at).contains(edge) ? weights[at] : 0;
      }
      double without = Math.max(all - with, 1);
      edge.wanted = edge.free > 0 ? with / edge.free / without : 0;
    }
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
    double[] shares = new double[readings.get(entry).size()];
    double all = 1;
    for (int at = 0; at < shares.length; at++) {
      shares[at] = weight(entry, at);
      all += shares[at];
    }
    for (int at = 0; at < shares.length; at++) {
      shares[at] /= all;
    }
    return shares;
  }
}
