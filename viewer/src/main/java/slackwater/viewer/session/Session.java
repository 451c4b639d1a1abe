package slackwater.viewer.session;

import java.util.List;
import java.util.Optional;
import slackwater.geometry.Vec3;
import slackwater.scenario.Scenario;
import slackwater.viewer.camera.Camera;
import slackwater.viewer.camera.Frame;
import slackwater.viewer.camera.Margins;
import slackwater.viewer.edit.Steps;
import slackwater.viewer.edit.Thing;
import slackwater.viewer.live.LiveFlow;
import slackwater.viewer.scene.Units;

/**
 * All that goes on at a window, of one tank or of two side by side. It belongs to one thread; nothing in it waits for
 * the water.
 */
public final class Session implements AutoCloseable {
    private final List<Side> sides;
    private final Showing showing = new Showing();
    private final Keeping keeping = new Keeping(this);
    private final Layering layering = new Layering(this);
    private int active;
    private final Viewpoint viewpoint;
    private Optional<Thing> selected = Optional.empty();
    private Optional<Vec3> pointM = Optional.empty();
    private Optional<Question> question = Optional.empty();
    private String message = "";
    private boolean help;
    private boolean screenshot;
    private boolean closed;

    /** @param sides one or two tanks */
    public Session(List<Side> sides, Units units) {
        this.sides = List.copyOf(sides);
        this.viewpoint = new Viewpoint(this.sides);
        showing.use(units);
        for (int n = 0; n < sides.size(); n++) {
            Side side = sides.get(n);
            side.number(1 + (int) sides.subList(0, n).stream().filter(side::sharesFile).count());
        }
        keeping.offer(this.sides);
    }

    public List<Side> sides() {
        return sides;
    }

    /** The tank that keys and the panel act on. */
    public Side side() {
        return sides.get(active);
    }

    public int active() {
        return active;
    }

    void activate(int index) {
        if (index != active) {
            active = index;
            selected = Optional.empty();
        }
    }

    public Showing showing() {
        return showing;
    }

    public Camera camera() {
        return viewpoint.camera();
    }

    void look(Camera other) {
        viewpoint.look(other);
    }

    /** The size of one tank's picture. */
    public Frame frame() {
        return viewpoint.frame();
    }

    /** Says how large the picture of one tank is; a tank that filled it goes on filling it. */
    public void resize(Frame other) {
        viewpoint.resize(other);
    }

    /** Says how much room the words about the tanks need. */
    public void leave(Margins words) {
        viewpoint.leave(words);
    }

    /** What is chosen, as long as the layout has it. */
    public Optional<Thing> selected() {
        return selected.filter(thing -> thing.in(side().scenario()));
    }

    void select(Optional<Thing> thing) {
        selected = thing;
    }

    /** The measuring point, metres. */
    public Optional<Vec3> pointM() {
        return pointM;
    }

    void point(Optional<Vec3> placeM) {
        pointM = placeM;
    }

    public Optional<Question> question() {
        return question;
    }

    public boolean help() {
        return help;
    }

    /** What there is to say: at most one thing at a time. */
    public String message() {
        return message;
    }

    public void say(String words) {
        message = words;
    }

    public boolean closed() {
        return closed;
    }

    /** Whether a picture is wanted; asking takes the wish away. */
    public boolean takesScreenshot() {
        boolean wanted = screenshot;
        screenshot = false;
        return wanted;
    }

    /** The steps in which things move. */
    public Steps steps() {
        return showing.units() == Units.METRIC ? Steps.METRIC : Steps.US;
    }

    /** A key was pressed, or repeats while it is held; tells whether it meant something. */
    public boolean key(Stroke stroke, boolean repeated) {
        if (question.isPresent()) {
            if (stroke.code() == Stroke.ENTER || stroke.code() == Stroke.ESCAPE) {
                answer(stroke.code() == Stroke.ENTER);
            }
            return true;
        }
        Optional<Action> action = Action.of(stroke).filter(known -> !repeated || known.repeats());
        action.ifPresent(this::perform);
        return action.isPresent();
    }

    /** Answers the question that is open. */
    public void answer(boolean yes) {
        Optional<Question> asked = question;
        question = Optional.empty();
        asked.ifPresent(known -> (yes ? known.answer() : known.otherwise()).run());
    }

    /** Does something, as a key or a button asks for it. */
    public void perform(Action action) {
        message = "";
        switch (action) {
            case HELP -> help = !help;
            case SAVE -> keeping.askToSave();
            case SCREENSHOT -> screenshot = true;
            case UNDO -> side().layout().undo();
            case REDO -> side().layout().redo();
            case CLOSE -> askToClose();
            case NEXT -> step(1);
            case PREVIOUS -> step(-1);
            case LET_GO -> letGo();
            case POINT -> pointM = pointM.isPresent() ? Optional.empty() : Optional.of(middle());
            case OTHER_SIDE -> otherSide();
            case UNITS -> showing.use(showing.units() == Units.METRIC ? Units.US : Units.METRIC);
            case PAUSE -> pause();
            default -> {
                if (!viewpoint.perform(action) && !layering.perform(action)) {
                    new Changes(this).perform(action);
                }
            }
        }
    }

    private Vec3 middle() {
        Scenario scenario = side().scenario();
        Vec3 inside = scenario.tank().insideM();
        return steps().place(new Vec3(inside.x() / 2, inside.y() / 2,
                (scenario.tank().sandDepthM() + scenario.tank().waterLevelM()) / 2));
    }

    private void step(int way) {
        List<Thing> all = Thing.all(side().scenario());
        if (!all.isEmpty()) {
            int now = selected().map(all::indexOf).orElse(way > 0 ? -1 : 0);
            selected = Optional.of(all.get(Math.floorMod(now + way, all.size())));
        }
    }

    private void letGo() {
        if (help) {
            help = false;
        } else if (selected.isPresent()) {
            selected = Optional.empty();
        } else {
            pointM = Optional.empty();
        }
    }

    private void otherSide() {
        if (sides.size() == 2) {
            activate(1 - active);
        } else {
            message = "There is one tank here; two are opened with slackwater view A B.";
        }
    }

    private void pause() {
        boolean still = side().flow().map(LiveFlow::paused).orElse(false);
        sides.forEach(side -> side.flow().ifPresent(flow -> flow.pause(!still)));
    }

    /** The window is to be closed; asks first where something would be lost. */
    public void askToClose() {
        keeping.askToClose();
    }

    /** Takes up what has been found out beside the window; once a round, never waits. */
    public void attend() {
        keeping.attend();
    }

    /** Puts a question; what was asked before is forgotten. */
    void ask(Question asked) {
        question = Optional.of(asked);
    }

    /** Goes, whatever is lost. */
    void leave() {
        closed = true;
    }

    @Override
    public void close() {
        sides.forEach(Side::close);
    }
}
