package clenchbook.einvoice;

import clenchbook.book.Book;
import clenchbook.book.Names;
import clenchbook.book.Owner;
import clenchbook.book.TaxCategory;
import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.charge.ChargeLine;
import clenchbook.jobs.charge.JobCharges;
import clenchbook.jobs.charge.LineTax;
import clenchbook.problem.CellRef;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** What the book lacks for structured invoices and for the tax that the buyer owes. */
public final class EInvoiceRules {
  private final Book book;
  private final EInvoiceChoice choice;
  private final List<Problem> problems = new ArrayList<>();

  private EInvoiceRules(Jobs jobs) {
    book = jobs.index().book();
    choice = new EInvoiceChoice(jobs.index());
  }

  /**
   * The problems, whatever the month: of every owner who is billed anything in the book.
   *
   * @param jobs the book's jobs
   * @return each cell once, in the order of the owners' rows; empty for a book that asks for no
   *     structured invoice and no reverse charge
   */
  public static List<Problem> problems(Jobs jobs) {
    EInvoiceRules rules = new EInvoiceRules(jobs);
    rules.codes();
    boolean asked = rules.book.owners().stream().anyMatch(own -> rules.choice.of(own).isPresent());
    boolean reversed =
        rules.book.taxRates().stream()
            .anyMatch(rate -> TaxCategory.of(rate.kind()) == TaxCategory.AE);
    if (asked || reversed) {
      Map<String, Set<LineTax>> taxes = taxes(jobs);
      rules.book.owners().forEach(owner -> rules.owner(owner, taxes));
    }
    return rules.problems;
  }

  private void codes() {
    book.owners().forEach(own -> code(own.exemptReason(), own.source().at("Exempt reason")));
    book.taxRates().forEach(rate -> code(rate.reason(), rate.source().at("Reason")));
  }

  private void code(String reason, CellRef cell) {
    if (ExemptionCode.meant(reason) && ExemptionCode.of(reason).isEmpty()) {
      problems.add(
          Problem.warning(
              ProblemKind.EXEMPTION_CODE_UNKNOWN,
              cell,
              Message.of("einvoice.noSuchCode"),
              Message.of("einvoice.aCode"),
              reason));
    }
  }

  private static Map<String, Set<LineTax>> taxes(Jobs jobs) {
    JobCharges charges = new JobCharges(jobs.index());
    Map<String, Set<LineTax>> taxes = new TreeMap<>();
    for (Job job : jobs.all()) {
      for (ChargeLine line : charges.lines(job)) {
        taxes
            .computeIfAbsent(Names.key(line.payer().name()), unused -> new LinkedHashSet<>())
            .add(line.tax());
      }
    }
    return taxes;
  }

  private void owner(Owner owner, Map<String, Set<LineTax>> taxes) {
    Set<LineTax> own = taxes.getOrDefault(Names.key(owner.name()), Set.of());
    if (own.isEmpty()) {
      return;
    }
    Optional<EInvoiceProfile> profile = choice.of(owner);
    profile
        .map(rules -> EInvoiceNeeds.of(book, owner, rules, own))
        .orElse(List.of())
        .forEach(need -> incomplete(owner, need));
    boolean reversed = own.stream().anyMatch(tax -> tax.category() == TaxCategory.AE);
    if (reversed && owner.taxNumber().isBlank()) {
      add(
          ProblemKind.REVERSE_CHARGE_WITHOUT_NUMBER,
          owner.source().at("Tax number"),
          Message.of("einvoice.reverseNeedsNumber", "Tax number"),
          Message.of("einvoice.theirNumber"));
    }
  }

  private void incomplete(Owner owner, EInvoiceNeed need) {
    boolean own = need.cell().sheet().equals(owner.source().sheet());
    add(
        ProblemKind.E_INVOICE_INCOMPLETE,
        need.cell(),
        own
            ? Message.of("einvoice.lacksOfOwner", need.what(), owner.name())
            : Message.of("einvoice.lacks", need.what()),
        need.expected());
  }

  private void add(ProblemKind kind, CellRef cell, Message problem, Message expected) {
    boolean placed = cell.row() > 0;
    Problem found =
        placed
            ? Problem.warning(kind, cell, problem, expected, "")
            : Problem.note(kind, cell, problem, expected);
    if (!problems.contains(found)) {
      problems.add(found);
    }
  }
}
