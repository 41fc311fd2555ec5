package clenchbook.samples;

import clenchbook.samples.Scenario.Kind;
import clenchbook.samples.Scenario.Shoe;
import clenchbook.samples.Storeroom.Buying;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** A farrier in an invented American county: imperial, dollars, tax on the goods only. */
final class CedarHollowImperial {
  static final Scenario SCENARIO =
      new Scenario(
          "cedar-hollow-imperial.xlsx",
          20260721L,
          186,
          8,
          true,
          0.3,
          6,
          false,
          Map.ofEntries(
              Map.entry(Kind.TRIM, "Trim"),
              Map.entry(Kind.FRONTS, "Fronts + trim behind"),
              Map.entry(Kind.FULL, "Full set"),
              Map.entry(Kind.RESET, "Reset, four"),
              Map.entry(Kind.HANDMADE, "Handmade, four"),
              Map.entry(Kind.ALUMINIUM, "Aluminum, four"),
              Map.entry(Kind.BAR, "Bar shoes with pads"),
              Map.entry(Kind.LOST, "Lost shoe"),
              Map.entry(Kind.REPAIR, "Hoof patch"),
              Map.entry(Kind.CALLOUT, "Farm call"),
              Map.entry(Kind.NOSHOW, "No-show")),
          Map.of(
              Shoe.KEG, "Plain keg",
              Shoe.HEAVY, "Draft keg",
              Shoe.HANDMADE, "Handmade plain",
              Shoe.BAR, "Straight bar",
              Shoe.ALUMINIUM, "Aluminum wide web"),
          List.of(
              "Cedar Hollow Barn;118 Creek Road\\nCedar Hollow 00417;6.8;5.4;15;livery",
              "Three Ridge Boarding;2200 Ridge Road\\nThree Ridge 00421;21.6;12.2;16;livery",
              "Lone Elm Academy;Lone Elm Riding Academy\\n"
                  + "40 School Lane\\n"
                  + "Lone Elm 00433;36.5;-5.4;14;school",
              "Willet Creek;915 Willet Creek Road\\nWillet 00436;28.4;18.9;11;livery",
              "Tamarack Flats;77 Flats Road\\nTamarack 00440;-14.9;24.3;12;livery",
              "Stillwater Bend Farm;Stillwater Bend Farm\\n"
                  + "6 Bend Road\\n"
                  + "Tamarack 00440;-25.7;32.4;15;stud",
              "Juniper Draw;310 Draw Road\\nJuniper 00446;-41.9;9.5;6;livery",
              "Osage Point;1404 Point Road\\nOsage 00447;-33.8;-12.2;12;livery",
              "Harlan Fork;9 Fork Lane\\nHarlan 00449;-44.6;-20.2;4;private",
              "Mill Prairie;560 Prairie Road\\nMill Prairie 00452;-12.2;-29.7;10;livery",
              "Hollow Oak;23 Oak Lane\\nCedar Hollow 00417;4.1;-9.5;4;private",
              "Sorrel Springs;81 Springs Road\\nSorrel 00455;9.5;-36.5;9;livery",
              "Gentle Gait;Gentle Gait Therapeutic Riding\\n"
                  + "12 Gait Lane\\n"
                  + "Sorrel 00455;24.3;-28.4;11;charity",
              "Bitter Creek;3021 County Road 9\\nBitter Creek 00458;41.9;9.5;3;private",
              "Painted Rock;4410 County Road 9\\nBitter Creek 00458;45.9;17.6;6;livery",
              "Pecan Bottom;15 Pecan Lane\\nCedar Hollow 00417;9.5;4.1;3;private",
              "Windbreak Farm;602 Ridge Road\\nThree Ridge 00421;24.3;10.8;3;private",
              "Lazy Bend;1 Bend Road\\nWillet 00436;25.7;23.0;2;private",
              "Tamarack Lodge;8 Lodge Lane\\nTamarack 00440;-17.6;21.6;4;estate",
              "Redbud Acres;233 Point Road\\nOsage 00447;-29.7;-13.5;5;livery",
              "Fork Meadow;41 Fork Lane\\nHarlan 00449;-45.9;-17.6;2;private",
              "Prairie Star;702 Prairie Road\\nMill Prairie 00452;-9.5;-33.8;4;private",
              "Spring House;99 Springs Road\\nSorrel 00455;12.2;-37.8;3;private",
              "County Fairground;1 Fair Street\\nCedar Hollow 00417;1.4;2.7;12;livery"),
          List.of(
              "Delphine",
              "Wade",
              "Marisol",
              "Thane",
              "Juniper",
              "Cordell",
              "Imogene",
              "Ezekiel",
              "Tallulah",
              "Boone",
              "Odessa",
              "Merritt",
              "Luz",
              "Harlan",
              "Winona",
              "Cyrus",
              "Beatriz",
              "Leland",
              "Opal",
              "Thaddeus"),
          List.of(
              "Castellane",
              "Broadwater",
              "Yellowhorse",
              "Prudhomme",
              "Stonecipher",
              "Vandermeulen",
              "Quillen",
              "Hartsfield",
              "Abernall",
              "Dovetree",
              "Mackinlay",
              "Ostrander",
              "Fairweather",
              "Lomax-Reed",
              "Tillinghast",
              "Barlowe",
              "Kittredge",
              "Sandoval-Pike",
              "Wrenfield",
              "Hollingdale"),
          List.of(
              "José Ángel Ibáñez Nuño",
              "Γιώργος Χατζηδάκης-Λεβέντης",
              "Ярослава Гончаренко-Лис",
              "Renée Thibodeaux-Côté",
              "Jürgen Größmann"),
          HorseNames.AMERICAN,
          List.of(
              ThornfieldMetric.days("2025-11-26", "2025-11-29"),
              ThornfieldMetric.days("2025-12-22", "2026-01-04"),
              ThornfieldMetric.days("2026-03-09", "2026-03-14"),
              ThornfieldMetric.days("2026-07-02", "2026-07-12"),
              ThornfieldMetric.days("2026-09-07", "2026-09-07")),
          "4x0",
          LocalDate.of(2025, 9, 1),
          LocalDate.of(2026, 10, 31));

