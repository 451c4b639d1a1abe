#version 410 core
layout(location = 0) in vec2 place;
layout(location = 1) in vec3 look;
layout(location = 2) in vec4 colour;
uniform vec2 frame;
out vec3 looked;
out vec4 own;

void main() {
    gl_Position = vec4(place.x / frame.x * 2.0 - 1.0, 1.0 - place.y / frame.y * 2.0, 0.0, 1.0);
    looked = look;
    own = colour;
}
