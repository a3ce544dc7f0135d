/**
 * In which cases reports of symptoms can have come about, and which symptoms have to be tracked in
 * each of them, so that sums over all sets of symptoms stay small. It knows symptoms and reports,
 * no group and no posterior.
 */
package kelter.core.diagnosis.symptom.cases;
