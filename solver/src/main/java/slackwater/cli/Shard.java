package slackwater.cli;

/**
 * One part of a search that several machines share.
 *
 * @param number counted from 1
 * @param of how many there are
 */
record Shard(int number, int of) {
    static final Shard WHOLE = new Shard(0, 1);

    /** @throws BadInput if the text is not like 2/4 */
    static Shard of(String text) {
        if (text.isEmpty()) {
            return WHOLE;
        }
        if (text.matches("[0-9]{1,4}/[0-9]{1,4}")) {
            int slash = text.indexOf('/');
            int number = Integer.parseInt(text.substring(0, slash));
            int of = Integer.parseInt(text.substring(slash + 1));
            if (number >= 1 && number <= of) {
                return new Shard(number, of);
            }
        }
        throw new BadInput("--shard: found '" + text + "', must be a part and how many there are, such as 2/4");
    }

    boolean isPart() {
        return number > 0;
    }

    String logName() {
        return isPart() ? "trials-" + number + "-of-" + of + ".jsonl" : "trials.jsonl";
    }
}
