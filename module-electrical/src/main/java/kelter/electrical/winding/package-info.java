/** Motors, coils and three phases: balance, slip, impedance. Knows nothing of jobs. */
package kelter.electrical.winding;
