package slackwater.detritus;

/** Where a grain can be. Every grain is in exactly one of them at any time. */
public enum Place {
    WATER("in suspension"), SAND("on the sand"), ROCK("on rock"), GLASS("on the bare bottom"),
    CORAL("on corals"), FILTER("in the filter"), PUMP("caught in pumps");

    private final String words;

    Place(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
