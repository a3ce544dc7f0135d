/**
 * What the machine as a whole does, weighed together with the states of all its groups: symptoms
 * that several groups can make, what somebody reported of them, and what that says of every group.
 * It knows numbers only: prior weights, severities by their place in a list, chances. What a
 * symptom is called and who asks for it is known elsewhere.
 */
package kelter.core.diagnosis.symptom;
