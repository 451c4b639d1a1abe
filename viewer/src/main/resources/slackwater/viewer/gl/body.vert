#version 410 core
layout(location = 0) in vec3 place;
layout(location = 1) in vec3 normal;
layout(location = 2) in float shade;
layout(location = 3) in vec4 colour;
uniform mat4 toClip;
uniform vec3 low;
uniform vec3 high;
out vec3 at;
out vec3 turned;
out float step;
out vec4 own;
out float gl_ClipDistance[6];

void main() {
    gl_Position = toClip * vec4(place, 1.0);
    at = place;
    turned = normal;
    step = shade;
    own = colour;
    for (int axis = 0; axis < 3; axis++) {
        gl_ClipDistance[2 * axis] = place[axis] - low[axis];
        gl_ClipDistance[2 * axis + 1] = high[axis] - place[axis];
    }
}
