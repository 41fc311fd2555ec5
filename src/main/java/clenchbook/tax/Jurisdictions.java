package clenchbook.tax;

import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.jurisdiction.au.AuJurisdiction;
import clenchbook.tax.jurisdiction.ca.CaJurisdiction;
import clenchbook.tax.jurisdiction.de.DeJurisdiction;
import clenchbook.tax.jurisdiction.plain.PlainJurisdiction;
import clenchbook.tax.jurisdiction.uk.UkJurisdiction;
import clenchbook.tax.jurisdiction.us.UsJurisdiction;
import java.util.List;
import java.util.Optional;

/**
 * Every tax regime the program knows. Adding one: its folder under {@code rates}, its package under
 * {@code tax.jurisdiction}, and one entry here.
 */
public final class Jurisdictions {
  private static final List<Jurisdiction> ALL =
      List.of(
          new PlainJurisdiction(),
          new UsJurisdiction(),
          new UkJurisdiction(),
          new AuJurisdiction(),
          new DeJurisdiction(),
          new CaJurisdiction());

  private Jurisdictions() {}

  /** The regime with that word, as {@code us}; empty where there is none, never another. */
  public static Optional<Jurisdiction> find(String word) {
    return ALL.stream().filter(one -> one.regime().word().equals(word)).findFirst();
  }

  /** The regime with that word, else the plain one: where no figure of a country is made. */
  public static Jurisdiction orPlain(String word) {
    return find(word).orElseGet(PlainJurisdiction::new);
  }

  /** The words of all of them, in the order of the list. */
  public static List<String> words() {
    return ALL.stream().map(one -> one.regime().word()).toList();
  }
}
