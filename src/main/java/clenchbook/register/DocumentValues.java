package clenchbook.register;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.billing.documents.TaxTotal;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.List;

/**
 * What a document says, value by value, as the register stores it and as its digest is made of it:
 * amounts in plain digits. A digest once written never changes, so neither may order nor form.
 */
final class DocumentValues {
  private DocumentValues() {}

  /** From the number to the number that is corrected; the state is not among them. */
  static List<Object> head(BilledDocument document) {
    return List.of(
        document.number(),
        document.series(),
        document.sequence(),
        document.kind().name(),
        document.owner(),
        document.month().toString(),
        document.date().toString(),
        document.due().toString(),
        document.corrects());
  }

  /** Net, tax and gross. */
  static List<Object> sums(BilledDocument document) {
    return List.of(
        document.net().toPlainString(),
        document.tax().toPlainString(),
        document.gross().toPlainString());
  }

  /** All of a line but its visit and what later versions added. */
  static List<Object> line(DocumentLine line) {
    return List.of(
        line.own(),
        line.sheet(),
        line.row(),
        line.horse(),
        line.work(),
        line.kind().name(),
        line.part().name(),
        line.item(),
        line.count(),
        line.shoeing(),
        line.reason(),
        line.sharePercent().toPlainString(),
        line.discountPercent().toPlainString(),
        line.amount().toPlainString(),
        line.net().toPlainString(),
        line.tax().code(),
        line.tax().name(),
        line.tax().ratePercent().toPlainString(),
        line.tax().exempt(),
        line.tax().included());
  }

  /** The tax of one code, without what later versions added. */
  static List<Object> total(TaxTotal total) {
    return List.of(
        total.code(),
        total.name(),
        total.ratePercent().toPlainString(),
        total.net().toPlainString(),
        total.tax().toPlainString());
  }

  /** Gives a statement its values, from the first place on. */
  static void bind(PreparedStatement statement, List<Object> values) throws SQLException {
    int place = 1;
    for (Object value : values) {
      statement.setObject(place++, value);
    }
  }
}
