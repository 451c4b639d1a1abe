/** What goes on at a window without the window: layouts under change, what is shown, and what keys and pointer do. */
package slackwater.viewer.session;
