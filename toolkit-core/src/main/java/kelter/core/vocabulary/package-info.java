/**
 * The words that modules bring: kinds of components, what can be observed on them and how, and what
 * a service figure of them is called. A job may use no other words.
 *
 * <p>Stability: stable.
 */
package kelter.core.vocabulary;
