/**
 * The diagnosis engine and the contract of the fault models that it reasons with. The modules give
 * physics; the engine reasons. Nothing here knows of pumps or heaters.
 */
package kelter.core.diagnosis;
