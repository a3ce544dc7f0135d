/**
 * What stands alike in several files: ids, codes, nameplates, instruments, sources, and what prices
 * tell of tax.
 */
package kelter.core.file.field;
