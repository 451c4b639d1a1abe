#version 410 core
in vec3 here;
flat in vec4 own;
flat in vec4 ends;
uniform sampler2D maps;
uniform float row;
uniform float halfWidth;
uniform float rim;
uniform float forward;
out vec4 result;

void main() {
    float share = clamp(here.x / max(here.z, 1e-3), 0.0, 1.0);
    float far = length(vec2(here.x - clamp(here.x, 0.0, here.z), here.y));
    // Round ends fill the bends of a line; a rim there would cut it into pieces.
    float edge = halfWidth + (here.x >= 0.0 && here.x <= here.z ? rim : 0.0);
    float cover = clamp(edge + 0.5 - far, 0.0, 1.0);
    if (cover <= 0.0) {
        discard;
    }
    vec4 colour = own;
    if (ends.x > -0.5) {
        colour.rgb = textureLod(maps, vec2((mix(ends.x, ends.y, share) * 255.0 + 0.5) / 256.0, row), 0.0).rgb;
    }
    float core = clamp(halfWidth + 0.5 - far, 0.0, 1.0);
    colour.rgb = rim > 0.0 ? mix(vec3(0.16, 0.19, 0.21), colour.rgb, core) : colour.rgb;
    // The rim lies a little behind, so that crossing lines stay whole.
    float depth = mix(ends.z, ends.w, share);
    gl_FragDepth = (depth + (rim > 0.0 ? forward * (1.0 - core) : 0.0)) * 0.5 + 0.5;
    result = vec4(colour.rgb, colour.a * cover);
}
