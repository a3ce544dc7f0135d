/** Where a figure comes from and what that is worth. */
package kelter.core.source;
