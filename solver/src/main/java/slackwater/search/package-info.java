/** Finds where to put pumps through one function, scenario to outcome, and says how well a layout holds. */
package slackwater.search;
