package slackwater.cli;

/** How many pumps: {@code 2} or {@code 1..3}. */
record CountRange(int least, int most) {
    private static final int MOST = 8;

    /** @throws BadInput if it is neither, or out of bounds */
    static CountRange of(String text) {
        String[] ends = text.strip().split("\\.\\.", -1);
        if (ends.length <= 2 && ends[0].matches("[0-9]{1,2}") && ends[ends.length - 1].matches("[0-9]{1,2}")) {
            int least = Integer.parseInt(ends[0]);
            int most = Integer.parseInt(ends[ends.length - 1]);
            if (least >= 1 && least <= most && most <= MOST) {
                return new CountRange(least, most);
            }
        }
        throw new BadInput("--count: found '" + text + "', must be 1 to " + MOST + ", the smaller number"
                + " first, such as 2 or 1..3");
    }
}
