/** Coffee grinders: their burrs, how long a dose takes, how far doses differ. */
package coffee.grinder;
