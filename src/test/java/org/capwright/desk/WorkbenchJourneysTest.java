package org.capwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import javafx.event.ActionEvent;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.Slider;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.capwright.desk.session.Session;
import org.capwright.desk.session.Shop;
import org.capwright.desk.view.Workbench;
import org.capwright.job.GutterInputs;
import org.capwright.store.DeskFolder;
import org.capwright.store.JobFiles;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What a person does at the window, on a screen that is not there. */
@ExtendWith(ApplicationExtension.class)
class WorkbenchJourneysTest {
    private static final Path DEMO = Path.of("demo-jobs", "kiln-room.json");
    private static final int SECONDS = 30;

    @TempDir
    static Path folder;
    private Session session;

    @BeforeAll
    static void noScreen() {
        System.setProperty("testfx.robot", "glass");
        System.setProperty("testfx.headless", "true");
        System.setProperty("glass.platform", "Monocle");
        System.setProperty("monocle.platform", "Headless");
        System.setProperty("prism.order", "sw");
        System.setProperty("prism.text", "t2k");
    }

    @Start
    private void start(Stage stage) {
        session = new Session(JobFiles.read(DEMO), Shop.of(new DeskFolder(folder.resolve("shop"))));
        new Workbench(session, new DeskFolder(folder.resolve("desk"))).show(stage);
    }

    @Test
    void itOpensOnACheckedCap(FxRobot robot) {
        assertThat(robot.lookup("#job-name").queryAs(Label.class).getText()).isEqualTo("Kiln room, pottery school");
        assertThat(robot.lookup("#check-title").queryAs(Label.class).getText()).contains("0 foul  0 tight  43 clear");
        assertThat(robot.lookup("#foot").queryAs(Label.class).getText()).contains("opens at 0.435 in w.g.");
        assertThat(list(robot, "#checks").getItems().size()).isEqualTo(43);
    }

    @Test
    void typingADiameterSolvesTheCapAnew(FxRobot robot) throws Exception {
        type(robot, "#field-stack-outsideDiameter", "20 in");
        assertThat(session.solvedProperty().get().cap().sleeve().insideRadiusMm()).isCloseTo((20 + 0.125) * 25.4 / 2,
                within(1e-9));
        assertThat(robot.lookup("#job-name").queryAs(Label.class).getText()).endsWith(" *");
    }

    @Test
    void badTextStaysInItsFieldWithAMessage(FxRobot robot) throws Exception {
        type(robot, "#field-stack-outsideDiameter", "wide");
        assertThat(robot.lookup("#field-stack-outsideDiameter").queryAs(TextField.class).getText()).isEqualTo("wide");
        assertThat(robot.lookup(".refusal").queryAllAs(Label.class)).anyMatch(label -> label.isVisible()
                && label.getText().contains("can't be read as a length"));
        assertThat(robot.lookup("#check-title").queryAs(Label.class).getText()).contains("1 refused");
        assertThat(session.solvedProperty().get()).isNotNull();
    }

    @Test
    void aFoulIsSeenMendedAndUndone(FxRobot robot) throws Exception {
        robot.interact(() -> session.type(GutterInputs.INSIDE_WIDTH, "2 in"));
        until(() -> title(robot).contains("1 foul"));
        until(() -> !robot.lookup(".apply").queryAll().isEmpty());
        robot.interact(() -> robot.lookup(".apply").queryAllAs(ButtonBase.class).iterator().next().fire());
        until(() -> title(robot).contains("0 foul"));
        assertThat(session.textProperty().get().at("gutter.insideWidth")).contains("2 1/4 in");
        robot.interact(() -> robot.lookup("#undo").queryAs(ButtonBase.class).fire());
        until(() -> title(robot).contains("1 foul"));
        robot.interact(() -> robot.lookup("#redo").queryAs(ButtonBase.class).fire());
        until(() -> title(robot).contains("0 foul"));
    }

    @Test
    void choosingACheckOpensTheLeavesToItsPlace(FxRobot robot) throws Exception {
        robot.interact(() -> list(robot, "#checks").getSelectionModel().select(0));
        double stop = Math.toDegrees(session.solvedProperty().get().cap().stopRad());
        until(() -> Math.abs(robot.lookup("#opening").queryAs(Slider.class).getValue() - stop) < 1e-6);
    }

