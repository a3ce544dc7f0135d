/** The report on a job as one page of HTML. It knows no commands. */
package kelter.cli.report;
