/** What the flow means for corals, still corners, sand and surface. */
package slackwater.analysis;
