package slackwater.viewer.panel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import slackwater.viewer.colour.Colour;
import slackwater.viewer.panel.Page.Spot;
import slackwater.viewer.panel.Rows.Button;
import slackwater.viewer.scene.Palette;
import slackwater.viewer.scene.Type;
import slackwater.viewer.session.Action;
import slackwater.viewer.session.Question;
import slackwater.viewer.session.Session;
import slackwater.viewer.session.Stroke;

/** What lies over the whole window: a question, or the list of all keys. */
public final class Sheets {
    private static final Colour SHADE = Colour.of(0x22282C).withOpacity(0.35);
    private static final Colour CARD = Colour.of(0xFFFFFF);
    private static final double LINE = 18;

    private final double width;
    private final double height;
    private final double[] hover;
    private final Type type;

    private Sheets(Type type, double width, double height, double[] hover) {
        this.type = type;
        this.width = width;
        this.height = height;
        this.hover = hover;
    }

    /** What is to be shown over a window of a size in units of type; empty pages where nothing is. */
    public static List<Page> over(Session session, Type type, double[] size, double[] hover) {
        Sheets sheets = new Sheets(type, size[0], size[1], hover);
        List<Page> pages = new ArrayList<>();
        if (session.help()) {
            pages.add(sheets.help(session));
        }
        session.question().ifPresent(question -> pages.add(sheets.question(session, question)));
        return pages;
    }

    private Page question(Session session, Question question) {
        double wide = Math.min(440, width - 20);
        double left = (width - wide) / 2;
        double top = Math.max(10, height / 2 - 90);
        Rows shade = new Rows(type, left + 20, top + 20, wide - 40, hover);
        shade.block(0, 0, width, height, SHADE);
        shade.spot(new Spot("shade", 0, 0, width, height, () -> { }));
        int lines = shade.wrapped(question.words(), Rows.TEXT, wide - 40).size();
        shade.block(left - 1, top - 1, wide + 2, 20 + lines * 17 + 62, Palette.GLASS);
        shade.block(left, top, wide, 18 + lines * 17 + 62, CARD);
        shade.text(question.words(), Palette.INK, 10);
        shade.gap(14);
        shade.buttons(List.of(new Button("yes", question.yes(), "Enter", true, true, () -> session.answer(true)),
                new Button("no", question.no(), "Esc", false, true, () -> session.answer(false))));
        return shade.page();
    }

    private Page help(Session session) {
        double wide = Math.min(960, width - 20);
        double left = (width - wide) / 2;
        double column = (wide - 60) / 3;
        List<List<String>> columns = List.of(List.of("Help", "File", "View", "Choose"), List.of("Change", "Pointer"),
                List.of("Show"));
        int longest = columns.stream().mapToInt(groups -> groups.stream().mapToInt(group -> lines(group).size() + 2)
                .sum()).max().orElse(1);
        double high = longest * LINE + 40;
        double top = Math.max(6, (height - high) / 2);
        Rows rows = new Rows(type, left, top, wide, hover);
        rows.block(0, 0, width, height, SHADE);
        rows.spot(new Spot("shade", 0, 0, width, height, () -> session.perform(Action.HELP)));
        rows.block(left - 1, top - 1, wide + 2, high + 2, Palette.GLASS);
        rows.block(left, top, wide, high, CARD);
        for (int n = 0; n < columns.size(); n++) {
            double y = top + 16;
            double x = left + 20 + n * (column + 10);
            for (String group : columns.get(n)) {
                rows.words(x, y, 13.5, Palette.JET, group);
                y += LINE + 2;
                for (String[] line : lines(group)) {
                    rows.words(x, y, 11.5, Palette.INK, line[0]);
                    rows.words(x + 96, y, 11.5, Palette.SOFT_INK, line[1]);
                    y += LINE;
                }
                y += LINE - 8;
            }
        }
        return rows.page();
    }

    /** Keys and what they do, for one heading; four arrows that do one thing are one line. */
    private static List<String[]> lines(String group) {
        if (group.equals("Pointer")) {
            return List.of(new String[] {"click", "choose, or measure the water"},
                    new String[] {"drag", "go round; slide with the right button"},
                    new String[] {"drag a pump", "along its pane; Shift: any way"},
                    new String[] {"drag the handle", "turn the aim"}, new String[] {"wheel", "come nearer or go away"});
        }
        List<String[]> lines = new ArrayList<>();
        List<Action> actions = Arrays.stream(Action.values()).filter(action -> action.group().equals(group)).toList();
        for (Action action : actions) {
            boolean same = !lines.isEmpty() && lines.get(lines.size() - 1)[1].equals(action.words());
            if (!same) {
                lines.add(new String[] {keys(action), action.words()});
            }
        }
        return lines;
    }

    private static String keys(Action action) {
        Stroke first = action.strokes().get(0);
        if (first.code() >= Stroke.RIGHT && first.code() <= Stroke.UP) {
            return (first.command() ? "Ctrl " : "") + (first.shift() ? "Shift " : "") + "arrows";
        }
        return first.words();
    }
}
