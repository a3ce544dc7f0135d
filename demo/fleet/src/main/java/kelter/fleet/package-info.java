/** Learning from job books and diagnosing jobs on many machines, with Kelter's core and Spark. */
package kelter.fleet;
