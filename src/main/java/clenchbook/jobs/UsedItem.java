package clenchbook.jobs;

import clenchbook.book.Material;
import java.util.Optional;

/**
 * Nails or an extra used in a job.
 *
 * @param item the item's name as Materials spells it, or as written when unknown
 * @param size its size; may be empty
 * @param count pieces
 * @param material the row of Materials in force that day; empty when unknown
 */
public record UsedItem(String item, String size, int count, Optional<Material> material) {}
