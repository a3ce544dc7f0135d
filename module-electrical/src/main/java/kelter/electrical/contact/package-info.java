/**
 * What all paths share that should conduct: contacts, thermal links, protective conductors. It
 * knows no part.
 */
package kelter.electrical.contact;
