package org.capwright.desk.session;

/** A view that works something out only while somebody looks at it. */
public interface Watched {
    /**
     * Says whether somebody looks.
     *
     * @param now true from when the view comes in sight until it goes
     */
    void setWatched(boolean now);
}
