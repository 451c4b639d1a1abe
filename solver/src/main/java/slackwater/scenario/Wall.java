package slackwater.scenario;

/** The panes: front is y = 0, left is x = 0. */
public enum Wall { FRONT, BACK, LEFT, RIGHT }
