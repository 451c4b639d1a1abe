/** Where the eye stands, what it sees where, and what lies behind a point of the picture. */
package slackwater.viewer.camera;
