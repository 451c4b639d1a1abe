/** What the water does, as numbers on a grid in SI units. */
package slackwater.field;
