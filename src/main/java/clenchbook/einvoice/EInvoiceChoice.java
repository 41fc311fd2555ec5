package clenchbook.einvoice;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.book.Owner;
import clenchbook.book.Setting;
import clenchbook.book.einvoice.EInvoiceForm;
import clenchbook.jobs.BookIndex;
import java.util.Optional;

/** Which owners get structured invoices, and whether the book gives what a document needs. */
public final class EInvoiceChoice {
  private final BookIndex index;
  private final EInvoiceForm usual;

  /**
   * Reads the choice of a book.
   *
   * @param index the book by name
   */
  public EInvoiceChoice(BookIndex index) {
    this.index = index;
    usual = EInvoiceForm.of(index.book().settings().text(Setting.E_INVOICES));
  }

  /**
   * What an owner gets: their own choice, else the setting's where they have a tax number or a
   * buyer reference.
   *
   * @param owner the owner
   * @return the profile; empty for the plain invoice alone
   */
  Optional<EInvoiceProfile> of(Owner owner) {
    boolean business = !owner.taxNumber().isBlank() || !owner.eInvoice().buyerReference().isBlank();
    EInvoiceForm form = owner.eInvoice().form().orElse(business ? usual : EInvoiceForm.NO);
    return EInvoiceProfile.of(form);
  }

  /**
   * What a document goes out as.
   *
   * @param document an invoice or credit note
   * @return the profile; empty where its owner gets none, or the book lacks what it needs
   */
  public Optional<EInvoiceProfile> of(BilledDocument document) {
    Optional<Owner> owner = index.owner(document.owner());
    Optional<EInvoiceProfile> profile = owner.flatMap(this::of);
    if (profile.isEmpty() || document.lines().isEmpty()) {
      return Optional.empty();
    }
    boolean whole =
        EInvoiceNeeds.of(
                index.book(),
                owner.get(),
                profile.get(),
                document.lines().stream().map(DocumentLine::tax).distinct().toList())
            .isEmpty();
    return whole ? profile : Optional.empty();
  }
}
