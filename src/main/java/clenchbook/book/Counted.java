package clenchbook.book;

import java.util.Optional;

/**
 * An item with a count, as in {@code pads 2} or {@code 0: 2}.
 *
 * @param name the item or size as written, never empty
 * @param count how many; empty when none was written
 */
public record Counted(String name, Optional<Integer> count) {}
