package clenchbook.reading.proposal;

import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.List;

/** Says what speaks for a meaning. */
final class Reasons {
  private Reasons() {}

  static Message of(Pair pair) {
    List<Message> reasons = new ArrayList<>();
    if (pair.name() >= Pair.LIKE) {
      pair.word().ifPresent(word -> reasons.add(Message.of("proposal.headingLike", word)));
    }
    if (pair.fit() > 0) {
      reasons.add(cellsLike(pair.contents()));
    } else if (pair.fit() < 0) {
      reasons.add(Message.of("proposal.cells.against"));
    }
    return reasons.isEmpty() ? Message.of("proposal.left") : Message.joined("; ", reasons);
  }

  private static Message cellsLike(Contents contents) {
    return switch (contents) {
      case DAY -> Message.of("proposal.cells.days");
      case MONEY, PAID -> Message.of("proposal.cells.money");
      case MINUTES -> Message.of("proposal.cells.minutes");
      case SHOES -> Message.of("proposal.cells.shoes");
      case NAILS -> Message.of("proposal.cells.nails");
      case FEW -> Message.of("proposal.cells.smallNumbers");
      case NUMBER, NUMBER_CODE -> Message.of("proposal.cells.numbers");
      case PERCENT -> Message.of("proposal.cells.percentages");
      case DISTANCE -> Message.of("proposal.cells.distances");
      case ODOMETER -> Message.of("proposal.cells.odometer");
      case WEEKS -> Message.of("proposal.cells.weeks");
      case QUANTITY -> Message.of("proposal.cells.quantities");
      case SIZE -> Message.of("proposal.cells.sizes");
      case SECTION -> Message.of("proposal.cells.sections");
      default -> wordsLike(contents);
    };
  }

  private static Message wordsLike(Contents contents) {
    return switch (contents) {
      case HORSE -> Message.of("proposal.cells.horses");
      case OWNER -> Message.of("proposal.cells.owners");
      case PLACE -> Message.of("proposal.cells.places");
      case WORK -> Message.of("proposal.cells.work");
      case ITEM, SHOE, NAIL, EXTRAS -> Message.of("proposal.cells.materials");
      case SUPPLIER -> Message.of("proposal.cells.suppliers");
      case EMAIL -> Message.of("proposal.cells.mailAddresses");
      case POSTCODE -> Message.of("proposal.cells.postcodes");
      case ADDRESS -> Message.of("proposal.cells.addresses");
      case COUNTRY -> Message.of("proposal.cells.countries");
      case LANGUAGE -> Message.of("proposal.cells.languages");
      case SETTING -> Message.of("proposal.cells.settings");
      default -> choicesLike(contents);
    };
  }

  private static Message choicesLike(Contents contents) {
    return switch (contents) {
      case SHAPING -> Message.of("proposal.cells.shaping");
      case YES -> Message.of("proposal.cells.yesAndNo");
      case REASON -> Message.of("proposal.cells.reasons");
      case METHOD -> Message.of("proposal.cells.waysOfPaying");
      case UNIT -> Message.of("proposal.cells.units");
      case MATERIAL -> Message.of("proposal.cells.kindsOfMaterial");
      case TAX -> Message.of("proposal.cells.kindsOfTax");
      case PAYMENT -> Message.of("proposal.cells.kindsOfPayment");
      case FEE -> Message.of("proposal.cells.jobAndFee");
      case CODE -> Message.of("proposal.cells.taxCodes");
      case E_INVOICE -> Message.of("proposal.cells.eInvoices");
      case NOTES -> Message.of("proposal.cells.notes");
      default -> Message.of("proposal.cells.words");
    };
  }
}
