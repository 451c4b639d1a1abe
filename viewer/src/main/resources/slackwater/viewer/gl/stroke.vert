#version 410 core
layout(location = 0) in vec4 start;
layout(location = 1) in vec4 end;
layout(location = 2) in vec4 colour;
uniform mat4 toClip;
uniform vec2 frame;
uniform float halfWidth;
uniform float rim;
uniform float forward;
out vec2 here;
flat out vec2 from;
flat out vec2 to;
flat out vec2 shades;
flat out vec4 own;
flat out vec2 depths;

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
    from = (a.xy / a.w * 0.5 + 0.5) * frame;
    to = (b.xy / b.w * 0.5 + 0.5) * frame;
    vec2 along = to - from;
    float length = length(along);
    along = length > 1e-3 ? along / length : vec2(1.0, 0.0);
    vec2 across = vec2(-along.y, along.x);
    float reach = halfWidth + rim + 1.0;
    bool atEnd = gl_VertexID >= 2;
    float side = (gl_VertexID & 1) == 0 ? -1.0 : 1.0;
    vec2 corner = (atEnd ? to + along * reach : from - along * reach) + across * side * reach;
    depths = vec2(a.z / a.w, b.z / b.w) - forward;
    gl_Position = vec4(corner / frame * 2.0 - 1.0, atEnd ? depths.y : depths.x, 1.0);
    here = corner;
    shades = vec2(start.w, end.w);
    own = colour;
}
