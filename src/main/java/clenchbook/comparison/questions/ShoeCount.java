package clenchbook.comparison.questions;

import clenchbook.book.MaterialKind;
import java.util.Optional;

/**
 * Shoes of one kind in a job.
 *
 * @param kind keg, handmade or aluminium; empty where the book does not say
 * @param count how many were nailed on
 */
public record ShoeCount(Optional<MaterialKind> kind, int count) {}
