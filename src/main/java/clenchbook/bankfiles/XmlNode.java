package clenchbook.bankfiles;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/** A small piece of XML, held whole: one transaction, one balance. */
final class XmlNode {
  /** What no matching needs: addresses, agents, and what banks add for themselves. */
  private static final Set<String> UNWANTED =
      Set.of("PstlAdr", "RltdAgts", "SplmtryData", "CtctDtls", "TaxRmt", "Envlp", "Tax");

  private static final XmlNode NONE = new XmlNode("", "");

  private final String name;
  private final String currency;
  private List<XmlNode> children = List.of();
  private String text = "";

  XmlNode(String name, String currency) {
    this.name = name;
    this.currency = currency;
  }

  static boolean wanted(String name) {
    return !UNWANTED.contains(name);
  }

  void add(XmlNode child) {
    if (children.isEmpty()) {
      children = new ArrayList<>(4);
    }
    children.add(child);
  }

  void write(String own) {
    text = own;
  }

  String name() {
    return name;
  }

  String text() {
    return text;
  }

  String currency() {
    return currency;
  }

  /** The first descendant along a path of names; an empty node where there is none. */
  XmlNode at(String... path) {
    XmlNode here = this;
    for (String step : path) {
      here = here.child(step);
    }
    return here;
  }

  /** The text along a path; empty where there is none. */
  String text(String... path) {
    return at(path).text;
  }

  boolean has(String child) {
    for (XmlNode each : children) {
      if (each.name.equals(child)) {
        return true;
      }
    }
    return false;
  }

  private XmlNode child(String wanted) {
    for (XmlNode each : children) {
      if (each.name.equals(wanted)) {
        return each;
      }
    }
    return NONE;
  }

  /** Each child of a name, in order. */
  void each(String wanted, Consumer<XmlNode> use) {
    for (XmlNode each : children) {
      if (each.name.equals(wanted)) {
        use.accept(each);
      }
    }
  }
}
