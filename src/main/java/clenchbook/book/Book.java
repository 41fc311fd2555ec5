package clenchbook.book;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Everything read from one workbook.
 *
 * @param sheets the sheets' own names, in workbook order
 * @param settings the settings in force
 * @param visits in sheet and row order
 * @param work in row order
 * @param materials in row order
 * @param owners in row order
 * @param horses in row order
 * @param places in row order
 * @param trips in row order
 * @param purchases in row order
 * @param payments in row order
 * @param assets in row order
 * @param counts in row order
 * @param taxRates in row order
 * @param strain in row order
 * @param controls one per sheet read, in workbook order
 * @param present which kinds of sheet exist; unknown names warn only where their sheet does
 */
public record Book(
    List<String> sheets,
    Settings settings,
    List<Visit> visits,
    List<WorkItem> work,
    List<Material> materials,
    List<Owner> owners,
    List<HorseRow> horses,
    List<Place> places,
    List<Trip> trips,
    List<Purchase> purchases,
    List<Payment> payments,
    List<Asset> assets,
    List<StockCount> counts,
    List<TaxRate> taxRates,
    List<StrainRating> strain,
    List<SheetControl> controls,
    Set<SheetKind> present) {
  /** Copies its lists. */
  public Book {
    sheets = List.copyOf(sheets);
    visits = List.copyOf(visits);
    work = List.copyOf(work);
    materials = List.copyOf(materials);
    owners = List.copyOf(owners);
    horses = List.copyOf(horses);
    places = List.copyOf(places);
    trips = List.copyOf(trips);
    purchases = List.copyOf(purchases);
    payments = List.copyOf(payments);
    assets = List.copyOf(assets);
    counts = List.copyOf(counts);
    taxRates = List.copyOf(taxRates);
    strain = List.copyOf(strain);
    controls = List.copyOf(controls);
    present = Set.copyOf(present);
  }

  /**
   * The sheets that hold visits.
   *
   * @return the names of sheets that any visit came from, and of every sheet read as Visits
   */
  public Set<String> visitSheets() {
    Set<String> names = new TreeSet<>();
    visits.forEach(visit -> names.add(visit.source().sheet()));
    Set<String> others = new TreeSet<>(names);
    controls.stream()
        .map(SheetControl::sheet)
        .filter(sheet -> sheet.equalsIgnoreCase("visits"))
        .forEach(others::add);
    return others;
  }

  /**
   * The same book with other rows that name owners.
   *
   * @param visitRows for Visits
   * @param horseRows for Horses
   * @param paymentRows for Payments
   * @return the book
   */
  public Book with(List<Visit> visitRows, List<HorseRow> horseRows, List<Payment> paymentRows) {
    return new Book(
        sheets,
        settings,
        visitRows,
        work,
        materials,
        owners,
        horseRows,
        places,
        trips,
        purchases,
        paymentRows,
        assets,
        counts,
        taxRates,
        strain,
        controls,
        present);
  }
}
