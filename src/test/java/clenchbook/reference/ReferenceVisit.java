package clenchbook.reference;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One row of Visits with everything it leaves blank taken from the other sheets. */
final class ReferenceVisit {
  /** New shoes of one item and size. */
  record Shoes(String item, String size, int count) {}

  /** Who pays which weight of the charge. */
  record Payer(String name, BigDecimal weight) {}

  PlainRow row;
  LocalDate date;
  PlainRow work;
  String workName = "";
  String horse = "";
  String owner = "";
  String place = "";
  boolean fee;
  boolean cancelled;
  int shoes;
  int fresh;
  String shaping = "none";
  List<Shoes> parts = new ArrayList<>();
  String nail = "";
  BigDecimal nails = BigDecimal.ZERO;
  Map<String, BigDecimal> extras = new LinkedHashMap<>();
  List<Payer> payers = new ArrayList<>();

  BigDecimal chargeNet = BigDecimal.ZERO;
  BigDecimal materials = BigDecimal.ZERO;
  BigDecimal gas = BigDecimal.ZERO;
  BigDecimal sundries = BigDecimal.ZERO;
  BigDecimal travel = BigDecimal.ZERO;
  BigDecimal overhead = BigDecimal.ZERO;
  BigDecimal labour = BigDecimal.ZERO;
  BigDecimal jobMinutes = BigDecimal.ZERO;
  BigDecimal driveMinutes = BigDecimal.ZERO;
  BigDecimal making = BigDecimal.ZERO;
  BigDecimal makingForge = BigDecimal.ZERO;
  String measured = "";

  boolean hot() {
    return shaping.equals("hot") && !fee && !cancelled;
  }

  BigDecimal minutes() {
    return jobMinutes.add(driveMinutes).add(making);
  }

  BigDecimal marginBeforeLabour() {
    return chargeNet
        .subtract(materials)
        .subtract(gas)
        .subtract(sundries)
        .subtract(travel)
        .subtract(overhead);
  }
}
