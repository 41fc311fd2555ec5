package clenchbook.jobs;

import clenchbook.book.Asset;
import clenchbook.book.Book;
import clenchbook.book.HorseRow;
import clenchbook.book.Material;
import clenchbook.book.MaterialKind;
import clenchbook.book.Owner;
import clenchbook.book.Payment;
import clenchbook.book.PaymentKind;
import clenchbook.book.Place;
import clenchbook.book.Purchase;
import clenchbook.book.Reason;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.book.Shaping;
import clenchbook.book.SheetKind;
import clenchbook.book.StockCount;
import clenchbook.book.StrainRating;
import clenchbook.book.Task;
import clenchbook.book.TaxKind;
import clenchbook.book.TaxRate;
import clenchbook.book.Trip;
import clenchbook.book.Unit;
import clenchbook.book.Visit;
import clenchbook.book.WorkItem;
import clenchbook.book.einvoice.EInvoiceForm;
import clenchbook.book.einvoice.EInvoiceWish;
import clenchbook.problem.CellRef;
import clenchbook.reading.texts.TextFiles;
import clenchbook.texts.TextSource;
import clenchbook.values.Section;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A book written down in a test, row by row, as {@code "Date: 2026-10-05, Horse: Bess"}; a list
 * inside a cell is parted by semicolons.
 */
public final class WrittenBook {

  private final List<Visit> visits = new ArrayList<>();
  private final List<WorkItem> work = new ArrayList<>();
  private final List<Material> materials = new ArrayList<>();
  private final List<HorseRow> horses = new ArrayList<>();
  private final List<Place> places = new ArrayList<>();
  private final List<Purchase> purchases = new ArrayList<>();
  private final List<StockCount> counts = new ArrayList<>();
  private final List<Trip> trips = new ArrayList<>();
  private final List<StrainRating> strain = new ArrayList<>();
  private final List<Owner> owners = new ArrayList<>();
  private final List<Payment> payments = new ArrayList<>();
  private final List<Asset> assets = new ArrayList<>();
  private final List<TaxRate> taxRates = new ArrayList<>();
  private final Map<Setting, String> settings = new EnumMap<>(Setting.class);
  private TextSource texts = TextFiles.OWN;

  /** Adds a setting. */
  public WrittenBook setting(Setting setting, String value) {
    settings.put(setting, value);
    return this;
  }

  /** Adds a row of Visits; Charge is 50 where not said, and blank where it says {@code list}. */
  public WrittenBook visit(String text) {
    WrittenRow row = new WrittenRow("Visits", 0, visits.size(), text);
    visits.add(
        new Visit(
            row.source(),
            row.day("Date").orElseThrow(),
            row.text("Place"),
            row.text("Owner"),
            row.text("Horse"),
            row.text("Work"),
            row.list("Shoe"),
            row.list("Size"),
            row.whole("Shoes"),
            row.whole("New shoes"),
            row.choice(Shaping.class, "Shaping"),
            row.text("Nail"),
            row.whole("Nails"),
            row.list("Extras"),
            row.number("Trim min"),
            row.number("Shape min"),
            row.number("Nail min"),
            row.number("Grind min"),
            row.number("Forge min"),
            row.number("Total min"),
            row.number("Helper min"),
            row.text("Charge").equals("list")
                ? Optional.empty()
                : row.number("Charge").or(() -> Optional.of(new BigDecimal("50"))),
            row.text("Paid").equals("yes") ? Optional.empty() : row.number("Paid"),
            row.text("Paid").equals("yes"),
            row.text("How"),
            row.choice(Reason.class, "Reason").orElse(Reason.ROUTINE),
            row.whole("Lost"),
            row.text("Vet"),
            row.text("Notes")));
    return this;
  }

