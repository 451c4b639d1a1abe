#version 410 core
in vec2 here;
flat in vec2 from;
flat in vec2 to;
flat in vec2 shades;
flat in vec4 own;
flat in vec2 depths;
uniform sampler2D maps;
uniform float row;
uniform float halfWidth;
uniform float rim;
uniform float forward;
out vec4 result;

void main() {
    vec2 along = to - from;
    float open = dot(here - from, along) / max(dot(along, along), 1e-6);
    float share = clamp(open, 0.0, 1.0);
    float far = distance(here, from + share * along);
    // Round ends fill the bends of a line; a rim there would cut it into pieces.
    float edge = halfWidth + (open == share ? rim : 0.0);
    float cover = clamp(edge + 0.5 - far, 0.0, 1.0);
    if (cover <= 0.0) {
        discard;
    }
    float step = mix(shades.x, shades.y, share);
    vec4 colour = shades.x < -0.5 ? own : vec4(textureLod(maps, vec2((step * 255.0 + 0.5) / 256.0, row), 0.0).rgb, own.a);
    float core = clamp(halfWidth + 0.5 - far, 0.0, 1.0);
    colour.rgb = rim > 0.0 ? mix(vec3(0.16, 0.19, 0.21), colour.rgb, core) : colour.rgb;
    // The rim lies a little behind, so that crossing lines stay whole.
    float depth = mix(depths.x, depths.y, share);
    gl_FragDepth = (depth + (rim > 0.0 ? forward * (1.0 - core) : 0.0)) * 0.5 + 0.5;
    result = vec4(colour.rgb, colour.a * cover);
}