  static final String WORK =
      """
      # Work|Kind|Price|Shaping|Trim min|From
      Trim|job|55|none|20|2025-01-01
      Trim||60|none|20|2026-01-01
      # Work|Price|Tax|Shaping|Trim min|Taxed part|Compare as|From
      Hoof patch|45|ST|none|12|40|Patch|2025-01-01
      # Work|Kind|Price|From
      Farm call|fee|45|2025-01-01
      No-show|fee|60|2025-01-01
      # Work|Price|Tax|Shoe|Shoes|Shaping|Nail|Nails per shoe|Trim min|Shape min|Nail min|Grind min|Forge min|Taxed part|Compare as|From
      Fronts + trim behind|135|ST|Plain keg|2|cold|Nail 5|7|20|14|10||10|30|Fronts|2025-01-01
      Full set|215|ST|Plain keg|4|cold|Nail 5|7|20|30|20||20|35|Full set|2025-01-01
      Reset, four|185|ST|Plain keg|4|cold|Nail 5|7|20|18|20||14|10|Reset|2025-01-01
      Handmade, four|325|ST|Handmade plain|4|hot|Nail 5|7|20|22|20|5|22|35|Full set|2025-01-01
      Aluminum, four|275|ST|Aluminum wide web|4|cold|Nail 6 light|6|20|28|20|5||40||2025-01-01
      Bar shoes with pads|230|ST|Straight bar|2|hot|Nail 5|7|20|15|11|5|16|40||2025-01-01
      Lost shoe|38|ST|Plain keg|1|cold|Nail 5|7|5|6|6|||20||2025-01-01
      Fronts + trim behind|145|ST|Plain keg|2|cold|Nail 5|7|20|14|10||10|30|Fronts|2026-01-01
      Full set|230|ST|Plain keg|4|cold|Nail 5|7|20|30|20||20|35|Full set|2026-01-01
      Reset, four|200|ST|Plain keg|4|cold|Nail 5|7|20|18|20||14|10|Reset|2026-01-01
      Handmade, four|345|ST|Handmade plain|4|hot|Nail 5|7|20|22|20|5|22|35|Full set|2026-01-01
      Aluminum, four|290|ST|Aluminum wide web|4|cold|Nail 6 light|6|20|28|20|5||40||2026-01-01
      Lost shoe|42|ST|Plain keg|1|cold|Nail 5|7|5|6|6|||20||2026-01-01
      """;

