/**
 * The range of a figure, written once and used both where a person gives the figure and where a law
 * takes it. It knows nothing of pumps or hoses.
 */
package kelter.hydraulics.limit;
