/** The viewer's window, input and loop, of which only the door stands so far. */
package slackwater.viewer.app;