    @Test
    void theArrowsMoveTheOpeningByADegree(FxRobot robot) throws Exception {
        robot.interact(() -> robot.lookup("#opening").queryAs(Slider.class).requestFocus());
        robot.press(KeyCode.RIGHT).release(KeyCode.RIGHT);
        until(() -> Math.abs(robot.lookup("#opening").queryAs(Slider.class).getValue() - 1) < 1e-6);
    }

    @Test
    void upStepsAFieldByASixteenth(FxRobot robot) throws Exception {
        robot.interact(() -> robot.lookup("#field-stack-slip").queryAs(TextField.class).requestFocus());
        robot.press(KeyCode.UP).release(KeyCode.UP);
        until(() -> session.textProperty().get().at("stack.slip").equals(Optional.of("3/16 in")));
    }

    @Test
    void unitsAtASwitchLeaveWhatWasTyped(FxRobot robot) throws Exception {
        robot.interact(() -> robot.lookup("#units").queryAs(ButtonBase.class).fire());
        until(() -> robot.lookup("#foot").queryAs(Label.class).getText().contains("586.0 mm wide"));
        assertThat(session.textProperty().get().at("stack.outsideDiameter")).contains("18 in");
    }

    @Test
    void darkIsRemembered(FxRobot robot) throws Exception {
        robot.interact(() -> robot.lookup("#dark").queryAs(ButtonBase.class).fire());
        until(() -> "dark".equals(new DeskFolder(folder.resolve("desk")).settings().get("look")));
        robot.interact(() -> robot.lookup("#dark").queryAs(ButtonBase.class).fire());
        until(() -> "light".equals(new DeskFolder(folder.resolve("desk")).settings().get("look")));
    }

    @Test
    void keysGoFromViewToView(FxRobot robot) throws Exception {
        robot.press(KeyCode.CONTROL, KeyCode.DIGIT3).release(KeyCode.DIGIT3, KeyCode.CONTROL);
        until(() -> robot.lookup(".tab-pane").queryAs(TabPane.class).getSelectionModel().getSelectedIndex() == 2);
        assertThat(list(robot, "#blanks").getItems().size()).isEqualTo(8);
    }

    @Test
    void whatIsTypedIsKeptAgainstACrash(FxRobot robot) throws Exception {
        type(robot, "#field-stack-outsideDiameter", "21 in");
        until(() -> new DeskFolder(folder.resolve("desk")).draft().flatMap(text -> text.at("stack.outsideDiameter")).equals(Optional.of("21 in")));
    }

    @Test
    void templatesAreWrittenInTheBackground(FxRobot robot) throws Exception {
        Path to = folder.resolve("written");
        robot.interact(() -> robot.lookup("#templates").queryAs(ButtonBase.class).fire());
        until(() -> robot.lookup("#export-folder").tryQuery().isPresent());
        robot.interact(() -> robot.lookup("#export-folder").queryAs(TextField.class).setText(to.toString()));
        robot.interact(() -> robot.lookup("#export-write").queryAs(ButtonBase.class).fire());
        until(() -> robot.lookup("#export-state").queryAs(Label.class).getText().endsWith("files written."));
        assertThat(to.resolve("templates.pdf")).exists();
    }

    @Test
    void enterGoesFromReadingToReadingAndTheVerdictFollows(FxRobot robot) throws Exception {
        view(robot, KeyCode.DIGIT5);
        until(() -> text(robot, "#fit-verdict").contains("CLEAR"));
        until(() -> robot.lookup("#reading-fit-stackGirth").queryAs(TextField.class).isFocused());
        robot.press(KeyCode.ENTER).release(KeyCode.ENTER);
        until(() -> robot.lookup("#reading-fit-stack-0-diameter").queryAs(TextField.class).isFocused());
        robot.interact(() -> robot.lookup("#reading-fit-hoodBore-0-diameter").queryAs(TextField.class).setText("20 in"));
        until(() -> text(robot, "#fit-advice").startsWith("Measure again"));
        robot.interact(session::undo);
        until(() -> text(robot, "#fit-verdict").contains("CLEAR"));
    }

