/** The command line: one small class a verb. */
package stokewell.cli;
