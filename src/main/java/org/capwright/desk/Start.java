package org.capwright.desk;

import java.awt.GraphicsEnvironment;
import java.io.PrintWriter;
import org.capwright.cli.Main;

/** Where the program begins: the command line where there is a command, else the window. */
public final class Start {
    private Start() {
    }

    /**
     * Starts the program.
     *
     * @param args a command and its words; or nothing, or a job file, for the window
     */
    public static void main(String[] args) {
        boolean window = args.length == 0 || args.length == 1 && args[0].endsWith(".json");
        if (!window) {
            System.exit(Main.run(args, new PrintWriter(System.out, true), new PrintWriter(System.err, true)));
        } else if (GraphicsEnvironment.isHeadless()) {
            System.err.println("There is no display to open the window on. Without one, use the commands: capwright --help");
            System.exit(2);
        } else {
            WindowProgram.open(args);
        }
    }
}
