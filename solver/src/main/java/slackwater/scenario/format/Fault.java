package slackwater.scenario.format;

/**
 * One thing wrong with a scenario file, printed as {@code file:line key: what was found and what is allowed}.
 *
 * @param file the file's name, without its folder
 * @param line counted from 1; 0 where the fault is of the whole file
 * @param key the key as the person wrote it, tables counted from 1, such as {@code pump[1].flow_l_per_h}; may be empty
 * @param says what was found, what is allowed, what to do
 */
public record Fault(String file, int line, String key, String says) {
    @Override
    public String toString() {
        String place = line > 0 ? file + ":" + line : file;
        return key.isEmpty() ? place + ": " + says : place + " " + key + ": " + says;
    }
}
