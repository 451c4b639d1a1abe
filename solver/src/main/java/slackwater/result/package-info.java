/** The one thing that leaves the solver, with all that is needed to repeat it. */
package slackwater.result;
