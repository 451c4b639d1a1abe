/** What a picture shows and how it is put together, with no graphics library. */
package slackwater.viewer.scene;