    @Test
    void buildsAreDrawnBeforeCutting(FxRobot robot) throws Exception {
        view(robot, KeyCode.DIGIT5);
        until(() -> robot.lookup("#fit-before").tryQuery().isPresent());
        robot.interact(() -> robot.lookup("#fit-before").queryAs(ButtonBase.class).fire());
        until(() -> robot.lookup("#tolerance-run").tryQuery().isPresent());
        robot.interact(() -> robot.lookup("#tolerance-builds").queryAs(TextField.class).setText("500"));
        robot.interact(() -> robot.lookup("#tolerance-run").queryAs(ButtonBase.class).fire());
        until(() -> text(robot, "#tolerance-share").contains("keep every limit"));
    }

    @Test
    void sheetsAndPriceAreShownAndFollowARate(FxRobot robot) throws Exception {
        view(robot, KeyCode.DIGIT4);
        until(() -> text(robot, "#stock-summary").contains("sheets; no layout can use fewer"));
        view(robot, KeyCode.DIGIT6);
        until(() -> robot.lookup("#price-total").tryQuery().isPresent() && robot.lookup("#price-for-10").tryQuery().isPresent());
        String before = WaitForAsyncUtils.asyncFx(() -> text(robot, "#price-total")).get();
        robot.interact(() -> {
            TextField rate = robot.lookup("#shop-labourPerHour").queryAs(TextField.class);
            rate.setText("140");
            rate.fireEvent(new ActionEvent());
        });
        until(() -> !text(robot, "#price-total").equals(before));
    }

    @Test
    void helpIsSearched(FxRobot robot) throws Exception {
        robot.press(KeyCode.F1).release(KeyCode.F1);
        until(() -> robot.lookup("#help-search").tryQuery().isPresent());
        int all = list(robot, "#help-entries").getItems().size();
        robot.interact(() -> robot.lookup("#help-search").queryAs(TextField.class).setText("annulus"));
        until(() -> !list(robot, "#help-entries").getItems().isEmpty()
                && list(robot, "#help-entries").getItems().size() < all / 4);
        robot.interact(() -> robot.lookup("#help-search").query().getScene().getWindow().hide());
    }

    @Test
    void aPrinterIsMeasured(FxRobot robot) throws Exception {
        robot.interact(() -> robot.lookup("#templates").queryAs(ButtonBase.class).fire());
        until(() -> robot.lookup("#measure-printer").tryQuery().isPresent());
        robot.interact(() -> robot.lookup("#measure-printer").queryAs(ButtonBase.class).fire());
        until(() -> robot.lookup("#printer-name").tryQuery().isPresent());
        robot.interact(() -> {
            robot.lookup("#printer-name").queryAs(TextField.class).setText("office");
            robot.lookup("#printer-across").queryAs(TextField.class).setText("3 in");
            robot.lookup("#printer-keep").queryAs(ButtonBase.class).fire();
        });
        until(() -> text(robot, "#printer-state").contains("fit to page"));
        robot.interact(() -> {
            robot.lookup("#printer-across").queryAs(TextField.class).setText("");
            robot.lookup("#printer-keep").queryAs(ButtonBase.class).fire();
        });
        assertThat(new DeskFolder(folder.resolve("desk")).printers().all()).extracting(entry -> entry.scale().printer()).containsExactly("office");
    }

    private void view(FxRobot robot, KeyCode digit) {
        robot.press(KeyCode.CONTROL, digit).release(digit, KeyCode.CONTROL);
    }

    private static String text(FxRobot robot, String id) {
        return robot.lookup(id).tryQueryAs(Label.class).map(Label::getText).orElse("");
    }

    private static ListView<?> list(FxRobot robot, String id) {
        return robot.lookup(id).queryAs(ListView.class);
    }

    private static String title(FxRobot robot) {
        return robot.lookup("#check-title").queryAs(Label.class).getText();
    }

    private static void type(FxRobot robot, String field, String text) throws Exception {
        robot.interact(() -> robot.lookup(field).queryAs(TextInputControl.class).setText(text));
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** Waits on a condition, never for a time; looks at the scene on its own thread. */
    private static void until(BooleanSupplier condition) throws Exception {
        WaitForAsyncUtils.waitFor(SECONDS, TimeUnit.SECONDS, () -> WaitForAsyncUtils.asyncFx(condition::getAsBoolean).get());
        WaitForAsyncUtils.waitForFxEvents();
    }
}
