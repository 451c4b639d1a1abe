/** What a person changes in a tank: layouts as values, their history, what a pointer hits and how it drags. */
package slackwater.viewer.edit;
