/** What a pump does to the water, whatever the grid. */
package slackwater.pump;
