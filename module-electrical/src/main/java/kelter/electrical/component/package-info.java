/**
 * The electrical parts of an appliance: what can be measured or seen on them, how, and what can
 * hurt. Words only; no limits and no faults.
 */
package kelter.electrical.component;
