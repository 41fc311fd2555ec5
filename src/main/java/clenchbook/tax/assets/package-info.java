/**
 * What an asset is and what it loses in a year. Immutable and thread-safe. Start at {@link
 * clenchbook.tax.assets.Depreciation}.
 */
@NullMarked
package clenchbook.tax.assets;

import org.jspecify.annotations.NullMarked;
