/**
 * What a reader of a job is told beside its result, since it is no mistake but may not be meant. It
 * knows neither commands nor the terminal.
 */
package kelter.cli.advice;
