/** Colours that everyone can tell apart, and scales with a range and a unit. */
package slackwater.viewer.colour;
