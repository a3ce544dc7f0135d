/**
 * The folder of a shop: its profile, prices, stock, models and jobs. It is read only where somebody
 * names it, and hostile until read like all files.
 *
 * <p>Stability: may change.
 */
package kelter.core.file.shop;
