package org.capwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.capwright.blank.Writing;
import org.capwright.check.Check;
import org.capwright.export.JobTag;
import org.capwright.export.Money;
import org.capwright.export.NestFiles;
import org.capwright.export.figure.StockJson;
import org.capwright.job.JobReader;
import org.capwright.job.JobText;
import org.capwright.part.Cap;
import org.capwright.price.Names;
import org.capwright.stock.BarGroup;
import org.capwright.stock.SheetGroup;
import org.capwright.stock.ShopStock;
import org.capwright.stock.StockFit;
import org.capwright.stock.StockJob;
import org.capwright.stock.StockPlan;
import org.capwright.stock.bar.CutBar;
import org.capwright.stock.nest.SheetLayout;
import org.capwright.store.JobFiles;
import org.capwright.store.JobStamp;
import org.capwright.store.StagedFolder;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lays all blanks of one or several jobs out on stock sheets. */
@Command(name = "nest", description = "Lay all blanks of one or several jobs out on stock sheets, and cut their bars.")
final class NestCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "JOB", arity = "1..*", description = "The job files.")
    private List<Path> jobFiles;

    @Mixin
    private StockOption stock;

    @Option(names = "--to", paramLabel = "DIR",
            description = "A folder to write the sheets into: a PDF to scale, and each as SVG and DXF.")
    private Optional<Path> folder;

    @Option(names = "--json", description = "Print everything as JSON.")
    private boolean json;

    private ShopFormat format;

    @Override
    public Integer call() {
        ShopStock shop = stock.load();
        List<JobText> texts = jobFiles.stream().map(JobFiles::read).toList();
        List<Cap> caps = texts.stream().map(text -> StockFit.split(JobReader.read(text).orThrow(), shop)).toList();
        format = Writing.of(caps.get(0)).format();
        StockPlan plan = StockPlan.of(caps.stream().map(cap -> StockJob.of(cap, 1)).toList(), shop,
                stock.options());
        List<Check> misfits = plan.jobs().stream().flatMap(job -> StockFit.checks(job.blanks(), shop).stream()).toList();
        print(plan, misfits);
        folder.ifPresent(to -> write(to, plan, tag(caps, texts, misfits)));
        return plan.complete() ? Exit.DONE : Exit.FOUL;
    }

    /** Several jobs share a tag with all their names and stamps. */
    private static JobTag tag(List<Cap> caps, List<JobText> texts, List<Check> misfits) {
        List<JobTag> tags = new ArrayList<>();
        for (int i = 0; i < caps.size(); i++) {
            tags.add(JobTag.of(caps.get(i).job(), JobStamp.of(texts.get(i)), misfits));
        }
        return new JobTag(String.join("; ", tags.stream().map(JobTag::name).toList()), tags.get(0).revision(),
                String.join(" ", tags.stream().map(JobTag::stamp).toList()), tags.get(0).fouls());
    }

    private void write(Path to, StockPlan plan, JobTag tag) {
        List<Path> files = StagedFolder.fill(to, staging -> NestFiles.write(staging, plan, tag, format));
        if (!json) {
            files.forEach(file -> spec.commandLine().getOut().println(file));
        }
    }

    private void print(StockPlan plan, List<Check> misfits) {
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(StockJson.of(plan));
            return;
        }
        misfits.forEach(check -> out.println("foul: " + check.line(format) + " [" + check.limit().source() + "]"));
        plan.sheets().forEach(group -> print(out, group, plan.seed()));
        plan.bars().forEach(bar -> print(out, bar));
        out.println(String.format(Locale.ROOT, "sheets %d, at least %d whatever the layout; use %.1f %%; cost %s; scrap %s",
                plan.sheetCount(), plan.sheetBound(),
                100 * plan.use(), new Money(plan.shop().currency()).of(plan.sheetPrice()), format.mass(plan.scrapKg())));
        out.println(plan.shop().note());
    }

    private void print(PrintWriter out, SheetGroup group, long seed) {
        out.println(new Names(format).of(group.sheet()) + ": " + group.nest().words() + (group.nest().settled() ? ""
                : "; the clock ended the search (seed " + seed + "), another run may give another layout"));
        for (SheetLayout layout : group.nest().sheets()) {
            String rest = layout.remnant().map(one -> ", remnant " + new Names(format).of(one)).orElse("");
            out.println(String.format(Locale.ROOT, "  %s x %s: pieces %d, use %.1f %%%s%s", length(layout.size().lengthMm()),
                    length(layout.size().widthMm()),
                    layout.placements().size(), 100 * layout.usedMm2() / layout.size().areaMm2(), rest, layout.cuts().isEmpty()
                            ? "" : ", in shear cuts"));
        }
        group.nest().unplaced().forEach(demand -> out.println("  no sheet for " + demand.quantity() + " " + demand.piece()
                .name()));
    }

    private void print(PrintWriter out, BarGroup group) {
        out.println(new Names(format).bar(group) + (group.plan().proved() ? ": no plan costs less" : ""));
        for (CutBar bar : group.plan().bars()) {
            out.println("  " + length(bar.size().lengthMm()) + ": " + String.join(", ", bar.piecesMm().stream()
                    .map(this::length).toList())
                    + "; rest " + length(bar.restMm(group.kerfMm())));
        }
        group.plan().tooLongMm().forEach(mm -> out.println("  no bar for " + length(mm)));
    }

    private String length(double mm) {
        return format.length(Length.ofMm(mm));
    }
}
