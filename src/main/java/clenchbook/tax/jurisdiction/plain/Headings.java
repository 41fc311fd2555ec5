package clenchbook.tax.jurisdiction.plain;

import clenchbook.texts.Message;
import java.util.Map;

/** What pages call the headings under which costs stand where no country's form has lines. */
final class Headings {
  /** By the code that the farrier's words lead to. */
  static final Map<String, Message> SAID =
      Map.ofEntries(
          Map.entry("advertising", Message.of("plain.heading.advertising")),
          Map.entry("vehicle", Message.of("plain.heading.vehicle")),
          Map.entry("parking and tolls", Message.of("plain.heading.parkingAndTolls")),
          Map.entry("insurance", Message.of("plain.heading.insurance")),
          Map.entry("personal insurance", Message.of("plain.heading.personalInsurance")),
          Map.entry("phone and internet", Message.of("plain.heading.phoneAndInternet")),
          Map.entry("power and water", Message.of("plain.heading.powerAndWater")),
          Map.entry("office", Message.of("plain.heading.office")),
          Map.entry("accountancy and legal", Message.of("plain.heading.accountancyAndLegal")),
          Map.entry("bank charges", Message.of("plain.heading.bankCharges")),
          Map.entry("interest", Message.of("plain.heading.interest")),
          Map.entry("training", Message.of("plain.heading.training")),
          Map.entry("memberships", Message.of("plain.heading.memberships")),
          Map.entry("licences", Message.of("plain.heading.licences")),
          Map.entry("repairs", Message.of("plain.heading.repairs")),
          Map.entry("tools", Message.of("plain.heading.tools")),
          Map.entry("supplies", Message.of("plain.heading.supplies")),
          Map.entry("forge gas", Message.of("plain.heading.forgeGas")),
          Map.entry("materials", Message.of("plain.heading.materials")),
          Map.entry("carriage", Message.of("plain.heading.carriage")),
          Map.entry("protective clothing", Message.of("plain.heading.protectiveClothing")),
          Map.entry("rent", Message.of("plain.heading.rent")),
          Map.entry("rates", Message.of("plain.heading.rates")),
          Map.entry("use of home", Message.of("plain.heading.useOfHome")),
          Map.entry("hire", Message.of("plain.heading.hire")),
          Map.entry("wages", Message.of("plain.heading.wages")),
          Map.entry("hired help", Message.of("plain.heading.hiredHelp")),
          Map.entry("meals", Message.of("plain.heading.meals")),
          Map.entry("restaurant meals", Message.of("plain.heading.restaurantMeals")),
          Map.entry("travel", Message.of("plain.heading.travel")),
          Map.entry("commissions", Message.of("plain.heading.commissions")),
          Map.entry("not allowable", Message.of("plain.heading.notAllowable")),
          Map.entry("gifts", Message.of("plain.heading.gifts")),
          Map.entry("other", Message.of("plain.heading.other")));

  private Headings() {}
}
