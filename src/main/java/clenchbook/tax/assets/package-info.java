/**
 * The asset register: what each asset is, what is left of its basis, and what its sale brought.
 * Which tables depreciate it is its country's matter. Immutable and thread-safe. Start at {@link
 * clenchbook.tax.assets.DepreciatedAsset}.
 */
@NullMarked
package clenchbook.tax.assets;

import org.jspecify.annotations.NullMarked;
