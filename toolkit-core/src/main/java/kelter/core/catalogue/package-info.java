/**
 * What is known of machines beyond what stands in their jobs, as data: models that a shop has
 * looked at, and how they fill what a job leaves open. It knows neither files nor diagnosis.
 */
package kelter.core.catalogue;
