package org.oaktag.garment;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SeamTest {

    private static final Name FRONT = Name.of("front");
    private static final Name BAND = Name.of("band");
    private static final Name SIDE = Name.of("side");
    private static final Name END = Name.of("end");

    @Test
    void tells_its_edges_in_the_order_of_sewing_side_a_first() {
        SeamSide a = SeamSide.along(FRONT, SIDE).then(SeamSide.against(FRONT, END));
        Seam seam = Seam.flat(Name.of("joint"), a, SeamSide.along(BAND, END), "");
        assertThat(seam.edges())
                .containsExactly(EdgeRef.of(FRONT, SIDE), EdgeRef.of(FRONT, END), EdgeRef.of(BAND, END));
        assertThat(a.edges()).containsExactly(EdgeRef.of(FRONT, SIDE), EdgeRef.of(FRONT, END));
    }

    @Test
    void tells_an_edge_that_is_sewn_to_its_own_mirror_image_once() {
        Seam closing = Seam.flat(Name.of("closing"), SeamSide.along(BAND, END), SeamSide.along(BAND, END), "");
        assertThat(closing.edges()).containsExactly(EdgeRef.of(BAND, END));
    }
}
