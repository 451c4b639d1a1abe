/** Grains of sand, food and waste in the water: where they settle, where they lift, and how fast a coral is cleared. */
package slackwater.detritus;
