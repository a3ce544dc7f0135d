/** The motor of a compressor, by its three terminals; the refrigerant circuit stays shut. */
package kelter.electrical.compressor;
