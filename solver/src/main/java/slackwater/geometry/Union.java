package slackwater.geometry;

import java.util.List;

/**
 * Several bodies as one. The sign of its signed distance is exact; outside, the magnitude is the least of the parts';
 * inside, where parts overlap, it is at most the true depth.
 *
 * @param parts at least one
 */
public record Union(List<Solid> parts) implements Solid {
    public Union {
        parts = List.copyOf(parts);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("a union must have at least one part");
        }
    }

    @Override
    public double signedDistanceM(Vec3 point) {
        return parts.stream().mapToDouble(part -> part.signedDistanceM(point)).min().orElseThrow();
    }

    @Override
    public boolean contains(Vec3 point) {
        return parts.stream().anyMatch(part -> part.contains(point));
    }

    @Override
    public Bounds bounds() {
        return parts.stream().map(Solid::bounds).reduce(Bounds::around).orElseThrow();
    }
}
