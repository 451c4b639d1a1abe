package slackwater.backend;

/** Threads among which work on many things of one kind can be spread. */
public interface Spread {
    /** The calling thread and no other. */
    Spread ALONE = (count, part) -> part.run(0, count);

    /** Work on the things [from, to), which no other thread touches meanwhile. */
    interface Part {
        void run(int from, int to);
    }

    /** Works on the things [0, count), each once, and returns when all is done. */
    void over(int count, Part part);
}
