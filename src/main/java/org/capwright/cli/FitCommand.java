package org.capwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.capwright.blank.Writing;
import org.capwright.check.Quantity;
import org.capwright.check.Verdict;
import org.capwright.export.JobTag;
import org.capwright.export.figure.FitJson;
import org.capwright.export.pdf.Paper;
import org.capwright.export.pdf.ReadingSheetBook;
import org.capwright.fitup.Advice;
import org.capwright.fitup.FitUp;
import org.capwright.fitup.FitVerdict;
import org.capwright.fitup.Residual;
import org.capwright.geom.Oval;
import org.capwright.geom.Vec2;
import org.capwright.job.CapJob;
import org.capwright.part.Cap;
import org.capwright.store.JobStamp;
import org.capwright.store.StagedFolder;
import org.capwright.units.Angle;
import org.capwright.units.ShopFormat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Says whether what was made will clear, where not, and what to do. */
@Command(name = "fit", description = "Fit what was measured: will the cap that was made clear, where not, and what to do.")
final class FitCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private JobOption jobOption;

    @Option(names = "--json", description = "Print everything as JSON.")
    private boolean json;

    @Option(names = "--sheet", paramLabel = "DIR", description = "Only write the reading sheet, reading-sheet.pdf, into this folder.")
    private Path sheet;

    @Option(names = "--paper", paramLabel = "P", defaultValue = "LETTER",
            description = "Paper of the sheet: ${COMPLETION-CANDIDATES}. Default: ${DEFAULT-VALUE}.")
    private Paper paper;

    private ShopFormat format;

    @Override
    public Integer call() {
        CapJob job = jobOption.load();
        format = Writing.of(job).format();
        if (sheet != null) {
            sheet(job);
            return Exit.DONE;
        }
        FitUp fitUp = FitUp.of(job);
        Advice advice = Advice.of(fitUp);
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(FitJson.of(fitUp, advice, JobStamp.of(job.text())));
        } else {
            verdict(out, fitUp);
            advice(out, fitUp, advice);
            details(out, fitUp);
        }
        return fitUp.verdict() == Verdict.FOUL ? Exit.FOUL : Exit.DONE;
    }

    private void sheet(CapJob job) {
        Cap cap = Cap.solve(job);
        JobTag tag = JobTag.of(job, JobStamp.of(job.text()), List.of());
        StagedFolder.fill(sheet, staging -> ReadingSheetBook.write(staging.resolve("reading-sheet.pdf"), cap, paper, tag, format))
                .forEach(file -> spec.commandLine().getOut().println(file));
    }

    private void verdict(PrintWriter out, FitUp fitUp) {
        FitVerdict deciding = fitUp.deciding();
        out.println(fitUp.verdict().word().toUpperCase(Locale.ROOT) + ": " + deciding.line(format)
                + (deciding.sure() ? "" : "; too close to call with these readings"));
        deciding.check().place().ifPresent(place -> out.println(String.format(Locale.ROOT,
                "  at x %.1f, y %.1f, z %.1f mm, opening %.1f deg", place.at().x(), place.at().y(), place.at().z(),
                Math.toDegrees(place.openRad()))));
        fitUp.rederived().conflicts().stream().filter(one -> one.check().verdict() != Verdict.CLEAR).forEach(one -> out.println(
                "foul: " + one.check().line(format) + " [" + one.check().limit().source() + "]; " + one.remedy()));
        fitUp.withoutSuspects().ifPresent(without -> out.println("  without the readings that disagree: "
                + without.verdict().word() + ", "
                + without.deciding().line(format)));
        fitUp.notes().forEach(note -> out.println("  " + note));
    }

    private void advice(PrintWriter out, FitUp fitUp, Advice advice) {
        advice.suggestions().forEach(one -> out.println("do: " + one.words() + " -> " + length(one.after()) + ", "
                + one.verdict().word()
                + (one.spoilsNothing() ? "" : "; something else becomes worse")));
        fitUp.verdicts().stream().filter(one -> one.check().id().contains(".hood.")).forEach(one -> out.println(one.verdict().word() + ": " + one.line(format)));
        Vec2 shift = advice.bestShift();
        out.println("best shift of the hood: x " + length(shift.x()) + ", y " + length(shift.y()) + "; least clearance "
                + length(advice.leastNowMm())
                + " -> " + length(advice.bestLeastMm()));
    }

    private void details(PrintWriter out, FitUp fitUp) {
        Oval hood = fitUp.work().hood();
        out.println("hood: mean inside radius " + length(hood.radiusMm()) + ", ovality " + length(hood.ovalityMm()) + " at "
                + format.angle(Angle.ofRad(hood.ovalityRad())) + ", centre x " + length(hood.centre().x()) + ", y "
                + length(hood.centre().y()));
        for (Residual one : fitUp.hood().residuals()) {
            out.println(String.format(Locale.ROOT, "  %-26s %s %16s  off %s%s", one.reading().path(),
                    format.angle(Angle.ofRad(one.reading().azimuthRad())),
                    length(one.reading().valueMm()), length(one.mm()), one.suspect() ? "  DISAGREES" : ""));
        }
        fitUp.rederived().changes(fitUp.drawn()).forEach(change -> out.println("blank " + change.name() + ": "
                + length(change.oldLengthMm()) + " x "
                + length(change.oldWidthMm()) + " -> " + length(change.newLengthMm()) + " x " + length(change.newWidthMm())));
    }

    private String length(double mm) {
        return Quantity.LENGTH.words(mm, format);
    }
}
