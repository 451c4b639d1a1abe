/** Points and solids in metres, scanned meshes among them. */
package slackwater.geometry;
