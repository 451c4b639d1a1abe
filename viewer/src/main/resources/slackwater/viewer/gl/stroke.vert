#version 410 core
layout(location = 0) in vec4 start;
layout(location = 1) in vec4 end;
layout(location = 2) in vec4 colour;
uniform mat4 toClip;
uniform vec2 frame;
uniform float halfWidth;
uniform float rim;
uniform float forward;
// Along the piece and beside it, pixels from its start, and its length.
out vec3 here;
flat out vec4 own;
// Shades and depths at both ends.
flat out vec4 ends;

const float NEAREST = 1e-4;

void main() {
    vec4 a = toClip * vec4(start.xyz, 1.0);
    vec4 b = toClip * vec4(end.xyz, 1.0);
    if (a.w < NEAREST && b.w < NEAREST) {
        gl_Position = vec4(2.0, 2.0, 2.0, 1.0);
        return;
    }
    if (a.w < NEAREST) { a = mix(a, b, (NEAREST - a.w) / (b.w - a.w)); }
    if (b.w < NEAREST) { b = mix(b, a, (NEAREST - b.w) / (a.w - b.w)); }
    vec2 from = (a.xy / a.w * 0.5 + 0.5) * frame;
    vec2 to = (b.xy / b.w * 0.5 + 0.5) * frame;
    vec2 along = to - from;
    float length = length(along);
    along = length > 1e-3 ? along / length : vec2(1.0, 0.0);
    vec2 across = vec2(-along.y, along.x);
    float reach = halfWidth + rim + 0.75;
    bool atEnd = (gl_VertexID & 2) != 0;
    float side = (gl_VertexID & 1) == 0 ? -1.0 : 1.0;
    vec2 corner = (atEnd ? to + along * reach : from - along * reach) + across * side * reach;
    ends = vec4(start.w, end.w, vec2(a.z / a.w, b.z / b.w) - forward);
    gl_Position = vec4(corner / frame * 2.0 - 1.0, atEnd ? ends.w : ends.z, 1.0);
    here = vec3(atEnd ? length + reach : -reach, side * reach, length);
    own = colour;
}
