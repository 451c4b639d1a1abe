/** What was asked: a tank, its rocks, pumps and corals, read, checked and written. */
package slackwater.scenario;
