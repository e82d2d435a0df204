package org.capwright.fitup.tolerance;

/** Is told how far a run has come, from any thread, and may end it. */
@FunctionalInterface
public interface Progress {
    /** Nobody looks. */
    Progress NONE = share -> true;

    /**
     * Takes notice.
     *
     * @param share how much of the run is done, 0 to 1
     * @return false to end the run
     */
    boolean goOn(double share);
}
