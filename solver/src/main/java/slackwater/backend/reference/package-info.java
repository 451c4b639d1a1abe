/** The slow back end in double precision that reads like the textbook and judges the fast one. */
package slackwater.backend.reference;
