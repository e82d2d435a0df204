package org.capwright.fitup;

/**
 * How much of an outline readings tell.
 *
 * @param radius whether its size is known
 * @param shift directions in which its place is known: 0, 1 or 2
 * @param ovality parts of its ovality that are known: 0, 1 or 2
 */
public record Terms(boolean radius, int shift, int ovality) {
    /**
     * How many numbers are fitted.
     *
     * @return 0 to 5
     */
    public int count() {
        return (radius ? 1 : 0) + shift + ovality;
    }
}
