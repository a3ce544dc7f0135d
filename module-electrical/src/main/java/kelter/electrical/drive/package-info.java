/** Inverter drives, as far as they keep a charge. */
package kelter.electrical.drive;
