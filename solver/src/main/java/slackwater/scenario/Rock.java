package slackwater.scenario;

import slackwater.geometry.Solid;

/** A rock: its name in the user's words and its shape. */
public record Rock(String name, Solid solid) {
}
