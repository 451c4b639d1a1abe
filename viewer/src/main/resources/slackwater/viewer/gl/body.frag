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
    vec4 colour = own;
    // Beside the edge of a triangle a shade may come out a little below 0; without a shade it is -1.
    if (step > -0.5) {
        colour.rgb = textureLod(maps, vec2((clamp(step, 0.0, 1.0) * 255.0 + 0.5) / 256.0, row), 0.0).rgb;
    }
    if (lit > 0.0) {
        vec3 view = parallel > 0.5 ? towardsEye : normalize(eye - at);
        vec3 facing = normalize(turned);
        float across = dot(facing, view);
        facing = across < 0.0 ? -facing : facing;
        float light = 0.58 + 0.5 * max(dot(facing, towardsLight), 0.0);
        colour.rgb = mix(colour.rgb, min(colour.rgb * light, vec3(1.0)), lit);
        if (veil > 0.5) {
            // A thin skin hides more of what is behind it where it is seen aslant.
            colour.a = 1.0 - pow(1.0 - min(colour.a, 0.999), 1.0 / max(abs(across), 0.35));
        }
    }
    result = colour;
}
