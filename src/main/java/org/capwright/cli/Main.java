package org.capwright.cli;

import java.io.PrintWriter;
import org.capwright.job.RefusedJobException;
import org.capwright.store.StoreException;
import org.capwright.store.UnreadableJobException;
import picocli.CommandLine;
import picocli.CommandLine.ParseResult;

/** Entry point of the program. */
public final class Main {
    private static final int WIDTH = 100;

    private Main() {
    }

    /**
     * Runs the command line and ends the program with its exit code.
     *
     * @param args the words typed
     */
    public static void main(String[] args) {
        System.exit(run(args, new PrintWriter(System.out, true), new PrintWriter(System.err, true)));
    }

    /**
     * Runs the command line.
     *
     * @param args the words typed
     * @param out where results go
     * @param err where problems go
     * @return 0 done, 1 a check is foul, 2 bad input, 3 a file could not be read or written
     */
    public static int run(String[] args, PrintWriter out, PrintWriter err) {
        return new CommandLine(new RootCommand())
                .setOut(out)
                .setErr(err)
                .setUsageHelpWidth(WIDTH)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
                .setExecutionExceptionHandler(Main::refuse)
                .execute(args);
    }

    private static int refuse(Exception problem, CommandLine command, ParseResult words) throws Exception {
        if (problem instanceof RefusedJobException || problem instanceof UnreadableJobException) {
            command.getErr().println(problem.getMessage());
            return Exit.BAD_INPUT;
        }
        if (problem instanceof StoreException) {
            command.getErr().println(problem.getMessage());
            return Exit.NO_FILE;
        }
        throw problem;
    }
}
