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
            .help(
                "Version of the job file's form, so that an older program does not misread a newer file. Leave it as "
                    + "it is.");
    /** Name of the job, printed on every page. */
    public static final Input<String> NAME = Input.text("job.name", "job name").or("Untitled cap")
            .help(
                "Name of the job, printed on every page so that sheets of two jobs are not mixed up.");
    /** Who it is for. */
    public static final Input<String> CUSTOMER = Input.text("job.customer", "customer").help(
                "Who the cap is for, printed on the cut list and the quote. It changes nothing of the cap.");
    /** Remarks for the shop. */
    public static final Input<String> NOTES = Input.text("job.notes", "notes").help(
                "Remarks for the shop, printed on the cut list. They change nothing of the cap.");
    /** Revision of the job. */
    public static final Input<String> REVISION = Input.text("job.revision", "revision")
            .help(
                "Revision mark, printed on every page, so that an old drawing is not cut from. Change it whenever a "
                    + "size changes after printing.");
    /** Units that numbers without a unit have, and that output is printed in. */
    public static final Input<UnitSystem> UNITS = Input.bare("job.units", "units",
            Kind.choice(List.of(UnitSystem.values()), JobInputs::word)).or("in")
            .help("Inches or millimetres: for numbers typed without a unit, and for everything printed.");
    /** Fraction of an inch to print to. */
    public static final Input<Integer> FRACTION = Input.bare("job.fraction", "smallest fraction",
            Kind.choice(List.of(16, 32, 64), part -> "1/" + part)).or("1/32")
            .help(
                "Inches are printed to this fraction, with the rest in thousandths. Take what is marked on the shop's "
                    + "tapes.");

    /** All of them, in order. */
    static final Group GROUP = Group.of("job", "Job", VERSION, NAME, CUSTOMER, NOTES, REVISION, UNITS, FRACTION);

    private JobInputs() {
    }

    private static String word(UnitSystem system) {
        return system == UnitSystem.INCH ? "in" : "mm";
    }
}
