/** An inverter drive: a motor drive, or the power stage of an induction hob. */
package kelter.electrical.inverter;
