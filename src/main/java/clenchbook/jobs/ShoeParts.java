package clenchbook.jobs;

import clenchbook.book.Counted;
import clenchbook.book.Material;
import clenchbook.book.MaterialKind;
import clenchbook.book.Names;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Puts the Shoe and Size lists of a row together: the lists are laid out shoe by shoe in the order
 * written and paired; the new shoes are the first ones.
 */
final class ShoeParts {
  private ShoeParts() {}

  static List<FittedPart> of(
      List<Counted> shoe,
      List<Counted> size,
      int shoes,
      int newShoes,
      MaterialList materials,
      LocalDate day) {
    List<String> items = laidOut(shoe, shoes);
    List<String> sizes = laidOut(size, shoes);
    List<FittedPart> parts = new ArrayList<>();
    for (int start = 0; start < shoes; ) {
      int end = start + 1;
      while (end < shoes
          && items.get(end).equals(items.get(start))
          && sizes.get(end).equals(sizes.get(start))) {
        end++;
      }
      int fresh = Math.max(0, Math.min(end, newShoes) - start);
      parts.add(part(items.get(start), sizes.get(start), end - start, fresh, materials, day));
      start = end;
    }
    return parts;
  }

  private static FittedPart part(
      String item, String size, int count, int fresh, MaterialList materials, LocalDate day) {
    Optional<StockKey> key = item.isEmpty() ? Optional.empty() : materials.findKey(item, size);
    Optional<Material> material = key.flatMap(found -> materials.find(found, day));
    Optional<MaterialKind> kind =
        material
            .or(() -> key.flatMap(found -> materials.any(materials.shelf(found))))
            .map(Material::kind)
            .or(() -> kindWord(item));
    return new FittedPart(
        key.map(StockKey::item).orElse(item),
        key.map(StockKey::size).orElse(size),
        count,
        fresh,
        kind,
        material);
  }

  /** A farrier without a Materials row may still write the kind itself. */
  static Optional<MaterialKind> kindWord(String item) {
    String word = Names.key(item);
    return switch (word.endsWith("s") ? word.substring(0, word.length() - 1) : word) {
      case "keg" -> Optional.of(MaterialKind.KEG);
      case "handmade" -> Optional.of(MaterialKind.HANDMADE);
      case "aluminium", "aluminum", "alu" -> Optional.of(MaterialKind.ALUMINIUM);
      default -> Optional.empty();
    };
  }

  /**
   * One name per shoe; parts without a count share what the counted ones leave, as even as can be.
   */
  private static List<String> laidOut(List<Counted> list, int shoes) {
    if (list.isEmpty()) {
      return Collections.nCopies(shoes, "");
    }
    int counted = list.stream().mapToInt(part -> part.count().orElse(0)).sum();
    int open = (int) list.stream().filter(part -> part.count().isEmpty()).count();
    int left = Math.max(0, shoes - counted);
    List<String> names = new ArrayList<>();
    int index = 0;
    for (Counted part : list) {
      int count = part.count().orElse(0);
      if (part.count().isEmpty()) {
        count = left / open + (index < left % open ? 1 : 0);
        index++;
      }
      names.addAll(Collections.nCopies(count, part.name()));
    }
    while (names.size() < shoes) {
      names.add(list.get(list.size() - 1).name());
    }
    return names;
  }

  /** How many shoes the list itself counts; empty when a part has no count. */
  static Optional<Integer> counted(List<Counted> list) {
    if (list.isEmpty() || list.stream().anyMatch(part -> part.count().isEmpty())) {
      return Optional.empty();
    }
    return Optional.of(list.stream().mapToInt(part -> part.count().orElse(0)).sum());
  }

  static String written(List<Counted> list) {
    StringBuilder text = new StringBuilder();
    for (Counted part : list) {
      text.append(text.length() == 0 ? "" : "; ").append(part.name());
      part.count().ifPresent(count -> text.append(String.format(Locale.ROOT, ": %d", count)));
    }
    return text.toString();
  }
}
