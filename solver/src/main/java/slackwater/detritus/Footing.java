package slackwater.detritus;

/** How well a surface holds what lies on it. */
enum Footing { SMOOTH, SAND, BROKEN }
