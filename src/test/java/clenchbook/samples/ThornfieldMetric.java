package clenchbook.samples;

import clenchbook.samples.Scenario.Kind;
import clenchbook.samples.Scenario.Shoe;
import clenchbook.samples.Storeroom.Buying;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** A farrier in an invented English county: metric, pounds, prices that include VAT. */
final class ThornfieldMetric {
  static final Scenario SCENARIO =
      new Scenario(
          "thornfield-metric.xlsx",
          20260135L,
          166,
          6,
          true,
          0.45,
          20,
          true,
          Map.ofEntries(
              Map.entry(Kind.TRIM, "Trim"),
              Map.entry(Kind.FRONTS, "Fronts and trim"),
              Map.entry(Kind.FULL, "Full set"),
              Map.entry(Kind.RESET, "Refit own shoes"),
              Map.entry(Kind.HANDMADE, "Handmade set"),
              Map.entry(Kind.ALUMINIUM, "Aluminium set"),
              Map.entry(Kind.BAR, "Bar shoes and pads"),
              Map.entry(Kind.LOST, "Lost shoe"),
              Map.entry(Kind.REPAIR, "Hoof repair"),
              Map.entry(Kind.CALLOUT, "Call-out"),
              Map.entry(Kind.NOSHOW, "No-show")),
          Map.of(
              Shoe.KEG, "Concave",
              Shoe.HEAVY, "Heavy keg",
              Shoe.HANDMADE, "Handmade fullered",
              Shoe.BAR, "Handmade bar shoe",
              Shoe.ALUMINIUM, "Aluminium sport"),
          List.of(
              "Marrowby Livery;Marrowby Livery\\nMill Lane\\nMarrowby\\nZZ4 1QX;6.0;4.6;14;livery",
              "Skelderby Grange;Skelderby Grange\\nSkelderby\\nZZ4 3QX;13.7;9.1;12;livery",
              "Haldersham School;Haldersham Riding School\\n"
                  + "Pound Lane\\n"
                  + "Haldersham\\n"
                  + "ZZ6 2QX;19.7;-3.0;15;school",
              "Orrin Hill;Orrin Hill Farm\\nOrrin\\nZZ4 8QX;10.6;16.7;9;livery",
              "Nether Quillow;The Forge Yard\\nNether Quillow\\nZZ7 5QX;-9.1;13.7;11;livery",
              "Pellow Cross Stud;Pellow Cross Stud\\nPellow Cross\\nZZ7 9QX;-18.1;19.7;13;stud",
              "Dunmarrow;2 Holding Road\\nDunmarrow\\nZZ8 1QX;-22.6;6.0;3;private",
              "Fennick End;Fennick End Stables\\nFennick End\\nZZ8 4QX;-16.7;-7.6;10;livery",
              "Harrowmere;Harrowmere House\\nHarrowmere\\nZZ8 6QX;-24.2;-12.1;5;estate",
              "Long Pightle;Pightle Barn\\nLong Pightle\\nZZ9 3QX;-7.6;-18.1;8;livery",
              "Tarn Acre;Tarn Acre\\nLow Road\\nThornfield\\nZZ1 7QX;3.0;-6.0;3;private",
              "Wexley Bottom;Wexley Farm\\nWexley Bottom\\nZZ9 8QX;4.6;-21.2;7;livery",
              "Ashgill Rescue;Ashgill Pony Rescue\\nAshgill\\nZZ5 5QX;15.1;-16.7;9;charity",
              "Cobbler's Green;4 The Green\\nCobbler's Green\\nZZ6 8QX;24.2;6.0;2;private",
              "Upper Stathe;Stathe Paddocks\\nUpper Stathe\\nZZ6 9QX;27.2;12.1;6;livery",
              "Larch House;Larch House\\nBeck Road\\nMarrowby\\nZZ4 1QZ;7.6;3.0;2;private",
              "Withy Hall;Withy Hall\\nSkelderby\\nZZ4 3QZ;15.1;7.6;3;private",
              "Rushey Lea;Rushey Lea\\nOrrin\\nZZ4 8QZ;9.1;19.7;2;private",
              "Quillow Manor;Manor Cottages\\nNether Quillow\\nZZ7 5QZ;-12.1;12.1;3;private",
              "Blackthorn Farm;Blackthorn Farm\\nFennick End\\nZZ8 4QZ;-13.7;-9.1;4;livery",
              "Mere Cottage;Mere Cottage\\nHarrowmere\\nZZ8 6QZ;-25.8;-10.6;2;private",
              "Gallows Hill;Gallows Hill Farm\\nLong Pightle\\nZZ9 3QZ;-6.0;-21.2;3;private",
              "Swale Bridge;Bridge End\\nWexley Bottom\\nZZ9 8QZ;7.6;-22.6;2;private",
              "Thornfield Paddocks;Station Road\\nThornfield\\nZZ1 2QX;1.6;1.6;14;livery",
              "Hagg Wood;Hagg Wood Yard\\nHaldersham\\nZZ6 2QZ;22.6;-6.0;6;livery"),
          List.of(
              "Morwenna",
              "Callum",
              "Bethan",
              "Oriel",
              "Tamsin",
              "Gwilym",
              "Isla",
              "Hester",
              "Rufus",
              "Elspeth",
              "Jem",
              "Nerys",
              "Piers",
              "Verity",
              "Dilys",
              "Angus",
              "Rowena",
              "Silas",
              "Marged",
              "Clemency"),
          List.of(
              "Trewhitt",
              "Fallowdene",
              "Okonedo",
              "Brackenby",
              "Pellowe",
              "Starling-Hythe",
              "Varley",
              "Quaife",
              "Ormsgill",
              "Hathersedge",
              "Lanyon",
              "Dacre-Wynn",
              "Thirkettle",
              "Mossop",
              "Ravensdale",
              "Eldred",
              "Corvane",
              "Snaith",
              "Wintersgill",
              "Pargeter"),
          List.of(
              "Zoë Beauchêne",
              "Søren Ødegård-Lunn",
              "Ελένη Παπαδημητρίου",
              "Оксана Довженченко",
              "Łucja Żurawińska"),
          HorseNames.BRITISH,
          List.of(
              days("2025-10-20", "2025-10-24"),
              days("2025-12-24", "2026-01-03"),
              days("2026-02-16", "2026-02-20"),
              days("2026-05-25", "2026-05-30"),
              days("2026-08-03", "2026-08-15")),
          "000",
          LocalDate.of(2025, 9, 1),
          LocalDate.of(2026, 10, 31));

