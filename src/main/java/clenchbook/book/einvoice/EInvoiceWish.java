package clenchbook.book.einvoice;

import java.util.Optional;

/**
 * Which structured invoices an owner gets, and where.
 *
 * @param form the owner's own choice; empty = the setting's
 * @param buyerReference what the owner wants to find on each invoice, such as a routing number;
 *     empty = nothing
 * @param address where structured invoices reach them, as typed; empty = their e-mail address
 */
public record EInvoiceWish(Optional<EInvoiceForm> form, String buyerReference, String address) {
  /** Nothing said. */
  public static final EInvoiceWish NONE = new EInvoiceWish(Optional.empty(), "", "");
}
