package org.oaktag.laws.recipes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.oaktag.measure.Length.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.oaktag.PatternException;
import org.oaktag.adjust.Darts;
import org.oaktag.adjust.Place;
import org.oaktag.adjust.Step;
import org.oaktag.adjust.StepKind;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Dart;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.WalkedSeam;

/**
 * Every step that can be taken on a top can be taken on one with a dart in its front and another in its back, wherever
 * they lie: every seam that was true is true to 0.01 mm, and both darts are there with their angles. What is refused is
 * listed here, with why.
 */
class StepsOnDartsTest {

    private static final Name DART = Name.of("shaping");
    private static final int BODIES = 2;

    /** Steps that open, move or close darts of a name of their own. */
    private static final Set<String> OF_DARTS = Set.of("move dart", "ease dart", "true dart fold");

    /** A lining with the darts of its shell is not cut yet. */
    private static final String NOT_YET = "line body";

    /** What would lie on a dart, or where it is turned through, has no room: another dart, a pocket, a gusset. */
    private static final Set<String> NO_ROOM = Set.of("open dart", "patch pocket", "front pouch", "grow sleeve");

    private static final List<StepKind> KINDS = new DrawnSteps().kinds();

    /** Where the darts lie, and what cannot be done there. */
    @SuppressWarnings("ImmutableEnumChecker")
    private enum Where {
        SIDE(EdgeNames.SIDE, 0.25, Set.of(), Set.of()),
        SHOULDER(TopEdges.SHOULDER, 0.5, Set.of(), Set.of()),
        ARMHOLE(TopEdges.ARMHOLE, 0.6, Set.of(), Set.of()),
        NECKLINE(TopEdges.NECKLINE, 0.5, Set.of(), Set.of()),
        HEM(EdgeNames.HEM, 0.5, Set.of(), Set.of()),
        /**
         * A half with a dart in its centre is no half to unfold. With the dart held elsewhere the lower part stands
         * aslant, more in the half with the sharper dart: sides copied from the front do not begin where those of the
         * back do, and what moves straight down lengthens them by a little different amounts.
         */
        CENTRE(
                EdgeNames.CENTRE,
                0.4,
                Set.of(
                        "unfold piece",
                        "straighten side seams",
                        "square sides",
                        "flare sides",
                        "split body",
                        "inset neckline"),
                Set.of("shape waist", "lengthen body"));

        private final Name edge;
        private final double share;
        private final Set<String> refused;
        private final Set<String> aslant;

        Where(Name edge, double share, Set<String> refused, Set<String> aslant) {
            this.edge = edge;
            this.share = share;
            this.refused = refused;
            this.aslant = aslant;
        }

        private Garment on(Garment block) {
            Garment darted = block;
            for (Name piece : List.of(TopNames.FRONT, TopNames.BACK)) {
                if (this == CENTRE) {
                    darted = darted.withPiece(darted.piece(piece).withCut(Cut.pair()));
                }
                boolean opensHere = this == SIDE || this == CENTRE;
                Place opened = opensHere ? Place.share(edge, share) : Place.share(EdgeNames.SIDE, SIDE.share);
                darted = darted.adjust(Darts.openDart(piece, DART, opened, mm(20), mm(100)));
                if (!opensHere) {
                    darted = darted.adjust(Darts.moveDart(piece, DART, Place.share(edge, share)));
                }
            }
            return darted;
        }
    }

    @ParameterizedTest
    @EnumSource(Where.class)
    void is_made_with_every_seam_true_and_the_darts_there_or_refused_for_a_reason_listed(Where where) {
        List<String> wrong = new ArrayList<>();
        Set<String> refused = new TreeSet<>();
        int made = 0;
        for (StepKind kind : KINDS) {
            DoneSteps steps = new DoneSteps(kind.name().hashCode());
            for (int i = 0; i < BODIES && !OF_DARTS.contains(kind.name()); i++) {
                Optional<Garment> ready = steps.ready(steps.block(5 * i + 1), kind);
                Optional<Step> step = ready.flatMap(garment -> steps.done(garment, kind));
                if (step.isPresent() && hasWholeBody(ready.get())) {
                    Garment plain = ready.get().adjust(step.get());
                    Garment darted = where.on(ready.get());
                    try {
                        Garment after = darted.adjust(step.get());
                        made++;
                        if (!where.aslant.contains(kind.name())) {
                            untrue(darted, plain, after).forEach(fault -> wrong.add(kind.name() + ": " + fault));
                        }
                        if (!kind.name().equals("mirror piece")
                                && !angles(after).containsAll(angles(darted))) {
                            wrong.add(kind.name() + ": " + angles(darted) + " became " + angles(after));
                        }
                    } catch (PatternException e) {
                        refused.add(kind.name());
                    }
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(refused).contains(NOT_YET).containsAll(where.refused);
        refused.removeAll(where.refused);
        refused.removeAll(NO_ROOM);
        assertThat(refused).containsExactly(NOT_YET);
        assertThat(made).isGreaterThan(100);
    }

    private static boolean hasWholeBody(Garment garment) {
        return Stream.of(TopNames.FRONT, TopNames.BACK)
                .allMatch(name -> garment.hasPiece(name) && garment.piece(name).hasEdge(TopEdges.NECKLINE));
    }

    private static List<String> untrue(Garment darted, Garment plain, Garment after) {
        Set<Name> before = Stream.of(darted, plain)
                .flatMap(garment -> garment.walkSeams().seams().stream())
                .filter(seam -> !seam.isTrue())
                .map(seam -> seam.seam().name())
                .collect(Collectors.toSet());
        return after.walkSeams().seams().stream()
                .filter(seam -> !seam.isTrue() && !before.contains(seam.seam().name()))
                .map(StepsOnDartsTest::told)
                .toList();
    }

    private static String told(WalkedSeam seam) {
        return "seam " + seam.seam().name() + " is off by " + seam.error().text();
    }

    private static List<Long> angles(Garment garment) {
        return garment.pieces().stream()
                .flatMap((Piece piece) -> Dart.all(piece).stream())
                .map(dart -> Math.round(dart.angle().degrees() * 1e6))
                .toList();
    }
}
