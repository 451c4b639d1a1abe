/** The program's entry and its commands that show something. */
package slackwater.viewer.app;
