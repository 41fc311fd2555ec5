package clenchbook.stock.cutting;

/** The work a search may still do, counted so that it ends alike on every machine. */
final class Work {

  private long left;

  Work(long allowed) {
    left = allowed;
  }

  void charge(long steps) {
    left -= steps;
  }

  boolean spent() {
    return left < 0;
  }
}