  static final String MATERIALS =
      """
      # Item|Kind|Size|Unit|Unit cost|Reorder at|Supplier|From
      Plain keg|keg|4x0|piece|4.40|8|Three Ridge Horseshoe Co-op|2025-01-01
      Plain keg|keg|00|piece|4.60|24|Three Ridge Horseshoe Co-op|2025-01-01
      Plain keg|keg|0|piece|4.85|40|Three Ridge Horseshoe Co-op|2025-01-01
      Plain keg|keg|1|piece|5.10|40|Three Ridge Horseshoe Co-op|2025-01-01
      Plain keg|keg|2|piece|5.60|24|Three Ridge Horseshoe Co-op|2025-01-01
      Plain keg|keg||piece|5.10||Three Ridge Horseshoe Co-op|2025-01-01
      Plain keg|keg|0|piece|5.15|40|Three Ridge Horseshoe Co-op|2026-02-01
      Plain keg|keg|1|piece|5.40|40|Three Ridge Horseshoe Co-op|2026-02-01
      Draft keg|keg||piece|8.00|8|Three Ridge Horseshoe Co-op|2025-01-01
      Aluminum wide web|aluminium||pair|24|4|Osage Metals|2025-01-01
      Propane|gas||piece|3.80||Cedar Hollow Feed & Fuel|2025-01-01
      Rasp|sundry||piece|24|2|Three Ridge Horseshoe Co-op|2025-01-01
      # Item|Kind|Size|Unit|Length in|Cut mm|Bar|Making min|Making forge min|From
      Handmade plain|handmade|0|piece|12|3|Bar 3/4 x 5/16|15|12|2025-01-01
      Handmade plain|handmade|1|piece|12.75|3|Bar 3/4 x 5/16|16|12|2025-01-01
      Handmade plain|handmade||piece|13|3|Bar 3/4 x 5/16|17|13|2025-01-01
      Straight bar|handmade||piece|17|4|Bar 1 x 3/8|28|20|2025-01-01
      # Item|Kind|Unit|Unit cost|Section|Bar length mm|Reorder at|Supplier|From
      Bar 3/4 x 5/16|bar|bar|15.20|3/4 x 5/16 in|3658|2|Osage Metals|2025-01-01
      Bar 1 x 3/8|bar|kg|3.30|1 x 3/8 in||6|Osage Metals|2025-01-01
      # Item|Kind|Unit|Per pack|Pack cost|Reorder at|Supplier|From
      Nail 4 slim|nail|pack|250|31|250|Three Ridge Horseshoe Co-op|2025-01-01
      Nail 5|nail|pack|250|33.50|500|Three Ridge Horseshoe Co-op|2025-01-01
      Nail 6 light|nail|pack|250|36|150|Three Ridge Horseshoe Co-op|2025-01-01
      Nail 7 heavy|nail|pack|250|41|150|Three Ridge Horseshoe Co-op|2025-01-01
      # Item|Kind|Unit|Unit cost|Price|Reorder at|Supplier|From
      Leather pad|pad|pair|13.50|26|4|Three Ridge Horseshoe Co-op|2025-01-01
      Pad packing|packing|piece|2.20|6|4|Three Ridge Horseshoe Co-op|2025-01-01
      Stud|stud|piece|2.10|7|16|Three Ridge Horseshoe Co-op|2025-01-01
      Hoof adhesive|adhesive|piece|17.50|34|2|Three Ridge Horseshoe Co-op|2025-01-01
      """;

  static final Map<String, Buying> BUYING =
      Map.ofEntries(
          Map.entry("Plain keg", new Buying("piece", 1, 10, "Three Ridge Horseshoe Co-op")),
          Map.entry("Draft keg", new Buying("piece", 1, 4, "Three Ridge Horseshoe Co-op")),
          Map.entry("Aluminum wide web", new Buying("pair", 2, 4, "Osage Metals")),
          Map.entry("Bar 3/4 x 5/16", new Buying("bar", 1, 4, "Osage Metals")),
          Map.entry("Bar 1 x 3/8", new Buying("kg", 1, 6, "Osage Metals")),
          Map.entry("Nail 4 slim", new Buying("pack", 250, 1, "Three Ridge Horseshoe Co-op")),
          Map.entry("Nail 5", new Buying("pack", 250, 2, "Three Ridge Horseshoe Co-op")),
          Map.entry("Nail 6 light", new Buying("pack", 250, 1, "Three Ridge Horseshoe Co-op")),
          Map.entry("Nail 7 heavy", new Buying("pack", 250, 1, "Three Ridge Horseshoe Co-op")),
          Map.entry("Leather pad", new Buying("pair", 2, 4, "Three Ridge Horseshoe Co-op")),
          Map.entry("Pad packing", new Buying("piece", 1, 6, "Three Ridge Horseshoe Co-op")),
          Map.entry("Stud", new Buying("piece", 1, 50, "Three Ridge Horseshoe Co-op")),
          Map.entry("Hoof adhesive", new Buying("piece", 1, 2, "Three Ridge Horseshoe Co-op")),
          Map.entry("Rasp", new Buying("piece", 1, 2, "Three Ridge Horseshoe Co-op")));