  /** Blocks of rows, each under the headings it uses. */
  static final String WORK =
      """
      # Work|Kind|Price|Tax|Shaping|Trim min|Compare as|From
      Trim|job|36|S|none|20|Trim|2025-01-01
      Hoof repair||28|S|none|12|Repair|2025-01-01
      Passport check||0|Z|none|5||2025-01-01
      Trim||38|S|none|20|Trim|2026-04-01
      # Work|Kind|Price|Tax|From
      Call-out|fee|22|S|2025-01-01
      No-show|fee|26|S|2025-01-01
      # Work|Price|Tax|Shoe|Shoes|Shaping|Nail|Nails per shoe|Trim min|Shape min|Nail min|Grind min|Forge min|Compare as|From
      Fronts and trim|72|S|Concave|2|hot|Nail 5|7|20|12|10||10|Fronts|2025-01-01
      Full set|98|S|Concave|4|hot|Nail 5|7|20|24|20||20|Full set|2025-01-01
      Refit own shoes|86|S|Concave|4|hot|Nail 5|7|20|15|20||14|Refit|2025-01-01
      Handmade set|135|S|Handmade fullered|4|hot|Nail 5|7|20|22|20|5|22|Full set|2025-01-01
      Aluminium set|122|S|Aluminium sport|4|cold|Nail 6 light|6|20|28|20|5|||2025-01-01
      Bar shoes and pads|120|S|Handmade bar shoe|2|hot|Nail 5|7|20|15|11|5|16||2025-01-01
      Lost shoe|22|S|Concave|1|cold|Nail 5|7|5|6|6||||2025-01-01
      Fronts and trim|76|S|Concave|2|hot|Nail 5|7|20|12|10||10|Fronts|2026-04-01
      Full set|104|S|Concave|4|hot|Nail 5|7|20|24|20||20|Full set|2026-04-01
      Refit own shoes|92|S|Concave|4|hot|Nail 5|7|20|15|20||14|Refit|2026-04-01
      Handmade set|145|S|Handmade fullered|4|hot|Nail 5|7|20|22|20|5|22|Full set|2026-04-01
      Aluminium set|130|S|Aluminium sport|4|cold|Nail 6 light|6|20|28|20|5|||2026-04-01
      Bar shoes and pads|128|S|Handmade bar shoe|2|hot|Nail 5|7|20|15|11|5|16||2026-04-01
      Lost shoe|24|S|Concave|1|cold|Nail 5|7|5|6|6||||2026-04-01
      """;

