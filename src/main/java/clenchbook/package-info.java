/**
 * The farrier's month from one workbook. The parts and what each may use stand in {@code
 * LayerTest}; start at {@link clenchbook.cli.Clenchbook}.
 */
@NullMarked
package clenchbook;

import org.jspecify.annotations.NullMarked;
