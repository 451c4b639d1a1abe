package slackwater.validation;

/** The headings of docs/validation.md, in order. */
enum Group {
    EXACT("Exact solutions"),
    CAVITY("Lid-driven cavities"),
    STEP("Backward-facing step"),
    BODY("Drag of bodies"),
    TURBULENCE("Turbulence"),
    JET("Jets");

    final String heading;

    Group(String heading) {
        this.heading = heading;
    }
}