  static final Map<String, String> BARS =
      Map.of("Handmade plain", "Bar 3/4 x 5/16", "Straight bar", "Bar 1 x 3/8");

  static final Map<String, Double> BARS_PER_SHOE =
      Map.of("Handmade plain", 0.09, "Straight bar", 0.824);

  static final List<String> EXPENSES =
      List.of(
          "Rent;Cedar Hollow Storage;410;30;0",
          "Phone;Plains Wireless;72;30;4",
          "Fuel for vehicle;Cedar Hollow Feed & Fuel;84.6;7;2",
          "Propane gas;Cedar Hollow Feed & Fuel;56.2;28;3",
          "Insurance;Prairie Mutual Cover;1480;360;25",
          "Vehicle insurance;Prairie Mutual Cover;1620;360;41",
          "Vehicle service;Ridge Road Motors;360.5;120;63",
          "Accountant;Lomax Tax Desk;850;360;170",
          "Training;Farriers' Clinic Weekend;540;360;150",
          "Tools;Three Ridge Horseshoe Co-op;205.3;60;12",
          "Workwear;Three Ridge Horseshoe Co-op;140.4;120;30",
          "Advertising;Cedar Hollow Shopper;65;90;10",
          "Bank charges;Willet Savings;12;30;27",
          "Office;Three Ridge Office Store;28.3;60;18",
          "Private;Ridge Road Motors;95;360;200");

  static final String SETTINGS =
      """
      Business name|Stonecipher Horseshoeing
      Address|14 Anvil Lane\\nCedar Hollow 00417
      Email|shop@stonecipher.example
      Phone|555-0142
      Registration|Journeyman, card 0000 (sample)
      Tax number|00-0000000
      Payment text|Checks to Stonecipher Horseshoeing, or pay by the link. A late fee applies after the due date.
      Payment link|https://pay.stonecipher.example/
      Country|US
      Currency|USD
      Language|en
      Units|imperial
      Distance unit|miles
      Date order|mdy
      Tax regime|us
      Prices include tax|no
      Tax on|line
      Input tax recovered|no
      Terms days|14
      Callback days|10
      Late fee % per month|1.5
      Invoice pattern|CH-{yyyy}-{seq:4}
      Next invoice number|1
      Hourly wage|45
      Helper wage|18
      Vehicle cost per distance|0.725
      Gas cost per gallon|3.80
      Sundries per horse|3.25
      Hours per year|1600
      Yearly overheads|14500
      Gas burn lb per hour|1.6
      Forge setup min|5
      Forge setup gas min|4
      Lead days|10
      Year starts|1
      Tax basis|cash
      Birth year|1979
      Stop age|65
      Weekly hours limit|50
      Yearly hours limit|2000
      Horses per day limit|12
      From address|shop@stonecipher.example
      """;

  static final String TAX =
      """
      ST|State and county sales tax|5.75|standard|2019-01-01
      ST|State and county sales tax|6|standard|2026-01-01
      EX|Exempt buyer|0|exempt|2019-01-01
      """;

  static final String ASSETS =
      """
      Truck|2024-03-18|38500|5-year|90||
      Shoeing body for truck|2024-04-02|9200|7-year|100||
      Propane forge|2025-06-14|1350|7-year|100||
      Anvil|2016-05-01|1100|7-year|100||
      Old trailer|2017-08-08|4200|5-year|100|2026-05-15|1200
      Laptop|2026-02-20|780|5-year|70||
      """;

  static final String HEADINGS =
      """
      Trips|Truck|Vehicle
      Visits|Remarks|Notes
      """;

  private CedarHollowImperial() {}
}
