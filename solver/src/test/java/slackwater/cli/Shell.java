package slackwater.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/** Runs a command line as the shell would and keeps what it said. */
public record Shell(int code, String out, String err) {
    public static Shell run(Object... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] words = new String[arguments.length];
        for (int n = 0; n < words.length; n++) {
            words[n] = arguments[n].toString();
        }
        int code = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), words);
        return new Shell(code, out.toString(), err.toString());
    }
}
