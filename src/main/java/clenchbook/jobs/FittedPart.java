package clenchbook.jobs;

import clenchbook.book.Material;
import clenchbook.book.MaterialKind;
import java.util.Optional;

/**
 * Shoes of one item and size in a job.
 *
 * @param item the item's name as Materials spells it, or as written when unknown; may be empty
 * @param size the size; may be empty
 * @param count how many were nailed on
 * @param newCount how many of them were new
 * @param kind what kind of shoe it is; empty when unknown
 * @param material the row of Materials in force that day; empty when unknown
 */
public record FittedPart(
    String item,
    String size,
    int count,
    int newCount,
    Optional<MaterialKind> kind,
    Optional<Material> material) {}
