/** The coil of a valve, lock or pump that works by attraction. */
package kelter.electrical.solenoid;
