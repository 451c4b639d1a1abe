/** The problem as data in lattice units, with not a line of how it is solved. */
package slackwater.lattice;
