/**
 * What is found by looking, or with a thermometer, before anything is opened: the room, the crumb
 * tray, the cover of a wave guide. Chances and spreads are from memory.
 */
package kelter.hydraulics.found;
