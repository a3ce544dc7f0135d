/**
 * The shop's side of a job: what it must charge, what it reserves for call-backs and which spares
 * it carries. Nothing here knows of lives or of what the owner gains.
 *
 * <p>Stability: may change.
 */
package kelter.costing.shop;
