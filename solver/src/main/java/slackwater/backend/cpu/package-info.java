/** The fast back end: in place, single precision, vectorised, on several threads. */
package slackwater.backend.cpu;
