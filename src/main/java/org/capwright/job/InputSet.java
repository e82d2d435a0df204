package org.capwright.job;

import java.util.List;

/** A few inputs that recur together for several parts, such as what a sheet is made of. */
public interface InputSet {
    /**
     * The inputs of the set.
     *
     * @return in the order in which they are decided
     */
    List<Input<?>> inputs();
}
