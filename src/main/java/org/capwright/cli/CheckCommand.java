package org.capwright.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.capwright.blank.Writing;
import org.capwright.check.Check;
import org.capwright.check.Checks;
import org.capwright.check.Remedies;
import org.capwright.check.Verdict;
import org.capwright.job.CapJob;
import org.capwright.part.Cap;
import org.capwright.stock.ShopStock;
import org.capwright.stock.StockFit;
import org.capwright.units.ShopFormat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints the checks of a job as a table, fouls first. */
@Command(name = "check", description = "Check a job: will it clear, will it open, will it close, is there a sheet for every part."
        + " Fouls are printed first.")
final class CheckCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private JobOption job;

    @Mixin
    private StockFileOption stock;

    @Override
    public Integer call() {
        CapJob read = job.load();
        Optional<ShopStock> shop = stock.find();
        Cap cap = StockFileOption.cap(read, shop);
        List<Check> checks = new ArrayList<>(Checks.of(cap));
        shop.ifPresent(one -> checks.addAll(StockFit.checks(cap, one)));
        PrintWriter out = spec.commandLine().getOut();
        ShopFormat format = Writing.of(read).format();
        for (Check check : Checks.worstFirst(checks)) {
            print(out, cap, checks, check, format);
        }
        out.println(Verdicts.summary(checks));
        return Checks.worst(checks) == Verdict.FOUL ? Exit.FOUL : Exit.DONE;
    }

    private static void print(PrintWriter out, Cap cap, List<Check> checks, Check check, ShopFormat format) {
        out.println(String.format(Locale.ROOT, "%-5s  %-42s %s%s  %s  [%s]", check.verdict().word(), check.words(),
                check.quantity().words(check.value(), format), check.estimate() ? " (estimate)" : "",
                (check.limit().least() ? "at least " : "at most ") + check.quantity().words(check.limit().value(), format),
                check.limit().source()));
        check.place().filter(place -> check.verdict() != Verdict.CLEAR).ifPresent(place -> out.println(String.format(Locale.ROOT,
                "       at x %.1f, y %.1f, z %.1f mm, opening %.1f deg", place.at().x(), place.at().y(), place.at().z(),
                Math.toDegrees(place.openRad()))));
        if (check.verdict() != Verdict.CLEAR) {
            out.println("       " + (StockFit.made(check) ? StockFit.REMEDY
                    : Remedies.sentence(Remedies.of(cap, checks, check))));
        }
    }
}
