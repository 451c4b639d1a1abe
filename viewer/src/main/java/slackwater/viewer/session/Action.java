package slackwater.viewer.session;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** All that can be done at the window, with its keys and its line in the help. */
public enum Action {
    HELP("Help", "show or hide this list", Stroke.of(Stroke.F1), Stroke.shift('/')),
    SAVE("File", "save the layout (asks first)", Stroke.command('S')),
    SCREENSHOT("File", "picture of the window as a PNG file", Stroke.of(Stroke.F12)),
    UNDO("File", "undo", Stroke.command('Z')),
    REDO("File", "redo", Stroke.command('Y'), new Stroke('Z', true, true)),
    CLOSE("File", "close", Stroke.command('Q')),

    VIEW_FRONT("View", "from the front", Stroke.of('1')),
    VIEW_SIDE("View", "from the right side", Stroke.of('2')),
    VIEW_TOP("View", "from the top", Stroke.of('3')),
    VIEW_CORNER("View", "from a corner", Stroke.of('4')),
    FIT("View", "whole tank into the picture", Stroke.of(Stroke.HOME)),
    ORBIT_LEFT("View", "go round", Stroke.shift(Stroke.LEFT)),
    ORBIT_RIGHT("View", "go round", Stroke.shift(Stroke.RIGHT)),
    ORBIT_UP("View", "go round", Stroke.shift(Stroke.UP)),
    ORBIT_DOWN("View", "go round", Stroke.shift(Stroke.DOWN)),
    PAN_LEFT("View", "slide the picture", Stroke.command(Stroke.LEFT)),
    PAN_RIGHT("View", "slide the picture", Stroke.command(Stroke.RIGHT)),
    PAN_UP("View", "slide the picture", Stroke.command(Stroke.UP)),
    PAN_DOWN("View", "slide the picture", Stroke.command(Stroke.DOWN)),
    NEARER("View", "come nearer", Stroke.of('='), Stroke.shift('=')),
    FARTHER("View", "go away", Stroke.of('-')),

    NEXT("Choose", "next pump, coral or rock", Stroke.of(Stroke.TAB)),
    PREVIOUS("Choose", "the one before", Stroke.shift(Stroke.TAB)),
    LET_GO("Choose", "let go of what is chosen", Stroke.of(Stroke.ESCAPE)),
    POINT("Choose", "measuring point on or off", Stroke.of('M')),
    OTHER_SIDE("Choose", "the other of two tanks", Stroke.of('`')),

    MOVE_LEFT("Change", "move what is chosen, or the point", Stroke.of(Stroke.LEFT)),
    MOVE_RIGHT("Change", "move what is chosen, or the point", Stroke.of(Stroke.RIGHT)),
    MOVE_UP("Change", "move what is chosen, or the point", Stroke.of(Stroke.UP)),
    MOVE_DOWN("Change", "move what is chosen, or the point", Stroke.of(Stroke.DOWN)),
    MOVE_BACK("Change", "move it to the back", Stroke.of(Stroke.PAGE_UP)),
    MOVE_FRONT("Change", "move it to the front", Stroke.of(Stroke.PAGE_DOWN)),
    AIM_LEFT("Change", "turn the aim to the left", Stroke.of('A')),
    AIM_RIGHT("Change", "turn the aim to the right", Stroke.of('D')),
    AIM_UP("Change", "aim higher", Stroke.of('W')),
    AIM_DOWN("Change", "aim lower", Stroke.of('S')),
    OUTPUT_LESS("Change", "less output", Stroke.of('[')),
    OUTPUT_MORE("Change", "more output", Stroke.of(']')),
    OFF("Change", "switch the pump off or on", Stroke.of('O')),
    PATTERN("Change", "next pattern, group or shape", Stroke.of('P')),
    PERIOD_SHORTER("Change", "shorter cycle", Stroke.of(',')),
    PERIOD_LONGER("Change", "longer cycle", Stroke.of('.')),
    ADD_CORAL("Change", "new coral at the point", Stroke.of('C')),
    ADD_ROCK("Change", "new rock at the point", Stroke.of('R')),
    LARGER("Change", "coral or rock larger", Stroke.of('G')),
    SMALLER("Change", "coral or rock smaller", Stroke.shift('G')),
    REMOVE("Change", "remove what is chosen", Stroke.of(Stroke.DELETE), Stroke.of(Stroke.BACKSPACE)),

    STILL_WATER("Show", "still water", Stroke.of('V')),
    TRACERS("Show", "drifting specks", Stroke.of('T')),
    STREAMLINES("Show", "streamlines", Stroke.of('L')),
    FAST_WATER("Show", "fast water", Stroke.of('F')),
    FAST_LESS("Show", "fast water from a lower speed", Stroke.of('H')),
    FAST_MORE("Show", "from a higher speed", Stroke.shift('H')),
    SHEAR("Show", "shear on sand and rock", Stroke.of('E')),
    DEPOSIT("Show", "deposit: where waste lies", Stroke.of('K')),
    GRAINS("Show", "let grains fall, or take them away", Stroke.of('B')),
    GRAIN_PINCH("Show", "drop a pinch at the measuring point", Stroke.shift('B')),
    GRAIN_KIND("Show", "next kind of grain", Stroke.of('Q')),
    JETS("Show", "jets of the pumps", Stroke.of('J')),
    NAMES("Show", "names and readings", Stroke.of('N')),
    SLICE_X("Show", "slice from left to right", Stroke.of('X')),
    SLICE_Y("Show", "slice from front to back", Stroke.of('Y')),
    SLICE_Z("Show", "slice from bottom to top", Stroke.of('Z')),
    SLICE_DOWN("Show", "slide the slice back", Stroke.of(';')),
    SLICE_UP("Show", "slide the slice forth", Stroke.of('\'')),
    DIFFERENCE("Show", "difference of two tanks", Stroke.of('I')),
    UNITS("Show", "cm and l/h, or inches and gallons", Stroke.of('U')),
    PAUSE("Show", "pause the water, or go on", Stroke.of(Stroke.SPACE));

    private final String group;
    private final String words;
    private final List<Stroke> strokes;

    Action(String group, String words, Stroke... strokes) {
        this.group = group;
        this.words = words;
        this.strokes = List.of(strokes);
    }

    /** The heading that it stands under in the help. */
    public String group() {
        return group;
    }

    /** What it does, in a few words. */
    public String words() {
        return words;
    }

    /** Its keys; the first is shown. */
    public List<Stroke> strokes() {
        return strokes;
    }

    /** What a key does; empty where nothing. */
    public static Optional<Action> of(Stroke stroke) {
        return Arrays.stream(values()).filter(action -> action.strokes.contains(stroke)).findFirst();
    }

    /** Whether it may repeat while its key is held down. */
    public boolean repeats() {
        return name().startsWith("MOVE_") || name().startsWith("AIM_") || name().startsWith("ORBIT_")
                || name().startsWith("PAN_") || name().startsWith("OUTPUT_") || name().startsWith("PERIOD_")
                || name().startsWith("SLICE_DOWN") || name().startsWith("SLICE_UP")
                || name().equals("FAST_LESS") || name().equals("FAST_MORE")
                || List.of(NEARER, FARTHER, LARGER, SMALLER, NEXT, PREVIOUS, UNDO, REDO).contains(this);
    }
}
