/** Shapes in metres as plain arrays: surfaces, lines, slices and what is carried by the water. */
package slackwater.viewer.shape;
