/**
 * Tables and trials that are made by running the module: what each fault moves, and how well
 * readings tell the faults apart. Nothing here holds a figure against the outside.
 */
package kelter.electrical.bench;
