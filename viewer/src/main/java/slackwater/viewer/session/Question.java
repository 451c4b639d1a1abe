package slackwater.viewer.session;

/**
 * Something to be answered before anything is done.
 *
 * @param words what is asked
 * @param yes what the button for it says
 * @param no what the button against it says
 * @param answer what to do on yes
 * @param otherwise what to do on no
 */
public record Question(String words, String yes, String no, Runnable answer, Runnable otherwise) {
}
