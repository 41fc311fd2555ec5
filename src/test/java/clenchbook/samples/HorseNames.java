package clenchbook.samples;

import java.util.List;

/** Stable names for the samples; they run out, as on any round, so some horses share a name. */
final class HorseNames {
  static final List<String> BRITISH =
      List.of(
          ("Bramble,Toby,Misty,Bracken,Conker,Biscuit,Dolly,Merlin,Pepper,Rosie,Teasel,Murphy,Jigsaw,Poppy,Rolo,Rupert,"
               + "Tansy,Bonny,Fergus,Clover,Nettle,Oscar,Sorrel,Widget,Heather,Boris,Thistle,Domino,Willow,Jester,"
               + "Captain,Hazel,Smudge,Kestrel,Badger,Minstrel,Folly,Marmite,Guinness,Juno,Chester,Tinker,Ember,Pippin,"
               + "Quince,Rowan,Sherbet,Trooper,Ulla,Vesper,Wizard,Yarrow,Ziggy,Apollo,Basil,Cassie,Drummer,Elsa,Flint,"
               + "Ginny,Harvey,Inca,Jasper,Kizzy,Lottie,Magpie,Noggin,Orchid,Paddy,Quaver,Rascal,Saffron,Tango,Una,"
               + "Velvet,Whisky,Barney,Cobweb,Duchess,Echo,Freckles,Gulliver,Hobbit,Ivy,Jacob,Kipper,Linnet,Mole,Nutmeg,"
               + "Otter,Plum,Rebel,Spider,Trigger,Umber,Vixen,Wren,Yeoman,Zebedee,Acorn,Buster,Cinders,Duke,Elf,Fudge,"
               + "Gypsum,Henna,Indigo,Jackdaw,Kelpie,Lupin,Mayfly,Nimrod,Onyx,Puffin,Reed,Sedge,Tawny,Urchin,Vole,Wagtail,"
               + "Alder,Beech,Cricket,Dotty,Eider,Finch,Garnet,Hector,Idris,Jemima,Knapweed,Lark,Marigold,Nelson,Oakley,"
               + "Pilgrim,Robin,Starling,Truffle,Usk,Violet,Woody,Angus,Bella,Toby,Misty,Cora,Dandy,Ebony,Ferdie,Grace,Holly,Iris")
              .split(","));

  static final List<String> AMERICAN =
      List.of(
          ("Dakota,Buckshot,Peaches,Ranger,Cisco,Daisy,Smoke,Pistol,Honey,Copper,Ginger,Dusty,Chico,Banjo,Scout,Sugar,"
               + "Rio,Buttons,Cash,Maverick,Whiskey,Penny,Boomer,Tex,Pecan,Lacy,Diesel,Sassy,Badge,Amigo,Hickory,"
               + "Bandit,Cricket,Doc,Echo,Freckles,Gambler,Hondo,Indy,Jewel,Kit,Levi,Mocha,Nugget,Okie,Pepper,Quincy,Rebel,Sierra,Tucker,Utah,Vegas,Wrangler,Yuma,Zip,Apache"
               + " Moon,Bailey,Chex,Dolly,Easter,Flash,Gator,Hank,Ivory,Jubilee,Katie,Lena,Moonpie,Nickel,Ollie,Pinto"
               + " Bean,Quick,Rusty,Skipper,Tango,Uno,Velvet,"
               + "Waylon,Xena,Yeller,Zane,Arrow,Blaze,Cotton,Dinah,Ember,Fancy,Goldie,Holly,Iris,Jasper,Kiowa,Lady,"
               + "Midnight,Noble,Oakie,Patches,Quest,Roany,Sage,Tumbleweed,Una,Vixen,Wiley,Yogi,Zeb,Amber,Biscuit,Cody,"
               + "Duke,Elmer,Fiddle,Grits,Hazel,Indigo,Joker,Kahlua,Lucky,Macho,Nellie,Oreo,Poco,Ruby,Slim,Trixie,Umber,"
               + "Violet,Willie,Abby,Bo,Chip,Dell,Etta,Flint,Gus,Hattie,Ike,Junior,Lark,Magic,Daisy,Ned,Opal,Prince,Red,Shasta,"
               + "Tonto,Vern,Whisper,Ace,Belle,Clyde,Dot,Esther,Fritz,Gabby,Homer,Irma,Jed,Lefty,Mabel,Noah,Otis,Pearl,"
               + "Ringo,Stormy,Taz,Wanda,Zuni,Alamo,Brandy,Comet,Dixon,Elvira,Frosty,Gizmo,Heidi,Ito,Jazz,Dakota,Daisy")
              .split(","));

  private HorseNames() {}
}
