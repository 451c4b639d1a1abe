/** The commands: they wire the rest together, and nothing else prints or exits. */
package slackwater.cli;
