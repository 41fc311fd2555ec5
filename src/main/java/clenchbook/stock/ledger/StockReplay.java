package clenchbook.stock.ledger;

import clenchbook.jobs.StockKey;
import clenchbook.stock.ledger.ShelfMonth.Worth;
import clenchbook.stock.ledger.StockMovement.Bought;
import clenchbook.stock.ledger.StockMovement.CountedUp;
import clenchbook.stock.ledger.StockMovement.Used;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Plays a book's movements through both ledgers and reads one month off them.
 *
 * <p>Mutable; belongs to one call of {@link #month}.
 */
public final class StockReplay {

  private final MinorUnit unit;
  private final LocalDate first;
  private final StockLedger ledger = new StockLedger();
  private final FifoLedger fifo = new FifoLedger();
  private final Map<StockKey, Tally> tallies = new TreeMap<>();
  private boolean open;

  private StockReplay(MinorUnit unit, LocalDate first) {
    this.unit = unit;
    this.first = first;
  }

  /**
   * Reads a month.
   *
   * @param movements up to the month's end, in order
   * @param shelves shelves to list even if nothing moved them
   * @param month the month
   * @param unit the currency's minor unit
   * @return one line a shelf, in order of item and size
   */
  public static List<ShelfMonth> month(
      List<StockMovement> movements,
      Collection<StockKey> shelves,
      YearMonth month,
      MinorUnit unit) {
    StockReplay replay = new StockReplay(unit, month.atDay(1));
    TreeSet<StockKey> all = new TreeSet<>(shelves);
    movements.forEach(movement -> all.add(movement.shelf()));
    all.forEach(shelf -> replay.tallies.put(shelf, replay.new Tally(shelf)));
    movements.forEach(replay::play);
    replay.openMonth();
    return replay.tallies.values().stream().map(Tally::line).toList();
  }

  private void play(StockMovement movement) {
    if (!movement.date().isBefore(first)) {
      openMonth();
    }
    Tally tally = tallies.computeIfAbsent(movement.shelf(), Tally::new);
    if (movement instanceof Bought bought) {
      tally.bought(bought);
    } else if (movement instanceof Used used) {
      tally.used(used);
    } else if (movement instanceof CountedUp counted) {
      tally.counted(counted);
    }
  }

  private void openMonth() {
    if (!open) {
      open = true;
      tallies.values().forEach(Tally::open);
    }
  }

  /** What one shelf's month adds up to. */
  private final class Tally {
    private final StockKey shelf;
    private BigDecimal opening = BigDecimal.ZERO;
    private BigDecimal openingWorth = BigDecimal.ZERO;
    private BigDecimal openingFifo = BigDecimal.ZERO;
    private BigDecimal bought = BigDecimal.ZERO;
    private BigDecimal cost = BigDecimal.ZERO;
    private BigDecimal used = BigDecimal.ZERO;
    private BigDecimal beyond = BigDecimal.ZERO;
    private BigDecimal takenOn = BigDecimal.ZERO;
    private BigDecimal difference = BigDecimal.ZERO;
    private BigDecimal fifoDifference = BigDecimal.ZERO;
    private Optional<LocalDate> countedOn = Optional.empty();
    private Optional<BigDecimal> counted = Optional.empty();
    private BigDecimal expected = BigDecimal.ZERO;

    Tally(StockKey shelf) {
      this.shelf = shelf;
    }

    void open() {
      opening = ledger.onHand(shelf);
      openingWorth = ledger.value(shelf);
      openingFifo = fifo.value(shelf);
    }

    void bought(Bought movement) {
      BigDecimal pieces = movement.pieces();
      if (pieces.signum() > 0) {
        ledger.purchase(shelf, pieces, movement.cost());
        fifo.purchase(shelf, pieces, movement.cost());
      } else {
        ledger.issue(shelf, pieces.negate(), BigDecimal.ZERO);
        fifo.use(shelf, pieces.negate());
      }
      if (open) {
        bought = bought.add(pieces);
        cost = cost.add(movement.cost());
      }
    }

    void used(Used movement) {
      StockLedger.Issue issue = ledger.issue(shelf, movement.pieces(), movement.listCost());
      fifo.use(shelf, movement.pieces());
      if (open) {
        used = used.add(movement.pieces());
        beyond = beyond.add(issue.beyond());
      }
    }

    void counted(CountedUp movement) {
      boolean unseen = ledger.average(shelf).isEmpty();
      BigDecimal before = ledger.onHand(shelf);
      BigDecimal more = ledger.count(shelf, movement.pieces(), movement.listCost());
      BigDecimal worth = more.multiply(ledger.average(shelf).orElseThrow());
      BigDecimal fifoWorth = fifo.count(shelf, movement.pieces(), movement.listCost());
      if (open) {
        countedOn = Optional.of(movement.date());
        counted = Optional.of(movement.pieces());
        expected = before;
        takenOn = unseen ? takenOn.add(worth) : takenOn;
        difference = unseen ? difference : difference.add(worth);
        fifoDifference = unseen ? fifoDifference : fifoDifference.add(fifoWorth);
      }
    }

    ShelfMonth line() {
      BigDecimal closing = ledger.onHand(shelf);
      return new ShelfMonth(
          shelf,
          opening,
          bought,
          used,
          beyond,
          countedOn,
          counted,
          counted.isPresent() ? expected : closing,
          closing,
          worth(openingWorth, difference, ledger.value(shelf)),
          worth(openingFifo, fifoDifference, fifo.value(shelf)),
          ledger.average(shelf).isPresent());
    }

    private Worth worth(BigDecimal start, BigDecimal byCount, BigDecimal end) {
      return new Worth(
          rounded(start), rounded(cost), rounded(takenOn), rounded(byCount), rounded(end));
    }

    private BigDecimal rounded(BigDecimal amount) {
      return unit.round(StockLedger.settled(amount));
    }
  }
}
