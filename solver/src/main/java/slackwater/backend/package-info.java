/** What solves a lattice problem, and what all that do have in common. */
package slackwater.backend;
