#version 410 core
in vec4 own;
in vec2 look;
uniform sampler2D maps;
uniform float row;
uniform float lit;
out vec4 result;

void main() {
    result = own;
    // Beside the edge of a triangle a shade may come out a little below 0; without a shade it is -1.
    if (look.x > -0.5) {
        vec3 colour = textureLod(maps, vec2((clamp(look.x, 0.0, 1.0) * 255.0 + 0.5) / 256.0, row), 0.0).rgb;
        result.rgb = mix(colour, min(colour * look.y, vec3(1.0)), lit);
    }
}
