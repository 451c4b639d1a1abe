#version 410 core
layout(location = 0) in vec3 place;
layout(location = 1) in vec3 normal;
layout(location = 2) in float shade;
layout(location = 3) in vec4 colour;
uniform mat4 toClip;
uniform vec3 low;
uniform vec3 high;
uniform float lit;
uniform float veil;
uniform float inside;
uniform vec3 eye;
uniform vec3 towardsEye;
uniform vec3 towardsLight;
uniform float parallel;
out vec4 own;
out vec2 look;
out float gl_ClipDistance[6];

// Light is worked out at the corners: surfaces are fine enough, and where the processor draws, every value that must be
// carried across a triangle and every sum at a pixel costs.
void main() {
    gl_Position = toClip * vec4(place, 1.0);
    vec3 view = parallel > 0.5 ? towardsEye : normalize(eye - place);
    float across = dot(normal, view);
    float front = max(dot(normal, towardsLight), 0.0);
    float back = max(dot(-normal, towardsLight), 0.0);
    // A skin is seen from both sides; it turns over without a step where it is seen from its edge.
    float turned = veil > 0.5 ? smoothstep(-0.2, 0.2, across) : 1.0 - inside;
    look = vec2(shade, 0.58 + 0.5 * mix(back, front, turned));
    own = colour;
    if (lit > 0.0) {
        own.rgb = mix(own.rgb, min(own.rgb * look.y, vec3(1.0)), lit);
        if (veil > 0.5) {
            // A thin skin hides more of what is behind it where it is seen aslant.
            own.a = 1.0 - pow(1.0 - min(own.a, 0.999), 1.0 / max(abs(across), 0.35));
        }
    }
    for (int axis = 0; axis < 3; axis++) {
        gl_ClipDistance[2 * axis] = place[axis] - low[axis];
        gl_ClipDistance[2 * axis + 1] = high[axis] - place[axis];
    }
}
