/** What a drum runs on: its bearing, rollers and the idler that tensions its belt. */
package kelter.electrical.drum;