  /** Blocks of rows, each under the headings it uses. */
  static final String MATERIALS =
      """
      # Item|Kind|Size|Unit|Unit cost|Reorder at|Supplier|From
      Concave|keg|000|piece|3.10|12|Marrowby Farriers' Supply|2025-01-01
      Concave|keg|00|piece|3.25|20|Marrowby Farriers' Supply|2025-01-01
      Concave|keg|0|piece|3.40|30|Marrowby Farriers' Supply|2025-01-01
      Concave|keg|1|piece|3.60|40|Marrowby Farriers' Supply|2025-01-01
      Concave|keg|2|piece|3.85|24|Marrowby Farriers' Supply|2025-01-01
      Concave|keg||piece|3.60||Marrowby Farriers' Supply|2025-01-01
      Concave|keg|0|piece|3.60|30|Marrowby Farriers' Supply|2026-03-01
      Concave|keg|1|piece|3.80|40|Marrowby Farriers' Supply|2026-03-01
      Concave|keg|2|piece|4.05|24|Marrowby Farriers' Supply|2026-03-01
      Heavy keg|keg||piece|5.80|8|Marrowby Farriers' Supply|2025-01-01
      Aluminium sport|aluminium||piece|9.40|8|North Fen Metals|2025-01-01
      Propane|gas||kg|2.60||Thornfield Gas Bottles|2025-01-01
      Rasp|sundry||piece|19.50|2|Marrowby Farriers' Supply|2025-01-01
      # Item|Kind|Size|Unit|Length mm|Cut mm|Bar|Making min|Making forge min|From
      Handmade fullered|handmade|0|piece|300|3|Bar 20 x 8|15|12|2025-01-01
      Handmade fullered|handmade|1|piece|320|3|Bar 20 x 8|16|12|2025-01-01
      Handmade fullered|handmade||piece|330|3|Bar 20 x 8|17|13|2025-01-01
      Handmade bar shoe|handmade||piece|430|4|Bar 25 x 10|28|20|2025-01-01
      # Item|Kind|Unit|Unit cost|Section|Bar length mm|Reorder at|Supplier|From
      Bar 20 x 8|bar|bar|8.60|20 x 8 mm|3000|3|North Fen Metals|2025-01-01
      Bar 25 x 10|bar|kg|2.30|25 x 10 mm||6|North Fen Metals|2025-01-01
      # Item|Kind|Unit|Per pack|Pack cost|Reorder at|Supplier|From
      Nail 4 slim|nail|pack|250|23.50|250|Marrowby Farriers' Supply|2025-01-01
      Nail 5|nail|pack|250|24.50|500|Marrowby Farriers' Supply|2025-01-01
      Nail 6 light|nail|pack|250|27|150|Marrowby Farriers' Supply|2025-01-01
      Nail 7 heavy|nail|pack|250|31|150|Marrowby Farriers' Supply|2025-01-01
      # Item|Kind|Unit|Unit cost|Price|Reorder at|Supplier|From
      Leather pad|pad|pair|8.80|13|4|Marrowby Farriers' Supply|2025-01-01
      Pad packing|packing|piece|1.40|3|4|Marrowby Farriers' Supply|2025-01-01
      Stud|stud|piece|1.10|4|16|Marrowby Farriers' Supply|2025-01-01
      Hoof adhesive|adhesive|piece|11.50|22|2|Marrowby Farriers' Supply|2025-01-01
      """;

  static final Map<String, Buying> BUYING =
      Map.ofEntries(
          Map.entry("Concave", new Buying("piece", 1, 10, "Marrowby Farriers' Supply")),
          Map.entry("Heavy keg", new Buying("piece", 1, 4, "Marrowby Farriers' Supply")),
          Map.entry("Aluminium sport", new Buying("piece", 1, 4, "North Fen Metals")),
          Map.entry("Bar 20 x 8", new Buying("bar", 1, 4, "North Fen Metals")),
          Map.entry("Bar 25 x 10", new Buying("kg", 1, 6, "North Fen Metals")),
          Map.entry("Nail 4 slim", new Buying("pack", 250, 1, "Marrowby Farriers' Supply")),
          Map.entry("Nail 5", new Buying("pack", 250, 2, "Marrowby Farriers' Supply")),
          Map.entry("Nail 6 light", new Buying("pack", 250, 1, "Marrowby Farriers' Supply")),
          Map.entry("Nail 7 heavy", new Buying("pack", 250, 1, "Marrowby Farriers' Supply")),
          Map.entry("Leather pad", new Buying("pair", 2, 4, "Marrowby Farriers' Supply")),
          Map.entry("Pad packing", new Buying("piece", 1, 6, "Marrowby Farriers' Supply")),
          Map.entry("Stud", new Buying("piece", 1, 50, "Marrowby Farriers' Supply")),
          Map.entry("Hoof adhesive", new Buying("piece", 1, 2, "Marrowby Farriers' Supply")),
          Map.entry("Rasp", new Buying("piece", 1, 2, "Marrowby Farriers' Supply")));

