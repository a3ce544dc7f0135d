/** Reads what prices tell of tax, which stands alike in a job and in the prices of a shop. */
package kelter.core.file.tax;
