package org.capwright.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.capwright.blank.Writing;
import org.capwright.check.Influence;
import org.capwright.check.Influences;
import org.capwright.check.Measure;
import org.capwright.part.Cap;
import org.capwright.units.ShopFormat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints what buys what. */
@Command(name = "buys", description = "Say what buys what: which inputs move a figure, by how much for one step, largest first.")
final class BuysCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private JobOption job;

    @Parameters(index = "1", paramLabel = "FIGURE", description = "One of: ${COMPLETION-CANDIDATES}.")
    private Measure measure;

    @Override
    public Integer call() {
        Cap cap = Cap.solve(job.load());
        ShopFormat format = Writing.of(cap).format();
        PrintWriter out = spec.commandLine().getOut();
        out.println(measure.words() + " now " + measure.quantity().words(measure.of(cap), format));
        for (Influence influence : Influences.of(cap, measure)) {
            out.println(String.format(Locale.ROOT, "%-34s %12s to %-12s %s%s", influence.input().path(), influence.from(),
                    influence.to(),
                    influence.change() > 0 ? "+" : "", measure.quantity().words(influence.change(), format)));
        }
        return Exit.DONE;
    }
}
