package clenchbook.billing.corrections;

import java.time.YearMonth;
import java.util.Optional;

/**
 * What a run was asked.
 *
 * @param month the month
 * @param includeEarlier true to bill earlier visits that no document bears
 * @param correct the number of an issued invoice to correct at once; empty for none
 * @param rowsHeld true when rows of Visits are held back, so that a missing row may be one of them
 */
public record BillingOptions(
    YearMonth month, boolean includeEarlier, Optional<String> correct, boolean rowsHeld) {}
