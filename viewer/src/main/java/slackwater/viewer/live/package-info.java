/** The flow that goes on while somebody watches and changes it, on its own thread. */
package slackwater.viewer.live;
