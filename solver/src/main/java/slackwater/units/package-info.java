/** People's units, SI and lattice units, and the way from one to the other. */
package slackwater.units;
