/**
 * Words of the tax pages that also stand in files: there in English, on a page in the farrier's
 * language. Immutable and thread-safe. Start at {@link clenchbook.tax.page.Wording}.
 */
@NullMarked
package clenchbook.tax.page;

import org.jspecify.annotations.NullMarked;
