/**
 * The rules of the house, held against the compiled code of all parts. The rules take the root of
 * the packages, so that the same rules can be shown to fail on the small house under {@code
 * broken}.
 */
package kelter.cli.architecture;
