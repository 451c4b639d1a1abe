package slackwater.viewer.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFile;
import slackwater.viewer.panel.Page.Spot;
import slackwater.viewer.scene.Mark;
import slackwater.viewer.scene.Type;
import slackwater.viewer.scene.Units;
import slackwater.viewer.session.Action;
import slackwater.viewer.session.Session;
import slackwater.viewer.session.Side;
import slackwater.viewer.session.Stroke;

/** Controls as values: what they say, what they do, and that all of it has room. */
class PanelTest {
    private static final Type TYPE = (text, size) -> 0.6 * size * text.length();
    private static final double[] NOWHERE = {-1, -1};

    @TempDir
    private Path folder;
    private final Typing typing = new Typing();
    private Session session;

    @BeforeEach
    void open() throws Exception {
        Path file = folder.resolve("terrace-120.toml");
        Files.copy(Path.of("..", "scenarios", "terrace-120.toml"), file);
        session = new Session(List.of(Side.live(ScenarioFile.open(file), () -> 0.04, 1)), Units.METRIC);
    }

    @AfterEach
    void close() {
        session.close();
    }

    private Page page() {
        return Panel.page(session, typing, TYPE, new double[] {900, 0}, NOWHERE);
    }

    private void click(String name) {
        page().named(name).orElseThrow(() -> new AssertionError("no control " + name)).action().run();
    }

    private Scenario now() {
        return session.side().scenario();
    }

    @Test
    void buttonsDoWhatTheirKeysDo() {
        click(Action.STREAMLINES.name());
        assertTrue(session.showing().layers().stream().anyMatch(layer -> layer.word().equals("streamlines")));
        session.perform(Action.NEXT);
        click("x more");
        assertEquals(0.05, now().pumps().get(0).atM().x(), 1e-12);
        click(Action.UNDO.name());
        assertEquals(0.04, now().pumps().get(0).atM().x(), 1e-12);
        assertTrue(page().named(Action.UNDO.name()).isEmpty(), "nothing is left to undo");
    }

    @Test
    void numbersAreTyped() {
        session.perform(Action.NEXT);
        click("yaw");
        "42.5".chars().forEach(typing::letter);
        typing.letter('x');
        assertTrue(words(page()).contains("42.5|"), words(page()).toString());
        assertTrue(typing.key(Stroke.of('A')), "letters belong to the field");
        typing.key(Stroke.of(Stroke.BACKSPACE));
        typing.key(Stroke.of(Stroke.BACKSPACE));
        typing.key(Stroke.of(Stroke.ENTER));
        assertEquals(42, Math.toDegrees(now().pumps().get(0).yawRad()), 1e-9);
        click("pitch");
        "80".chars().forEach(typing::letter);
        typing.key(Stroke.of(Stroke.ESCAPE));
        assertEquals(-8, Math.toDegrees(now().pumps().get(0).pitchRad()), 1e-9);
        assertEquals(Optional.empty(), typing.field());
        click("pitch");
        "--".chars().forEach(typing::letter);
        typing.key(Stroke.of(Stroke.ENTER));
        assertEquals(-8, Math.toDegrees(now().pumps().get(0).pitchRad()), 1e-9, "no number, no change");
    }

    /** Whatever is chosen, no words leave their panel and no two controls lie over each other. */
    @Test
    void everythingHasRoom() {
        for (int n = 0; n < 13; n++) {
            session.perform(Action.NEXT);
            session.perform(Action.PATTERN);
            Page page = page();
            for (Mark mark : page.marks()) {
                if (mark instanceof Mark.Words words) {
                    assertTrue(words.x() + TYPE.width(words.text(), words.size()) <= Panel.WIDTH, words.text());
                }
            }
            List<Spot> spots = page.spots();
            for (int i = 0; i < spots.size(); i++) {
                for (Spot later : spots.subList(i + 1, spots.size())) {
                    assertFalse(overlap(spots.get(i), later), spots.get(i).name() + " and " + later.name());
                }
            }
        }
    }

    private static boolean overlap(Spot one, Spot other) {
        return one.x() < other.x() + other.width() && other.x() < one.x() + one.width()
                && one.y() < other.y() + other.height() && other.y() < one.y() + one.height();
    }

    @Test
    void aQuestionCoversEverythingElse() {
        session.perform(Action.NEXT);
        session.perform(Action.OFF);
        session.perform(Action.SAVE);
        List<Page> pages = Sheets.over(session, TYPE, new double[] {1280, 800}, NOWHERE);
        assertEquals(1, pages.size());
        assertEquals("shade", pages.get(0).at(20, 500).orElseThrow().name());
        pages.get(0).named("no").orElseThrow().action().run();
        assertEquals(Optional.empty(), session.question());
        assertTrue(session.side().changed());
    }

    @Test
    void theHelpNamesEveryAction() {
        session.perform(Action.HELP);
        List<String> words = words(Sheets.over(session, TYPE, new double[] {1280, 800}, NOWHERE).get(0));
        for (Action action : Action.values()) {
            assertTrue(words.contains(action.words()), action + " is not in the help");
        }
    }

    private static List<String> words(Page page) {
        return page.marks().stream().filter(Mark.Words.class::isInstance).map(mark -> ((Mark.Words) mark).text())
                .toList();
    }
}
