package clenchbook.tax.jurisdiction.ca;

import clenchbook.book.Asset;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FiguresOf;
import clenchbook.tax.assets.AssetClasses;
import clenchbook.tax.assets.AssetList;
import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.year.TaxYear;
import clenchbook.texts.Message;
import clenchbook.values.Period;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Assets by class, and an estimate of the most that may be claimed if the most was claimed in each
 * year before: what was in fact claimed stands in last year's return, not in the book. It is part
 * of no total.
 */
final class CcaClasses {
  static final String TABLE = "ca/cca";
  private static final String CAR = "car";
  private static final String TOOL = "tool";
  private static final String SINGLE = "class 10.1";
  private static final BigDecimal ALL = BigDecimal.valueOf(100);

  private final List<Asset> assets;
  private final TaxYear taxYear;
  private final RateLookup rates;
  private final AssetClasses classes;
  private final MinorUnit unit;

  CcaClasses(List<Asset> assets, TaxYear taxYear, RateLookup rates, MinorUnit unit) {
    this.assets = AssetList.until(taxYear.last(), assets);
    this.taxYear = taxYear;
    this.rates = rates;
    this.classes = new AssetClasses(CaJurisdiction.REGIME, rates);
    this.unit = unit;
  }

  /** The register, without depreciation; blank classes are those no word tells. */
  List<DepreciatedAsset> register() {
    return assets.stream()
        .map(
            asset ->
                DepreciatedAsset.without(
                    asset, AssetList.basis(asset, unit), kind(asset), isVehicle(asset)))
        .toList();
  }

  private boolean isVehicle(Asset asset) {
    String kind = kind(asset);
    return kind.equals("class 10") || kind.equals(SINGLE);
  }

  /** {@code class 8} and so on; blank where no word of the asset tells. */
  String kind(Asset asset) {
    String word = classes.find(asset).orElse("");
    return switch (word) {
      case CAR -> isAbove(asset, "car limit") ? SINGLE : "class 10";
      case TOOL -> isBelow(asset, "tool limit") ? "class 12" : "class 8";
      default -> word;
    };
  }

  private boolean isAbove(Asset asset, String limit) {
    return limit(asset, limit).filter(most -> cost(asset).compareTo(most) > 0).isPresent();
  }

  private boolean isBelow(Asset asset, String limit) {
    return limit(asset, limit).filter(least -> cost(asset).compareTo(least) < 0).isPresent();
  }

  private Optional<BigDecimal> limit(Asset asset, String code) {
    return rates.ask(TABLE, code, asset.bought()).map(Rate::amount);
  }

  private static BigDecimal cost(Asset asset) {
    return asset.cost().orElse(BigDecimal.ZERO);
  }

  /**
   * A class, or one car of class 10.1, in this year.
   *
   * @param name the class, with the car's name where it stands alone
   * @param rate its rate
   * @param year its figures
   */
  record ClassYear(String name, Rate rate, CcaYear year) {
    /** The class as pages call it. */
    Message said() {
      String[] parts = name.split(", ", 2);
      return parts.length == 2
          ? Message.of("canada.kind.single", parts[1])
          : CaWords.ALL.getOrDefault(name, Message.literal(name));
    }
  }

  /** Each class that has anything in this year. */
  List<ClassYear> years() {
    TreeMap<String, List<Asset>> byClass = new TreeMap<>();
    for (Asset asset : assets) {
      String kind = kind(asset);
      if (!kind.isEmpty()) {
        String name = kind.equals(SINGLE) ? SINGLE + ", " + asset.name() : kind;
        byClass.computeIfAbsent(name, unused -> new ArrayList<>()).add(asset);
      }
    }
    List<ClassYear> years = new ArrayList<>();
    byClass.forEach(
        (name, ofClass) ->
            rates
                .find(TABLE, name.split(",", 2)[0], taxYear.last())
                .map(rate -> new ClassYear(name, rate, carried(ofClass, rate)))
                .ifPresent(years::add));
    return years;
  }

