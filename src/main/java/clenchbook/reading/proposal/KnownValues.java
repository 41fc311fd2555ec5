package clenchbook.reading.proposal;

import clenchbook.book.SheetKind;
import clenchbook.reading.words.SameWords;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What the book's known columns name: its horses, owners, items and the like, bare. */
final class KnownValues {
  /** What values are of. */
  enum Of {
    /** Horses. */
    HORSE,
    /** Owners. */
    OWNER,
    /** Places. */
    PLACE,
    /** Names of the price list. */
    WORK,
    /** Materials. */
    ITEM,
    /** Sizes. */
    SIZE,
    /** Suppliers. */
    SUPPLIER,
    /** Codes of tax. */
    CODE,
    /** Prices of the list. */
    PRICE
  }

  private static final int FEWEST = 2;

  private final Map<Of, Set<String>> values = new EnumMap<>(Of.class);

  /** The values of a book, as far as it is understood. */
  static KnownValues of(List<TableContents> tables) {
    KnownValues known = new KnownValues();
    for (TableContents table : tables) {
      for (Column column : table.columns()) {
        table
            .kind()
            .flatMap(kind -> of(kind, column.meaning()))
            .ifPresent(of -> known.add(of, ColumnProfile.of(column)));
      }
    }
    return known;
  }

  private void add(Of of, ColumnProfile profile) {
    values.computeIfAbsent(of, unused -> new HashSet<>()).addAll(profile.values().keySet());
  }

  private static Optional<Of> of(SheetKind kind, String heading) {
    return switch (heading) {
      case "Horse" -> Optional.of(Of.HORSE);
      case "Owner", "Bill to" -> Optional.of(Of.OWNER);
      case "Place" -> Optional.of(Of.PLACE);
      case "Work" -> Optional.of(Of.WORK);
      case "Item", "Shoe", "Nail", "Bar" -> Optional.of(Of.ITEM);
      case "Size" -> Optional.of(Of.SIZE);
      case "Supplier" -> Optional.of(Of.SUPPLIER);
      case "Code" -> Optional.of(Of.CODE);
      case "Price" -> kind == SheetKind.WORK ? Optional.of(Of.PRICE) : Optional.empty();
      case "Tax" -> kind == SheetKind.WORK ? Optional.of(Of.CODE) : Optional.empty();
      case "From", "To" -> place(kind);
      default -> Optional.empty();
    };
  }

  private static Optional<Of> place(SheetKind kind) {
    return kind == SheetKind.TRIPS ? Optional.of(Of.PLACE) : Optional.empty();
  }

  /** Whether the book names enough of them to tell. */
  boolean has(Of of) {
    return values.getOrDefault(of, Set.of()).size() >= FEWEST;
  }

  /** Whether the book names one so. */
  boolean names(Of of, String name) {
    return values.getOrDefault(of, Set.of()).contains(SameWords.bare(name));
  }

  /** Of a hundred cells of a column, how many hold a value that the book names elsewhere. */
  int share(Of of, ColumnProfile profile) {
    Set<String> known = values.getOrDefault(of, Set.of());
    int found =
        profile.values().entrySet().stream()
            .filter(value -> known.contains(value.getKey()))
            .mapToInt(Map.Entry::getValue)
            .sum();
    return profile.isEmpty() ? 0 : found * 100 / profile.filled();
  }

  /** How many different values of a column the book names elsewhere. */
  int shared(Of of, ColumnProfile profile) {
    Set<String> known = values.getOrDefault(of, Set.of());
    return (int) profile.values().keySet().stream().filter(known::contains).count();
  }
}
