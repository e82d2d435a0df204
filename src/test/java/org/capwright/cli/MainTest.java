package org.capwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MainTest {
    private static final String DEMO = Path.of("demo-jobs", "kiln-room.json").toString();

    @TempDir
    private Path folder;
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void withoutWordsItPrintsItsUse() {
        assertThat(run()).isEqualTo(0);
        assertThat(out.toString()).startsWith("Usage: capwright").contains("check", "figures", "cut");
    }

    @Test
    void helpAndVersion() {
        assertThat(run("--help")).isEqualTo(0);
        assertThat(out.toString()).startsWith("Usage: capwright");
        out.getBuffer().setLength(0);
        assertThat(run("--version")).isEqualTo(0);
        assertThat(out.toString().strip()).matches("Capwright \\d+\\.\\d+\\.\\d+(-SNAPSHOT)?");
    }

    @Test
    void checkPrintsEveryCheckWithItsLimitAndSource() {
        assertThat(run("check", DEMO)).isEqualTo(0);
        assertThat(out.toString().lines()).anyMatch(line -> line.startsWith("clear  leaf 1 to hood")
                && line.contains("at least 1/4 in") && line.endsWith("[common practice, no source]"));
        assertThat(out.toString().strip()).endsWith("0 foul, 0 tight, 43 clear");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void aFoulIsPrintedFirstWithAPlaceAndARemedy() throws IOException {
        Path job = foul();

        assertThat(run("check", job.toString())).isEqualTo(1);
        assertThat(out.toString().lines().limit(3)).satisfiesExactly(
                line -> assertThat(line).startsWith("foul   heel 1 to gutter wall"),
                line -> assertThat(line.strip()).startsWith("at x ").contains("opening 85.0 deg"),
                line -> assertThat(line.strip()).isEqualTo("widen the gutter to 2 1/4 in, or narrow the hinge flange to 3/16 in"));
    }

    @Test
    void cutRefusesAFoulJobUnlessToldTo() throws IOException {
        Path job = foul();
        Path to = folder.resolve("out");

        assertThat(run("cut", job.toString(), "--to", to.toString())).isEqualTo(1);
        assertThat(to).doesNotExist();
        assertThat(err.toString()).startsWith("foul: heel 1 to gutter wall").contains("Nothing was written.");
        assertThat(run("cut", job.toString(), "--to", to.toString(), "--anyway")).isEqualTo(0);
        assertThat(to.resolve("templates.pdf")).exists();
        assertThat(Files.readString(to.resolve("blanks/leaf-1.svg"))).contains("FOUL: heel 1 to gutter wall");
    }

    @Test
    void aShopFileStandsInForWhatTheJobLeavesOut() throws IOException {
        Path shop = folder.resolve("shop.json");
        Files.writeString(shop, "{\"limits\": {\"leafHood\": \"2 in\", \"cover\": \"1/4 in\"}, \"leaves\": {\"cover\": \"3/8 in\"}}");

        assertThat(run("check", DEMO, "--shop", shop.toString())).isEqualTo(1);
        assertThat(out.toString()).startsWith("foul   leaf 1 to hood");
        // the job types its cover, so the shop's does not count
        assertThat(out.toString().lines()).anyMatch(line -> line.matches("clear +cover +1/2 in +at least 1/4 in.*"));
    }

    @Test
    void buysListsTheLargestChangeFirst() {
        assertThat(run("buys", DEMO, "lift-pressure")).isEqualTo(0);
        assertThat(out.toString().lines().skip(1).findFirst().orElseThrow()).startsWith("leaves.gauge").contains("20 to 21");
    }

    private Path foul() throws IOException {
        String demo = Files.readString(Path.of(DEMO));
        return job(demo.replace("\"insideWidth\": \"2 1/4 in\"", "\"insideWidth\": \"2 in\""));
    }

    @Test
    void checkNamesEveryProblemOnALineOfItsOwn() throws IOException {
        Path job = job("{\"stack\": {\"outsideDiameter\": \"2 in\"}, \"leaves\": {\"count\": 3}}");

        assertThat(run("check", job.toString())).isEqualTo(2);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString().lines()).containsExactly(
                "stack.outsideDiameter: \"2 in\": must be 4 in to 96 in. Type a value in that range.",
                "leaves.count: \"3\": is not one of \"2\", \"4\", \"6\" (did you mean \"2\"?). Type one of these.");
    }

    @Test
    void malformedJobsAreBadInput() throws IOException {
        assertThat(run("check", job("{").toString())).isEqualTo(2);
        assertThat(err.toString()).contains("job.json, line 1, column ");
    }

    @Test
    void aMissingFileIsTold() {
        String missing = folder.resolve("none.json").toString();

        assertThat(run("figures", missing)).isEqualTo(3);
        assertThat(err.toString().strip()).isEqualTo(missing + " could not be read: there is no such file or folder.");
    }

    @Test
    void wrongWordsAreBadInput() {
        assertThat(run("paint", DEMO)).isEqualTo(2);
        assertThat(run("check")).isEqualTo(2);
        assertThat(run("cut", DEMO)).isEqualTo(2);
        assertThat(run("cut", DEMO, "--to", folder.resolve("x").toString(), "--paper", "napkin")).isEqualTo(2);
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void cutFillsAFolder() {
        Path to = folder.resolve("cut");

        assertThat(run("cut", DEMO, "--to", to.toString(), "--paper", "a4", "--whole")).isEqualTo(0);
        assertThat(to).isNotEmptyDirectory();
        assertThat(out.toString().lines().map(Path::of)).allMatch(Files::isRegularFile);
    }

    @Test
    void cutWritesNothingFromABadJob() throws IOException {
        Path job = job("{}");

        assertThat(run("cut", job.toString(), "--to", folder.resolve("cut").toString())).isEqualTo(2);
        assertThat(folder.resolve("cut")).doesNotExist();
    }

    @Test
    void cutIntoAFileIsTold() throws IOException {
        Path taken = Files.writeString(folder.resolve("taken"), "text");

        assertThat(run("cut", DEMO, "--to", taken.toString())).isEqualTo(3);
        assertThat(err.toString().strip()).isEqualTo(taken + " is a file. Name a folder to write into.");
        assertThat(taken).hasContent("text");
    }

    @Test
    void fitSaysVerdictAndAdvice() {
        assertThat(run("fit", DEMO)).isEqualTo(0);
        assertThat(out.toString()).startsWith("CLEAR: heel 1 to gutter wall").contains("best shift of the hood", "fit.gaps[5].gap");
        out.getBuffer().setLength(0);
        String off = Path.of("demo-jobs", "woodwork-class.json").toString();
        assertThat(run("fit", off)).isEqualTo(1);
        assertThat(out.toString()).startsWith("FOUL: leaf 1 to hood, -x side,").contains("do: shift the hood ");
    }

    @Test
    void fitTellsWhichCutPartsContradictEachOtherAndWhatToDo() throws IOException {
        String json = "{\"stack\": {\"outsideDiameter\": \"18 in\"}, \"held\": {\"sleeve\": \"cut\", \"standoffs\": \"cut\"},"
                + " \"fit\": {\"hoodBore\": [{\"diameter\": \"22 5/8 in\"}]}}";
        String job = job(json).toString();
        assertThat(run("fit", job)).isEqualTo(1);
        assertThat(out.toString()).contains("foul: web of the cut standoffs off what sleeve and hood ask for",
                "; make the standoffs anew, web outside 2 ");
        out.getBuffer().setLength(0);
        assertThat(run("fit", job, "--json")).isEqualTo(1);
        assertThat(out.toString()).contains("\"parts\" : [ \"sleeve\", \"hood\", \"standoffs\" ]",
                "\"remedy\" : \"make the standoffs anew");
    }

    @Test
    void fitWritesTheReadingSheet() {
        Path to = folder.resolve("sheet");
        assertThat(run("fit", DEMO, "--sheet", to.toString())).isEqualTo(0);
        assertThat(to.resolve("reading-sheet.pdf")).isNotEmptyFile();
    }

    @Test
    void fitPrintsItsFigures() {
        assertThat(run("fit", DEMO, "--json")).isEqualTo(0);
        assertThat(out.toString()).contains("\"fit.hood.radius\"", "\"fit.hood.ovality\"", "\"fit.hood.ovality.azimuth\"", "\"fit.hood.shift.x\"",
                "\"fit.hood.shift.y\"", "\"fit.leaf.1.least\"", "\"fit.shift.best.x\"", "\"fit.shift.best.y\"", "\"fit.shift.best.least\"",
                "\"verdict\" : \"clear\"");
    }

    @Test
    void toleranceGivesTheSameForTheSameSeed() {
        assertThat(run("tolerance", DEMO, "--builds", "2000", "--seed", "5", "--json")).isEqualTo(0);
        String first = out.toString();
        assertThat(first).contains("\"tolerance.share\"", "\"tolerance.margin.p01\"", "\"tolerance.margin.leaf.1.hood.p01\"");
        out.getBuffer().setLength(0);
        run("tolerance", DEMO, "--builds", "2000", "--seed", "5", "--json");
        assertThat(out.toString()).isEqualTo(first);
        out.getBuffer().setLength(0);
        assertThat(run("tolerance", DEMO, "--builds", "2000")).isEqualTo(0);
        assertThat(out.toString()).contains("of 2000 builds keep every limit", "heel 1 to gutter wall", "annulus");
    }

    @Test
    void tooFewBuildsAreRefused() {
        assertThat(run("tolerance", DEMO, "--builds", "10")).isEqualTo(2);
        assertThat(err.toString()).startsWith("--builds: \"10\": must be 100 to 10000000. Type a number in that range.");
    }

    @Test
    void figuresNameTheJob() {
        assertThat(run("figures", DEMO)).isEqualTo(0);
        assertThat(out.toString()).contains("Kiln room, pottery school");
    }

    private int run(String... words) {
        return Main.run(words, new PrintWriter(out, true), new PrintWriter(err, true));
    }

    private Path job(String json) throws IOException {
        return Files.writeString(folder.resolve("job.json"), json);
    }
}
