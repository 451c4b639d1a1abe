/** Draws with OpenGL 4.1: the only package that knows of it. */
package slackwater.viewer.gl;
