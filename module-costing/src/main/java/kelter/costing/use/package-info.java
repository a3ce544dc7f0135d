/**
 * What a machine uses and how hard it is used: running cost a year, and life where the use is not
 * that of a household. Nothing here knows of repairs or jobs.
 *
 * <p>Stability: may change.
 */
package kelter.costing.use;
