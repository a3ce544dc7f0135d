/** Parts that are hardly more than a contact or a conductor: switches, fuses, plugs, harnesses. */
package kelter.electrical.switching;
