/** Pumps that can be bought: what a data sheet says of one, read from a file and taken with care. */
package slackwater.pump.catalogue;
