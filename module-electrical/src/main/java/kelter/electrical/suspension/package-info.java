/** What holds a tub and a machine in place: dampers, springs, imbalance switch, anchor bolts. */
package kelter.electrical.suspension;
