/**
 * The command line: {@code check}, {@code buys}, {@code figures} and {@code cut}, each on one job file, {@code stamp} on
 * a written file, {@code printer} on what printers get wrong. No axes and no units of its own:
 * a command reads the job, hands it to the core and prints or writes what comes back. Exit codes are in {@link
 * org.capwright.cli.Exit}. May import everything but the window, and picocli.
 *
 * <p>Compromises: output has no colours, so that it reads the same in a file and on a screen.
 */
package org.capwright.cli;
