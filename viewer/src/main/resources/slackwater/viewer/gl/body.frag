#version 410 core
in vec3 at;
in vec3 turned;
in float step;
in vec4 own;
uniform sampler2D maps;
uniform float row;
uniform float lit;
uniform float veil;
uniform vec3 eye;
uniform vec3 towardsEye;
uniform vec3 towardsLight;
uniform float parallel;
out vec4 result;

void main() {
    vec3 view = mix(normalize(eye - at), towardsEye, parallel);
    vec3 facing = normalize(turned);
    facing = dot(facing, view) < 0.0 ? -facing : facing;
    // Beside the edge of a triangle a shade may come out a little below 0; without a shade it is -1.
    vec4 colour = step < -0.5 ? own : vec4(texture(maps, vec2((clamp(step, 0.0, 1.0) * 255.0 + 0.5) / 256.0, row)).rgb, own.a);
    float light = 0.58 + 0.5 * max(dot(facing, towardsLight), 0.0);
    colour.rgb = mix(colour.rgb, min(colour.rgb * light, vec3(1.0)), lit);
    // A thin skin hides more of what is behind it where it is seen aslant.
    float aslant = 1.0 / max(dot(facing, view), 0.35);
    colour.a = mix(colour.a, 1.0 - pow(1.0 - min(colour.a, 0.999), aslant), veil);
    result = colour;
}