  /** Adds a row of Work. */
  public WrittenBook work(String text) {
    WrittenRow row = new WrittenRow("Work", 1, work.size(), text);
    work.add(
        new WorkItem(
            row.source(),
            row.text("Work"),
            row.text("Kind").equals("fee"),
            row.number("Price"),
            row.text("Tax"),
            row.list("Shoe"),
            row.whole("Shoes"),
            row.choice(Shaping.class, "Shaping"),
            row.text("Nail"),
            row.number("Nails per shoe"),
            row.number("Trim min"),
            row.number("Shape min"),
            row.number("Nail min"),
            row.number("Grind min"),
            row.number("Forge min"),
            row.number("Taxed part"),
            "",
            row.day("From")));
    return this;
  }

  /** Adds a row of Materials. */
  public WrittenBook material(String text) {
    WrittenRow row = new WrittenRow("Materials", 2, materials.size(), text);
    materials.add(
        new Material(
            row.source(),
            row.text("Item"),
            row.choice(MaterialKind.class, "Kind").orElse(MaterialKind.KEG),
            row.text("Size"),
            row.choice(Unit.class, "Unit").orElse(Unit.PIECE),
            row.number("Unit cost"),
            row.number("Per pack"),
            row.number("Pack cost"),
            row.number("Price"),
            Section.parse(row.text("Section")),
            row.number("Length mm"),
            row.number("Cut mm"),
            row.text("Bar"),
            row.number("Bar length mm"),
            row.number("Making min"),
            row.number("Making forge min"),
            row.number("Reorder at"),
            row.text("Supplier"),
            row.day("From")));
    return this;
  }

  /** Adds a row of Horses. */
  public WrittenBook horse(String text) {
    WrittenRow row = new WrittenRow("Horses", 3, horses.size(), text);
    horses.add(
        new HorseRow(
            row.source(),
            row.text("Horse"),
            row.text("Owner"),
            row.number("Share %"),
            row.text("Bill to"),
            row.text("Place"),
            row.number("Interval weeks"),
            row.day("From"),
            row.day("Until"),
            row.text("Notes")));
    return this;
  }

  /** Adds a row of Places. */
  public WrittenBook place(String text) {
    WrittenRow row = new WrittenRow("Places", 4, places.size(), text);
    places.add(
        new Place(
            row.source(),
            row.text("Place"),
            row.text("Address"),
            row.number("Distance"),
            row.number("Drive min")));
    return this;
  }

  /** Adds a row of Purchases. */
  public WrittenBook purchase(String text) {
    WrittenRow row = new WrittenRow("Purchases", 5, purchases.size(), text);
    purchases.add(
        new Purchase(
            row.source(),
            row.day("Date").orElseThrow(),
            row.text("Supplier"),
            row.text("Item"),
            row.text("Size"),
            row.number("Quantity"),
            row.choice(Unit.class, "Unit").orElse(Unit.PIECE),
            row.text("Category"),
            row.number("Net"),
            row.number("Tax"),
            row.number("Gross"),
            row.day("Paid on"),
            ""));
    return this;
  }

  /** Adds a row of Counts. */
  public WrittenBook count(String text) {
    WrittenRow row = new WrittenRow("Counts", 6, counts.size(), text);
    counts.add(
        new StockCount(
            row.source(),
            row.day("Date").orElseThrow(),
            row.text("Item"),
            row.text("Size"),
            row.number("Quantity").orElseThrow()));
    return this;
  }

  /** Adds a row of Trips. */
  public WrittenBook trip(String text) {
    WrittenRow row = new WrittenRow("Trips", 7, trips.size(), text);
    trips.add(
        new Trip(
            row.source(),
            row.day("Date").orElseThrow(),
            row.text("From"),
            row.text("To"),
            row.number("Distance"),
            row.number("Odometer start"),
            row.number("Odometer end"),
            row.number("Drive min"),
            row.text("Purpose"),
            row.text("Vehicle")));
    return this;
  }

