/**
 * What each job cost and what it left: materials, gas, sundries, travel, overhead, labour, margins.
 * All types but the passes are immutable and thread-safe; this package uses money, measure, book,
 * job, charge and the stock ledger. Start at {@link clenchbook.costing.JobCosts}.
 */
package clenchbook.costing;
