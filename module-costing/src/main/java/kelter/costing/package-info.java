/**
 * The door of the costing module: what it can compute and how it weighs options. The laws
 * themselves stand in the sub-packages.
 */
package kelter.costing;
