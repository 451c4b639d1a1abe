package slackwater.viewer.gl;

import static org.lwjgl.opengl.GL41C.GL_COMPILE_STATUS;
import static org.lwjgl.opengl.GL41C.GL_FRAGMENT_SHADER;
import static org.lwjgl.opengl.GL41C.GL_LINK_STATUS;
import static org.lwjgl.opengl.GL41C.GL_TRUE;
import static org.lwjgl.opengl.GL41C.GL_VERTEX_SHADER;
import static org.lwjgl.opengl.GL41C.glAttachShader;
import static org.lwjgl.opengl.GL41C.glCompileShader;
import static org.lwjgl.opengl.GL41C.glCreateProgram;
import static org.lwjgl.opengl.GL41C.glCreateShader;
import static org.lwjgl.opengl.GL41C.glDeleteProgram;
import static org.lwjgl.opengl.GL41C.glDeleteShader;
import static org.lwjgl.opengl.GL41C.glGetProgramInfoLog;
import static org.lwjgl.opengl.GL41C.glGetProgrami;
import static org.lwjgl.opengl.GL41C.glGetShaderInfoLog;
import static org.lwjgl.opengl.GL41C.glGetShaderi;
import static org.lwjgl.opengl.GL41C.glGetUniformLocation;
import static org.lwjgl.opengl.GL41C.glLinkProgram;
import static org.lwjgl.opengl.GL41C.glShaderSource;
import static org.lwjgl.opengl.GL41C.glUniform1f;
import static org.lwjgl.opengl.GL41C.glUniform1i;
import static org.lwjgl.opengl.GL41C.glUniform2f;
import static org.lwjgl.opengl.GL41C.glUniform3f;
import static org.lwjgl.opengl.GL41C.glUniformMatrix4fv;
import static org.lwjgl.opengl.GL41C.glUseProgram;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.joml.Matrix4f;
import slackwater.geometry.Vec3;

/** A program of the graphics processor, from two files beside this class. */
final class Shader implements AutoCloseable {
    private final int program;

    Shader(String name) {
        int vertex = compiled(GL_VERTEX_SHADER, name + ".vert");
        int fragment = compiled(GL_FRAGMENT_SHADER, name + ".frag");
        program = glCreateProgram();
        glAttachShader(program, vertex);
        glAttachShader(program, fragment);
        glLinkProgram(program);
        if (glGetProgrami(program, GL_LINK_STATUS) != GL_TRUE) {
            throw new IllegalStateException(name + " does not link: " + glGetProgramInfoLog(program));
        }
        glDeleteShader(vertex);
        glDeleteShader(fragment);
    }

    private static int compiled(int kind, String file) {
        int shader = glCreateShader(kind);
        glShaderSource(shader, text(file));
        glCompileShader(shader);
        if (glGetShaderi(shader, GL_COMPILE_STATUS) != GL_TRUE) {
            throw new IllegalStateException(file + " does not compile: " + glGetShaderInfoLog(shader));
        }
        return shader;
    }

    private static String text(String file) {
        try (InputStream stream = Shader.class.getResourceAsStream(file)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException gone) {
            throw new IllegalStateException(file + " is part of the program", gone);
        }
    }

    void use() {
        glUseProgram(program);
    }

    void put(String name, Matrix4f matrix) {
        glUniformMatrix4fv(at(name), false, matrix.get(new float[16]));
    }

    void put(String name, Vec3 vector) {
        glUniform3f(at(name), (float) vector.x(), (float) vector.y(), (float) vector.z());
    }

    void put(String name, double x, double y) {
        glUniform2f(at(name), (float) x, (float) y);
    }

    void put(String name, double value) {
        glUniform1f(at(name), (float) value);
    }

    /** Which texture unit a sampler reads. */
    void putUnit(String name, int unit) {
        glUniform1i(at(name), unit);
    }

    private int at(String name) {
        return glGetUniformLocation(program, name);
    }

    @Override
    public void close() {
        glDeleteProgram(program);
    }
}
