/** The window's controls as flat marks and places to click, made from the session anew for every picture. */
package slackwater.viewer.panel;
