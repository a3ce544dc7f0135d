/** Nameplates and service figures of a job, read into what the laws of this module take. */
package kelter.electrical.rating;
