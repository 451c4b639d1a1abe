#version 410 core
in vec3 looked;
in vec4 own;
uniform sampler2D maps;
uniform sampler2D glyphs;
out vec4 result;

void main() {
    if (looked.z < 0.5) {
        result = own;
    } else if (looked.z < 1.5) {
        result = vec4(own.rgb, own.a * texture(glyphs, looked.xy).r);
    } else {
        result = vec4(texture(maps, looked.xy).rgb, own.a);
    }
}
