/** What all contacts share that should be closed. It knows no part. */
package kelter.electrical.contact;
