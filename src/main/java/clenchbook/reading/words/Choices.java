package clenchbook.reading.words;

import clenchbook.book.MaterialKind;
import clenchbook.book.PaymentKind;
import clenchbook.book.Reason;
import clenchbook.book.Shaping;
import clenchbook.book.Task;
import clenchbook.book.TaxKind;
import clenchbook.book.Unit;
import clenchbook.book.einvoice.EInvoiceForm;
import java.util.HashMap;
import java.util.Map;

/** The few words that a column may hold, with the other words in use for them. */
public final class Choices {
  public static final Map<String, Shaping> SHAPING =
      words(
          Map.of(
              Shaping.HOT,
                  "hot; h; hot shod; hot shoeing; hot fit; hot shaped; hot fitted; forge; yes hot",
              Shaping.COLD, "cold; c; cold shod; cold shoeing; cold fit; cold shaped; cold fitted",
              Shaping.NONE, "none; no; n/a; na; n; not shaped; nil; trim; bare; barefoot"));

  public static final Map<String, Reason> REASON =
      words(
          Map.of(
              Reason.ROUTINE, "routine; regular; normal; usual; cycle; reg; standard",
              Reason.LOST_SHOE,
                  "lost shoe; lost; lost shoes; pulled shoe; pulled; thrown shoe; thrown; cast"
                      + " shoe; sprung shoe; loose shoe; shoe lost",
              Reason.LAMENESS, "lameness; lame; unsound; abscess",
              Reason.NEW_HORSE, "new horse; new; first visit; first; new client",
              Reason.CANCELLED,
                  "cancelled; canceled; cancel; cancellation; called off; not done; cancelled"
                      + " visit"));

  public static final Map<String, PaymentKind> PAYMENT =
      words(
          Map.of(
              PaymentKind.PAYMENT, "payment; paid; payment received; received; pay",
              PaymentKind.DEPOSIT, "deposit; on account; prepayment; advance; down payment",
              PaymentKind.REFUND, "refund; refunded; paid back; repayment",
              PaymentKind.WRITTEN_OFF,
                  "written off; write off; writeoff; written-off; bad debt; forgiven",
              PaymentKind.TIP, "tip; tips; gratuity"));

  public static final Map<String, MaterialKind> MATERIAL =
      words(
          Map.ofEntries(
              Map.entry(
                  MaterialKind.KEG,
                  "keg; keg shoe; keg shoes; machine made; steel shoe; shoe; shoes; factory"),
              Map.entry(
                  MaterialKind.HANDMADE,
                  "handmade; hand made; handmade shoe; hand made shoe; handmade shoes; forged; own"
                      + " make"),
              Map.entry(
                  MaterialKind.ALUMINIUM,
                  "aluminium; aluminum; alu; alloy; aluminium shoe; aluminum shoe; aluminium"
                      + " shoes"),
              Map.entry(
                  MaterialKind.BAR, "bar; bars; bar stock; steel; steel bar; stock; flat bar"),
              Map.entry(MaterialKind.NAIL, "nail; nails"),
              Map.entry(MaterialKind.PAD, "pad; pads"),
              Map.entry(MaterialKind.STUD, "stud; studs; cork; corks; calk; calks; caulks"),
              Map.entry(MaterialKind.ADHESIVE, "adhesive; adhesives; glue; glues"),
              Map.entry(MaterialKind.PACKING, "packing; packings; silicone; hoof packing; putty"),
              Map.entry(MaterialKind.GAS, "gas; propane; lpg; butane; forge gas; fuel"),
              Map.entry(
                  MaterialKind.SUNDRY,
                  "sundry; sundries; other; misc; miscellaneous; consumable; consumables; tool;"
                      + " tools")));

  public static final Map<String, Unit> UNIT =
      words(
          Map.of(
              Unit.PIECE, "piece; pieces; pc; pcs; each; ea; one; single; unit; units; item; shoe",
              Unit.PAIR, "pair; pairs; pr; prs",
              Unit.PACK, "pack; packs; box; boxes; packet; packets; pkt; bag; tub; case; carton",
              Unit.KG, "kg; kgs; kilo; kilos; kilogram; kilograms; kilogramme",
              Unit.BAR, "bar; bars; length; lengths; rod; rods"));

  public static final Map<String, TaxKind> TAX =
      words(
          Map.of(
              TaxKind.STANDARD, "standard; std; standard rate; standard rated; normal; full",
              TaxKind.REDUCED, "reduced; reduced rate; lower; low",
              TaxKind.ZERO, "zero; zero rate; zero rated; zero-rated; nil",
              TaxKind.EXEMPT, "exempt; exempted; exemption",
              TaxKind.OUTSIDE_SCOPE,
                  "outside scope; outside the scope; out of scope; outside; not taxed; no tax",
              TaxKind.REVERSE_CHARGE,
                  "reverse charge; reverse charged; reverse-charge; buyer pays; domestic reverse"
                      + " charge; steuerschuldnerschaft des leistungsempfängers; autoliquidation;"
                      + " inversión del sujeto pasivo; btw verlegd; verlegd"));

  public static final Map<String, EInvoiceForm> E_INVOICE =
      words(
          Map.of(
              EInvoiceForm.NO, "no; none; n; plain; pdf; nein; non; nee",
              EInvoiceForm.FACTUR_X, "factur-x; facturx; factur x; zugferd",
              EInvoiceForm.XRECHNUNG, "xrechnung; x-rechnung; x rechnung"));

  public static final Map<String, Task> TASK =
      words(
          Map.of(
              Task.TRIM, "trim; trimming",
              Task.SHAPE_HOT, "shape hot; hot shaping; shaping hot; hot; anvil",
              Task.SHAPE_COLD, "shape cold; cold shaping; shaping cold; cold; stall jack",
              Task.NAIL, "nail; nailing; nail on; nailing and clenching; clench; clenching",
              Task.MAKE, "make; making; making shoes; forging",
              Task.GRIND, "grind; grinding; finish; finishing",
              Task.DRIVE, "drive; driving"));

  /** Whether a row of Work is a fee. */
  public static final Map<String, Boolean> FEE =
      words(
          Map.of(
              false, "job; jobs; work; shoeing; trim",
              true, "fee; fees; call out; callout; call-out; charge; no show; no-show; surcharge"));

  private Choices() {}

  private static <T> Map<String, T> words(Map<T, String> written) {
    Map<String, T> words = new HashMap<>();
    written.forEach(
        (meaning, list) -> {
          for (String word : list.split(";")) {
            words.put(SameWords.bare(word), meaning);
          }
        });
    return Map.copyOf(words);
  }
}
