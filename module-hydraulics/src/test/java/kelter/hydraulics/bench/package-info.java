/**
 * Tables and trials that are made by running the module: the effects of the faults and how well
 * readings tell them apart. Nothing here is a test of a figure against the outside.
 */
package kelter.hydraulics.bench;
