package org.capwright.air;

/** How hard the air pushes on a leaf: two forms that bracket it. Both estimates, the truth between them. */
public enum AirForce {
    /**
     * A plate's drag square to the flow, C_D = 1.17 as for a flat disc: {@code 1.17 rho V^2 / 2} an area, 0.585 of the jet
     * form. The lower bound.
     */
    DRAG(0.585),
    /**
     * A jet turned aside by the leaf loses all its upward momentum: {@code rho V^2} an area (normal force {@code rho A V^2 sin}
     * of a jet on a fixed inclined plate; textbook momentum, from memory). The upper bound.
     */
    JET(1);

    private final double momentumShare;

    AirForce(double momentumShare) {
        this.momentumShare = momentumShare;
    }

    /**
     * Force an area as a share of {@code rho V^2}.
     *
     * @return 0.585 or 1
     */
    public double momentumShare() {
        return momentumShare;
    }

    /**
     * Pressure on the part of the bore that the leaf intercepts.
     *
     * @param velocityPressurePa {@code rho V^2 / 2}, Pa
     * @return Pa
     */
    public double pressurePa(double velocityPressurePa) {
        return 2 * momentumShare * velocityPressurePa;
    }

    /**
     * The inverse: velocity pressure that gives a pressure on the leaf.
     *
     * @param pressurePa Pa
     * @return Pa
     */
    public double velocityPressurePa(double pressurePa) {
        return pressurePa / (2 * momentumShare);
    }
}
