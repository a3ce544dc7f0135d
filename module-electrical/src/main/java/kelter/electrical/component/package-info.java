/**
 * Words that several electrical parts share: how things are measured, with which instruments, and
 * what can hurt; and the supply cord, of which several parts speak. No limits and no faults.
 */
package kelter.electrical.component;