  static final Map<String, String> BARS =
      Map.of("Handmade fullered", "Bar 20 x 8", "Handmade bar shoe", "Bar 25 x 10");

  static final Map<String, Double> BARS_PER_SHOE =
      Map.of("Handmade fullered", 0.1085, "Handmade bar shoe", 0.852);

  /** Category; supplier; net; every so many days (30s are months); days after the start. */
  static final List<String> EXPENSES =
      List.of(
          "Rent;Thornfield Estates;240;30;0",
          "Phone;Fenline Telecom;31;30;4",
          "Fuel for vehicle;Marrowby Garage;58.4;7;2",
          "Propane gas;Thornfield Gas Bottles;49.4;21;3",
          "Insurance;Shires Mutual Cover;612;360;25",
          "Vehicle insurance;Shires Mutual Cover;870;360;41",
          "Vehicle service;Marrowby Garage;285.5;180;63",
          "Accountant;Quaife Bookkeeping;690;360;120",
          "Training;County Farriery Days;320;360;150",
          "Tools;Marrowby Farriers' Supply;118.7;60;12",
          "Workwear;Marrowby Farriers' Supply;86.4;120;30",
          "Registration;Farriers' register;180;360;110",
          "Bank charges;Fen and Wold Bank;8;30;27",
          "Stationery;Skelderby Post Office;17.3;90;18",
          "Power for the forge;Wold Electricity;52;30;8",
          "Private;Marrowby Garage;42;360;200");

  static final String SETTINGS =
      """
      Business name|Trewhitt & Daughter, Farriers
      Address|The Old Smithy\\nStation Road\\nThornfield\\nZZ1 2QX
      Email|forge@trewhitt.example
      Phone|01632 960117
      Registration|Registered farrier 00-0000 (sample)
      Tax number|GB 123 4567 82
      Payment text|Please pay by bank transfer and quote the invoice number. Thank you.
      IBAN|GB82 WEST 1234 5698 7654 32
      BIC|WESTGB2L
      Logo|thornfield-logo.png
      Payment link|https://pay.trewhitt.example/
      Country|GB
      Currency|GBP
      Language|en
      Units|metric
      Distance unit|miles
      Date order|dmy
      Tax regime|uk
      Prices include tax|yes
      Tax on|invoice
      Input tax recovered|yes
      Terms days|14
      Callback days|14
      Invoice pattern|{yyyy}-{seq:4}
      Next invoice number|1
      Hourly wage|28
      Helper wage|11.50
      Vehicle cost per distance|0.45
      Gas cost per kg|2.60
      Sundries per horse|2.20
      Hours per year|1500
      Gas burn kg per hour|0.75
      Forge setup min|6
      Forge setup gas min|5
      Lead days|7
      Year starts|April
      Tax basis|cash
      Birth year|1985
      Stop age|66
      Weekly hours limit|45
      Yearly hours limit|1800
      Horses per day limit|9
      From address|forge@trewhitt.example
      SMTP host|smtp.trewhitt.example
      SMTP port|587
      SMTP user|forge@trewhitt.example
      Website|https://trewhitt.example/
      """;

  static final String TAX =
      """
      S|VAT standard rate|20|standard|2011-01-04
      R|VAT reduced rate|5|reduced|1997-09-01
      Z|VAT zero rate|0|zero|1973-04-01
      E|Exempt from VAT|0|exempt|1973-04-01
      O|Outside the scope|0|outside scope|1973-04-01
      """;

  static final String ASSETS =
      """
      Van|2023-05-12|14800|main pool|88||
      Gas forge|2024-02-03|1180|main pool|100||
      Anvil and stand|2019-09-20|940|main pool|100||
      Stall jack and bench|2025-11-08|465|main pool|100||
      Old van|2018-03-01|9600|main pool|85|2025-10-06|2900
      Laptop|2026-01-14|620|main pool|60||
      """;

  static final String HEADINGS =
      """
      Clients||Owners
      Horses|Every|Interval weeks
      Visits|Remarks|Notes
      """;

  private ThornfieldMetric() {}

  static LocalDate[] days(String first, String last) {
    return new LocalDate[] {LocalDate.parse(first), LocalDate.parse(last)};
  }
}
