/** The bridge up: runs the water until it has settled and averages it back into SI units. */
package slackwater.simulation;
