/**
 * Names in scripts that the text faces lack: measured and broken by the report library with faces
 * of their own, ordered by the rules of their direction, shaped, and embedded as far as they are
 * used. Start at {@link clenchbook.print.scripts.ScriptContext} and {@link
 * clenchbook.print.scripts.ShapedRun}.
 */
@NullMarked
package clenchbook.print.scripts;

import org.jspecify.annotations.NullMarked;
