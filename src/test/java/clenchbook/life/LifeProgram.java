package clenchbook.life;

import clenchbook.billing.documents.BilledDocument;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The program as the farrier meets it: commands over a book, and what its register holds. */
interface LifeProgram {
  /** Month-end; gives its exit code. */
  int monthEnd(Path book, YearMonth month, boolean includeEarlier, Optional<String> correct);

  /** Month-end cut short at some moment; any number means one. */
  void killed(Path book, YearMonth month, int moment);

  /** Send cut short at some moment; any number means one. */
  void killedSend(Path book, YearMonth month, int moment);

  /** Send without delivery; gives its exit code. */
  int send(Path book, YearMonth month);

  /** Send that marks nothing; gives its exit code. */
  int preview(Path book, YearMonth month);

  /** What the register would hold if a month were sent now; empty where that would be refused. */
  Optional<List<BilledDocument>> ifSent(Path book, YearMonth month);

  /** All documents of the register. */
  List<BilledDocument> documents();

  /** The bytes kept of each document. */
  Map<String, String> bytes();

  /** What month-end last said that each owner owes. */
  Map<String, BigDecimal> balances();

  /** All that month-end last wrote, to be compared with what it writes when repeated. */
  String written();
}
