package slackwater.viewer.camera;

/** How depth shows: not at all, so that lengths can be compared, or as the eye sees it. */
public enum Lens { PARALLEL, PERSPECTIVE }
