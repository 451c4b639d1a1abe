/** The bridge down: from a scenario in metres to a problem in cells and steps. */
package slackwater.discretisation;
