package slackwater.viewer.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import slackwater.report.Png;
import slackwater.viewer.camera.Frame;
import slackwater.viewer.camera.Margins;
import slackwater.viewer.edit.Drag.Way;
import slackwater.viewer.gl.Image;
import slackwater.viewer.gl.NoGraphics;
import slackwater.viewer.gl.Offscreen;
import slackwater.viewer.gl.Paper;
import slackwater.viewer.gl.Renderer;
import slackwater.viewer.gl.Renderer.Edges;
import slackwater.viewer.gl.Target;
import slackwater.viewer.panel.Page;
import slackwater.viewer.panel.Panel;
import slackwater.viewer.panel.Sheets;
import slackwater.viewer.panel.Typing;
import slackwater.viewer.scene.Drawing;
import slackwater.viewer.session.Difference;
import slackwater.viewer.session.Easel;
import slackwater.viewer.session.Pointer;
import slackwater.viewer.session.Session;
import slackwater.viewer.session.Stroke;
import slackwater.viewer.session.Tops;
import slackwater.viewer.window.Input;
import slackwater.viewer.window.Window;

/** Brings window, session and renderer together: what comes in, what is drawn, round after round. */
final class Desk implements AutoCloseable {
    private static final double ROUND_S = 1 / 30.0;
    private static final double IDLE_S = 0.1;
    private static final double NS = 1e-9;
    private static final double LEAST_PICTURE_PX = 80;
    private static final double SCROLL_UNITS = 40;

    private final Window window;
    private final Session session;
    private final Pointer pointer;
    private final Typing typing = new Typing();
    private final Paper paper;
    private final List<Renderer> renderers = new ArrayList<>();
    private final List<Easel> easels = new ArrayList<>();
    private final ExecutorService workshop = Executors.newSingleThreadExecutor(Desk::beside);
    private final Difference difference = new Difference(workshop);
    private final Tops tops = new Tops();
    private final Edges moving;
    private List<Page> pages = List.of();
    /** The picture that a button went down over. */
    private int pressed;
    private double xPx = -1;
    private double yPx = -1;
    private double scrolled;
    private long drawnNs = System.nanoTime();
    private double drawS;

    /** The window's context must be current. */
    Desk(Window window, Session session) throws NoGraphics {
        Paper.prepare();
        this.moving = Paper.processorDraws() ? Edges.QUICK : Edges.SMOOTH;
        this.window = window;
        this.session = session;
        this.pointer = new Pointer(session);
        this.paper = new Paper();
        for (int n = 0; n < 3; n++) {
            renderers.add(new Renderer());
            easels.add(new Easel(workshop));
        }
    }

    /** A thread that makes surfaces while the window goes on. */
    private static Thread beside(Runnable work) {
        Thread thread = new Thread(work, "surfaces");
        thread.setDaemon(true);
        return thread;
    }

    /** Goes on until the window is to be closed. */
    void run() {
        while (!session.closed()) {
            // Where drawing is slow, for want of a graphics card, half of the time is the water's.
            double wait = Math.max(ROUND_S - drawS, drawS);
            round(window.events(window.frame().isEmpty() ? IDLE_S : wait));
        }
    }

    /** Takes some events and draws once; nothing is drawn while the window has no pixels. */
    void round(List<Input> events) {
        Optional<Frame> frame = window.frame();
        frame.ifPresent(size -> session.resize(picture(size)));
        events.forEach(event -> take(event, frame));
        session.attend();
        frame.filter(size -> !session.closed()).ifPresent(this::draw);
    }

    private void take(Input event, Optional<Frame> frame) {
        if (event instanceof Input.Close) {
            session.askToClose();
        } else if (event instanceof Input.Key key) {
            key(key);
        } else if (event instanceof Input.Letter letter) {
            typing.letter(letter.letter());
        } else if (event instanceof Input.Blur) {
            pointer.cancel();
        } else {
            frame.ifPresent(size -> pointing(event, size));
        }
    }

    private void key(Input.Key key) {
        if (session.question().isEmpty() && typing.key(key.stroke())) {
            return;
        }
        if (key.stroke().code() == Stroke.ESCAPE && pointer.dragging()) {
            pointer.cancel();
            return;
        }
        session.key(key.stroke(), key.repeated());
    }

    private void pointing(Input event, Frame frame) {
        double scale = frame.scale();
        if (event instanceof Input.Move move) {
            xPx = move.xPx();
            yPx = move.yPx();
            if (pointer.holds()) {
                pointer.move(inPicture(pressed, frame), yPx);
            }
        } else if (event instanceof Input.Press press) {
            press(press, frame);
        } else if (event instanceof Input.Release && pointer.holds()) {
            pointer.release(inPicture(pressed, frame), yPx);
        } else if (event instanceof Input.Scroll scroll) {
            if (xPx < Panel.WIDTH * scale) {
                double most = Math.max(0, pages.isEmpty() ? 0 : pages.get(0).heightUnits() + scrolled
                        - frame.heightUnits() + 10);
                scrolled = Math.max(0, Math.min(most, scrolled - scroll.notches() * SCROLL_UNITS));
            } else {
                pointer.scroll(scroll.notches());
            }
        }
    }

