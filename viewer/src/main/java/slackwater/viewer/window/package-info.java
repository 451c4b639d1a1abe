/** The window itself: its events as values, its size, and nothing of what is shown in it. */
package slackwater.viewer.window;