  private CcaYear carried(List<Asset> ofClass, Rate rate) {
    int first = ofClass.get(0).bought().getYear();
    CcaYear year = of(first, unit.zero(), ofClass, rate);
    for (int next = first + 1; next <= taxYear.year(); next++) {
      year = of(next, year.closing(), ofClass, rate);
    }
    return year;
  }

  private CcaYear of(int number, BigDecimal opening, List<Asset> ofClass, Rate rate) {
    Period days = new Period(LocalDate.of(number, 1, 1), LocalDate.of(number, 12, 31));
    BigDecimal added =
        ofClass.stream()
            .filter(asset -> days.holds(asset.bought()))
            .map(this::capitalCost)
            .reduce(unit.zero(), BigDecimal::add);
    BigDecimal disposed =
        ofClass.stream()
            .filter(asset -> asset.sold().filter(days::holds).isPresent())
            .map(this::disposal)
            .reduce(unit.zero(), BigDecimal::add);
    BigDecimal firstYear =
        rate.code().equals("class 12")
            ? BigDecimal.ONE
            : rates.ask(TABLE, "first year", days.last()).map(Rate::factor).orElse(BigDecimal.ONE);
    boolean held =
        ofClass.stream()
            .filter(asset -> !asset.bought().isAfter(days.last()))
            .anyMatch(asset -> asset.sold().filter(day -> !day.isAfter(days.last())).isEmpty());
    return CcaYear.of(opening, added, disposed, rate.factor(), firstYear, held, unit);
  }

  /** The business part of what it cost; of a car in class 10.1 up to its limit. */
  private BigDecimal capitalCost(Asset asset) {
    BigDecimal basis = AssetList.basis(asset, unit);
    BigDecimal most =
        kind(asset).equals(SINGLE)
            ? limit(asset, "car limit").map(limit -> business(asset, limit)).orElse(basis)
            : basis;
    return basis.min(most);
  }

  private BigDecimal disposal(Asset asset) {
    return business(asset, asset.proceeds().orElse(BigDecimal.ZERO)).min(capitalCost(asset));
  }

  private BigDecimal business(Asset asset, BigDecimal amount) {
    BigDecimal use = asset.businessUsePercent().orElse(ALL);
    return unit.round(amount.multiply(use).divide(ALL, MathContext.DECIMAL128));
  }

  /** The classes as a table. */
  TaxTable table() {
    List<ClassYear> years = years();
    return TaxTable.asIs(Message.of("canada.classes"), figures(years))
        .headed("class", Message.of("canada.column.class"))
        .headed("rate_percent", Message.of("canada.column.rate"))
        .headed("opening", Message.of("canada.column.opening"))
        .headed("added", Message.of("canada.column.added"))
        .headed("disposed", Message.of("canada.column.disposed"))
        .headed("most", Message.of("canada.column.most"))
        .headed("closing", Message.of("canada.column.closing"))
        .said("class", years.stream().map(ClassYear::said).toList())
        .placedOnPage()
        .without("name", "recapture", "terminal_loss");
  }

  private static FigureTable figures(List<ClassYear> years) {
    return FiguresOf.rows(years)
        .column("class", ClassYear::name)
        .column("name", one -> one.rate().name())
        .column("rate_percent", one -> one.rate().value())
        .amount("opening", one -> one.year().opening())
        .amount("added", one -> one.year().added())
        .amount("disposed", one -> one.year().disposed())
        .amount("most", one -> one.year().claim())
        .amount("closing", one -> one.year().closing())
        .amount("recapture", one -> one.year().recapture())
        .amount("terminal_loss", one -> one.year().terminalLoss())
        .named("cca");
  }

  /** The most of all classes together. */
  BigDecimal most() {
    return years().stream().map(one -> one.year().claim()).reduce(unit.zero(), BigDecimal::add);
  }
}