    private void press(Input.Press press, Frame frame) {
        double x = xPx / frame.scale();
        double y = yPx / frame.scale();
        boolean covered = pages.size() > 1 || x < Panel.WIDTH;
        Optional<Page.Spot> spot = pages.isEmpty() ? Optional.empty() : pages.get(pages.size() - 1).at(x, y);
        typing.end();
        spot.ifPresent(found -> found.action().run());
        if (!covered) {
            pressed = pictureAt(frame);
            // The difference shows what stands in the tank that was chosen last.
            int side = pressed < session.sides().size() ? pressed : session.active();
            pointer.press(side, press.main() ? Pointer.Button.MAIN : Pointer.Button.OTHER, inPicture(pressed, frame),
                    yPx, press.shift() ? Way.FACING : press.command() ? Way.LEVEL : Way.BY_ITSELF);
        }
    }

    /** How many pictures stand beside each other. */
    private int pictures() {
        return session.sides().size() + (session.showing().difference() ? 1 : 0);
    }

    /** The size of one picture. */
    private Frame picture(Frame window) {
        int panel = panelPx(window);
        int wide = (window.widthPx() - panel) / pictures();
        return new Frame(Math.max(1, wide), window.heightPx(), window.scale());
    }

    private static int panelPx(Frame window) {
        return (int) Math.round(Panel.WIDTH * window.scale());
    }

    private int pictureAt(Frame window) {
        int wide = picture(window).widthPx();
        return Math.max(0, Math.min(pictures() - 1, (int) ((xPx - panelPx(window)) / wide)));
    }

    private double inPicture(int which, Frame window) {
        return xPx - panelPx(window) - which * picture(window).widthPx();
    }

    private void draw(Frame frame) {
        long start = System.nanoTime();
        double elapsedS = (start - drawnNs) * NS;
        drawnNs = start;
        boolean kept = session.takesScreenshot();
        Edges edges = kept ? Edges.SMOOTH : moving;
        paper.clear(frame);
        Frame picture = picture(frame);
        session.resize(picture);
        double top = tops.of(session.sides());
        if (picture.widthPx() >= LEAST_PICTURE_PX && picture.heightPx() >= LEAST_PICTURE_PX) {
            Margins words = Margins.NONE;
            for (int n = 0; n < pictures(); n++) {
                boolean extra = n >= session.sides().size();
                Drawing drawing = extra ? difference.draw(session)
                        : easels.get(n).draw(session, session.sides().get(n), top, elapsedS);
                words = words.with(Renderer.margins(drawing, picture, session.camera().lens()));
                renderers.get(n).draw(drawing, session.camera(), picture, new Target(0,
                        panelPx(frame) + n * picture.widthPx(), 0), edges);
            }
            if (!pointer.holds()) {
                session.leave(words);
            }
        }
        controls(frame);
        if (kept) {
            screenshot(frame);
        }
        window.swap();
        drawS = (System.nanoTime() - start) * NS;
    }

    private void controls(Frame frame) {
        double[] hover = {xPx / frame.scale(), yPx / frame.scale()};
        List<Page> made = new ArrayList<>();
        made.add(Panel.page(session, typing, paper, new double[] {frame.heightUnits(), scrolled}, hover));
        made.addAll(Sheets.over(session, paper, new double[] {frame.widthUnits(), frame.heightUnits()}, hover));
        pages = made;
        made.forEach(page -> paper.draw(page.marks(), frame));
    }

    private void screenshot(Frame frame) {
        Image image = Offscreen.read(frame);
        String base = session.side().name().replaceFirst("\\.toml$", "").replaceAll("[^A-Za-z0-9._-]", "-");
        Path file = Path.of(base + "-view.png");
        for (int n = 2; Files.exists(file); n++) {
            file = Path.of(base + "-view-" + n + ".png");
        }
        try {
            Files.write(file, Png.encode(image.widthPx(), image.heightPx(), image.rgb()));
            session.say("Picture written to " + file + ".");
        } catch (IOException unwritten) {
            session.say("No picture written: " + file + " cannot be written (" + unwritten.getMessage() + ").");
        }
    }

    /** A control by its name, as of the last round: where it is, units of type. */
    Optional<Page.Spot> spot(String name) {
        return pages.stream().flatMap(page -> page.named(name).stream()).reduce((below, above) -> above);
    }

    @Override
    public void close() {
        workshop.shutdownNow();
        renderers.forEach(Renderer::close);
        paper.close();
    }
}
