/**
 * What holds for a shop from job to job: its instruments and their calibration, how sure a verdict
 * must be, who works there, its prices, its stock and the models it knows. It knows nothing of
 * files.
 *
 * <p>Stability: may change.
 */
package kelter.core.shop;
