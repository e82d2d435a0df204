package org.capwright.job;

import java.util.List;
import org.capwright.units.UnitSystem;

/** What the job is called and how its numbers are written. */
public final class JobInputs {
    /** The newest version of job files this program reads. */
    public static final int NEWEST_VERSION = 1;
    /** Version of the job file's form. */
    public static final Input<Integer> VERSION = Input.count("capwright", "job file version")
            .between("1", Integer.toString(NEWEST_VERSION)).or(Integer.toString(NEWEST_VERSION))
            .help("Version of the job file's form.");
    /** Name of the job, printed on every page. */
    public static final Input<String> NAME = Input.text("job.name", "job name").or("Untitled cap")
            .help("Printed on every page.");
    /** Who it is for. */
    public static final Input<String> CUSTOMER = Input.text("job.customer", "customer").help("Who it is for.");
    /** Remarks for the shop. */
    public static final Input<String> NOTES = Input.text("job.notes", "notes").help("Remarks, printed on the cut list.");
    /** Revision of the job. */
    public static final Input<String> REVISION = Input.text("job.revision", "revision")
            .help("Revision mark, printed on every page.");
    /** Units that numbers without a unit have, and that output is printed in. */
    public static final Input<UnitSystem> UNITS = Input.bare("job.units", "units",
            Kind.choice(List.of(UnitSystem.values()), JobInputs::word)).or("in")
            .help("Inches or millimetres: for numbers typed without a unit, and for everything printed.");
    /** Fraction of an inch to print to. */
    public static final Input<Integer> FRACTION = Input.bare("job.fraction", "smallest fraction",
            Kind.choice(List.of(16, 32, 64), part -> "1/" + part)).or("1/32")
            .help("Inches are printed to this fraction, with the rest in thousandths.");

    /** All of them, in order. */
    static final Group GROUP = Group.of("job", "Job", VERSION, NAME, CUSTOMER, NOTES, REVISION, UNITS, FRACTION);

    private JobInputs() {
    }

    private static String word(UnitSystem system) {
        return system == UnitSystem.INCH ? "in" : "mm";
    }
}
