/**
 * What readings say for one fault model: how likely they are for a forecast, and the integrals over
 * the severities of one fault and of two. It knows one model at a time; what the models say
 * together is put together in {@code kelter.core.diagnosis.engine}.
 */
package kelter.core.diagnosis.likelihood;