  /** Adds a row of Strain. */
  public WrittenBook strain(String text) {
    WrittenRow row = new WrittenRow("Strain", 8, strain.size(), text);
    strain.add(
        new StrainRating(
            row.source(),
            row.choice(Task.class, "Task").orElseThrow(),
            row.number("Effort CR10"),
            row.number("Efforts per min"),
            row.number("Seconds per effort"),
            row.number("Wrist deg"),
            row.text("Wrist direction"),
            row.number("Vibration m/s2"),
            row.number("Noise dBA"),
            row.number("Trunk deg"),
            row.number("Longest hold s"),
            row.number("Blows per shoe")));
    return this;
  }

  /** Adds a row of Owners. */
  public WrittenBook owner(String text) {
    WrittenRow row = new WrittenRow("Owners", 9, owners.size(), text);
    owners.add(
        new Owner(
            row.source(),
            row.text("Owner"),
            "",
            "",
            row.text("Postcode"),
            row.text("City"),
            "",
            row.whole("Terms days"),
            row.text("Tax exempt").equals("yes"),
            row.text("Exempt reason"),
            row.text("Tax number"),
            row.text("Country"),
            "",
            row.number("Discount %"),
            row.number("Opening balance"),
            new EInvoiceWish(
                row.choice(EInvoiceForm.class, "E-invoice"),
                row.text("Buyer reference"),
                row.text("E-invoice address")),
            row.text("Formerly").isEmpty()
                ? List.of()
                : List.of(row.text("Formerly").split("; "))));
    return this;
  }

  /** Adds a row of Payments. */
  public WrittenBook payment(String text) {
    WrittenRow row = new WrittenRow("Payments", 10, payments.size(), text);
    payments.add(
        new Payment(
            row.source(),
            row.day("Date").orElseThrow(),
            row.text("Owner"),
            row.number("Amount").orElseThrow(),
            row.text("Invoice"),
            row.choice(PaymentKind.class, "Kind").orElse(PaymentKind.PAYMENT),
            row.text("How"),
            row.text("Reference")));
    return this;
  }

  /** Adds a row of Assets. */
  public WrittenBook asset(String text) {
    WrittenRow row = new WrittenRow("Assets", 11, assets.size(), text);
    assets.add(
        new Asset(
            row.source(),
            row.text("Asset"),
            row.day("Bought").orElseThrow(),
            row.number("Cost"),
            row.text("Class"),
            row.number("Business use %"),
            row.day("Sold"),
            row.number("Proceeds")));
    return this;
  }

  /** Adds a row of Tax. */
  public WrittenBook tax(String text) {
    WrittenRow row = new WrittenRow("Tax", 12, taxRates.size(), text);
    taxRates.add(
        new TaxRate(
            row.source(),
            row.text("Code"),
            row.text("Name"),
            row.number("Rate %").orElse(BigDecimal.ZERO),
            row.choice(TaxKind.class, "Kind").orElse(TaxKind.STANDARD),
            row.day("From"),
            row.text("Reason")));
    return this;
  }

  /** Says everything from other texts than the program's own. */
  public WrittenBook speaking(TextSource source) {
    texts = source;
    return this;
  }

  /** Gives the book. */
  public Book book() {
    return new Book(
        List.of(
            "Visits",
            "Work",
            "Materials",
            "Horses",
            "Places",
            "Purchases",
            "Counts",
            "Trips",
            "Strain",
            "Owners",
            "Payments",
            "Assets",
            "Tax"),
        new Settings(settings, Map.<Setting, CellRef>of(), Map.of(Setting.CURRENCY, "EUR"), texts),
        visits,
        work,
        materials,
        owners,
        horses,
        places,
        trips,
        purchases,
        payments,
        assets,
        counts,
        taxRates,
        strain,
        List.of(),
        payments.isEmpty() ? Set.of() : Set.of(SheetKind.PAYMENTS));
  }

  /** Gives its jobs. */
  public Jobs jobs() {
    return JobResolver.resolve(book());
  }
}
