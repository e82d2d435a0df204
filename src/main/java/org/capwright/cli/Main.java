package org.capwright.cli;

/** Entry point of the program. */
public final class Main {
    private Main() {
    }

    /**
     * Runs the command line.
     *
     * @param args the words typed
     */
    public static void main(String[] args) {
        System.out.println("capwright");
    }
}
