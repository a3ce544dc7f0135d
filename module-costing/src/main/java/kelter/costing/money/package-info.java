/**
 * Money over time: present value, annuities, annual cost. Amounts are plain numbers in one
 * currency, for comparing options and never for an invoice. Nothing here knows of machines, lives
 * or jobs.
 *
 * <p>Stability: may change.
 */
package kelter.costing.money;
