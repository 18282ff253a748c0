package org.oaktag.sewing;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Seam;

/** Which corners of pieces come to lie on each other through which seams. */
final class Glue {

    private final Map<Corner, List<Joint>> joints = new HashMap<>();

    /** A seam that brings one corner to another. */
    private record Joint(Corner to, Seam by) {}

    private Glue() {}

    /** Follows every seam but some. */
    static Glue of(Garment garment, Collection<Seam> without) {
        Glue glue = new Glue();
        for (Seam seam : garment.seams()) {
            if (without.contains(seam)) {
                continue;
            }
            for (End end : End.values()) {
                Corner a = Corner.ofA(garment, seam, end);
                Corner b = Corner.ofB(garment, seam, end);
                glue.add(a, new Joint(b, seam));
                glue.add(b, new Joint(a, seam));
            }
        }
        return glue;
    }

    private void add(Corner from, Joint joint) {
        joints.computeIfAbsent(from, corner -> new ArrayList<>()).add(joint);
    }

    /** Returns the seams that end at a corner. */
    Set<Seam> endingAt(Corner corner) {
        Set<Seam> seams = new LinkedHashSet<>();
        joints.getOrDefault(corner, List.of()).forEach(joint -> seams.add(joint.by()));
        return seams;
    }

    /**
     * Returns the fewest seams that bring one corner to another, none where they are the same, empty where no seams do.
     *
     * @param without seams that may not be among them
     */
    Optional<Set<Seam>> between(Corner from, Corner to, Set<Seam> without) {
        Map<Corner, Set<Seam>> reached = new HashMap<>();
        Deque<Corner> next = new ArrayDeque<>();
        reached.put(from, Set.of());
        next.add(from);
        while (!next.isEmpty() && !reached.containsKey(to)) {
            Corner at = next.remove();
            for (Joint joint : joints.getOrDefault(at, List.of())) {
                if (!without.contains(joint.by()) && !reached.containsKey(joint.to())) {
                    Set<Seam> seams = new LinkedHashSet<>(reached.getOrDefault(at, Set.of()));
                    seams.add(joint.by());
                    reached.put(joint.to(), seams);
                    next.add(joint.to());
                }
            }
        }
        return Optional.ofNullable(reached.get(to));
    }
}
