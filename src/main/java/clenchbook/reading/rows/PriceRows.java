package clenchbook.reading.rows;

import clenchbook.book.Material;
import clenchbook.book.MaterialKind;
import clenchbook.book.TaxKind;
import clenchbook.book.TaxRate;
import clenchbook.book.Unit;
import clenchbook.book.WorkItem;
import clenchbook.problem.ProblemKind;
import clenchbook.reading.cells.Measure;
import clenchbook.reading.cells.RowCells;
import clenchbook.reading.cells.SoundCells;
import clenchbook.reading.words.Choices;
import clenchbook.texts.Message;
import clenchbook.values.Section;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Rows of Work, Materials and Tax. */
final class PriceRows {
  private static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");
  private static final BigDecimal MM_PER_FOOT = new BigDecimal("304.8");

  private static final Message JOB_OR_FEE = Message.of("rows.choice.jobOrFee");
  private static final Message SHAPINGS = Message.of("rows.choice.shaping");
  private static final Message UNITS = Message.of("rows.choice.unit");
  private static final Message MATERIALS = Message.of("rows.choice.material");
  private static final Message TAX_KINDS = Message.of("rows.choice.taxKind");

  private PriceRows() {}

  /** The Work; empty when its name is missing. */
  static Optional<WorkItem> work(RowCells row) {
    WorkItem item =
        new WorkItem(
            row.source(),
            row.name("Work"),
            row.choice("Kind", Choices.FEE, JOB_OR_FEE).orElse(false),
            row.listMoney("Price"),
            row.name("Tax"),
            row.shoes("Shoe"),
            row.whole("Shoes"),
            row.choice("Shaping", Choices.SHAPING, SHAPINGS),
            row.name("Nail"),
            row.number("Nails per shoe"),
            row.minutes("Trim min"),
            row.minutes("Shape min"),
            row.minutes("Nail min"),
            row.minutes("Grind min"),
            row.minutes("Forge min"),
            row.percent("Taxed part").map(percent -> percent.movePointLeft(2).stripTrailingZeros()),
            row.name("Compare as"),
            row.date("From"));
    return named(row, "Work", item.name()) ? Optional.of(item) : Optional.empty();
  }

  /** Says that a row of a list lacks its name. */
  static boolean named(RowCells row, String heading, String name) {
    if (name.isEmpty() && !row.has(heading)) {
      Message problem = Message.of("cells.missing", row.called(heading));
      row.warn(ProblemKind.NAME_MISSING, heading, problem, Message.of("rows.aName"));
    }
    return !name.isEmpty();
  }

  /** The material; empty when its name is missing. */
  static Optional<Material> material(RowCells row) {
    String item = row.name("Item");
    Unit unit = unit(row);
    Material material =
        new Material(
            row.source(),
            item,
            materialKind(row, item),
            row.size("Size"),
            unit,
            row.listMoney("Unit cost"),
            row.number("Per pack"),
            row.listMoney("Pack cost"),
            row.listMoney("Price"),
            section(row),
            length(row, "Length"),
            length(row, "Cut"),
            row.name("Bar"),
            length(row, "Bar length"),
            row.minutes("Making min"),
            row.minutes("Making forge min"),
            row.measure("Reorder at", QuantityCell.measure(unit, row)),
            row.name("Supplier"),
            row.date("From"));
    return named(row, "Item", item) ? Optional.of(material) : Optional.empty();
  }

  static Unit unit(RowCells row) {
    return row.choice("Unit", Choices.UNIT, UNITS).orElse(Unit.PIECE);
  }

  private static MaterialKind materialKind(RowCells row, String item) {
    Optional<MaterialKind> kind = row.choice("Kind", Choices.MATERIAL, MATERIALS);
    if (kind.isPresent() || item.isEmpty()) {
      return kind.orElse(MaterialKind.SUNDRY);
    }
    Optional<MaterialKind> guessed = kindByName(row, item);
    if (guessed.isEmpty() && !row.has("Kind")) {
      row.warn(
          ProblemKind.CHOICE_UNKNOWN,
          "Kind",
          Message.of("cells.missing", row.called("Kind")),
          MATERIALS);
    }
    return guessed.orElse(MaterialKind.SUNDRY);
  }

  /** A blank Kind, from what else the row says: its lengths, or a word in its name. */
  private static Optional<MaterialKind> kindByName(RowCells row, String item) {
    if (row.has("Bar") || row.has("Making min")) {
      return Optional.of(MaterialKind.HANDMADE);
    }
    if (row.has("Bar length mm") || row.has("Section")) {
      return Optional.of(MaterialKind.BAR);
    }
    for (String word : item.toLowerCase(Locale.ROOT).split("[^\\p{L}]+")) {
      for (Map.Entry<String, MaterialKind> known : Choices.MATERIAL.entrySet()) {
        boolean same = known.getKey().equals(word);
        if (same && known.getValue() != MaterialKind.SUNDRY) {
          return Optional.of(known.getValue());
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Section> section(RowCells row) {
    String written = row.text("Section");
    if (written.isEmpty()) {
      return Optional.empty();
    }
    Optional<Section> section = Section.parse(written);
    if (section.isEmpty()) {
      Message problem = Message.of("rows.section.unreadable", SoundCells.brief(written));
      Message expected = Message.of("rows.section.some");
      row.warn(ProblemKind.SECTION_UNREADABLE, "Section", problem, expected);
    }
    return section;
  }

  /** A length in millimetres, whichever unit its column has. */
  private static Optional<BigDecimal> length(RowCells row, String heading) {
    if (row.has(heading + " mm")) {
      return row.measure(heading + " mm", Measure.MM);
    }
    boolean inches = row.has(heading + " in");
    String own = heading + (inches ? " in" : " ft");
    if (row.isIn(own, Measure.MM)) {
      return row.measure(own, Measure.MM);
    }
    BigDecimal millimetres = inches ? MM_PER_INCH : MM_PER_FOOT;
    return row.measure(own, inches ? Measure.INCH : Measure.FOOT).map(millimetres::multiply);
  }

  /** The rate; empty when its code or rate is missing. */
  static Optional<TaxRate> taxRate(RowCells row) {
    String code = row.name("Code");
    Optional<TaxKind> kind = row.choice("Kind", Choices.TAX, TAX_KINDS);
    Optional<BigDecimal> rate = row.percent("Rate %");
    boolean untaxed = kind.isPresent() && !kind.get().charged();
    if (rate.isEmpty() && !untaxed && !row.has("Rate %")) {
      Message problem = Message.of("cells.missing", row.called("Rate %"));
      row.warn(ProblemKind.NUMBER_UNREADABLE, "Rate %", problem, Message.of("rows.tax.aRate"));
    }
    if (!named(row, "Code", code) || (rate.isEmpty() && !untaxed)) {
      return Optional.empty();
    }
    BigDecimal percent = rate.orElse(BigDecimal.ZERO);
    if (untaxed && percent.signum() != 0) {
      row.warn(
          ProblemKind.TAX_RATE_UNUSED,
          "Rate %",
          Message.of("rows.tax.rateUnused", kind.get().word()),
          Message.of("rows.tax.zeroOrOtherKind"));
    }
    TaxKind byRate = percent.signum() == 0 ? TaxKind.ZERO : TaxKind.STANDARD;
    return Optional.of(
        new TaxRate(
            row.source(),
            code,
            row.name("Name"),
            percent,
            kind.orElse(byRate),
            row.date("From"),
            row.text("Reason")));
  }
}
