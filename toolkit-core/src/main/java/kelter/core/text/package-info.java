/** What holds for any text that somebody else wrote. It knows nothing of the trade. */
package kelter.core.text;
