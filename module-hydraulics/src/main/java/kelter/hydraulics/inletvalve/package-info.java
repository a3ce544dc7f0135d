/** The inlet valve with its screen, hose and supply: words, checks, physics and faults. */
package kelter.hydraulics.inletvalve;
