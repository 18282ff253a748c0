package org.oaktag.laws.garments;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.examples.HoodedTop;
import org.oaktag.examples.gallery.Skirts;
import org.oaktag.examples.gallery.Wardrobe;
import org.oaktag.export.gallery.GalleryStyle;
import org.oaktag.garment.Aspect;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.testkit.lines.LineTable;

/** What is called front or back lies there: the words are for the maker, and nothing reads them. */
class AspectTest {

    @Test
    void every_piece_and_edge_whose_name_says_where_it_lies_lies_there() {
        BodyMeasurements any = LineTable.adults(1).get(0);
        List<Garment> garments = Stream.of(
                        Stream.of(HoodedTop.style().on(any)),
                        Wardrobe.of(name -> any).stream().map(AspectTest::made),
                        Skirts.of(name -> any).stream().map(AspectTest::made))
                .flatMap(each -> each)
                .toList();
        List<String> wrong = new ArrayList<>();
        int said = 0;
        for (Garment garment : garments) {
            for (Piece piece : garment.pieces()) {
                for (Edge edge : piece.edges()) {
                    String words = piece.name() + " " + edge.name();
                    boolean front = says(words, Aspect.FRONT);
                    if (front == says(words, Aspect.BACK)) {
                        continue;
                    }
                    said++;
                    Aspect named = front ? Aspect.FRONT : Aspect.BACK;
                    if (!piece.aspect(edge.name()).filter(named::equals).isPresent()) {
                        wrong.add(garment.title() + ": " + words);
                    }
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(said).isPositive();
    }

    private static Garment made(GalleryStyle style) {
        return style.style().on(style.body());
    }

    private static boolean says(String words, Aspect aspect) {
        return List.of(words.split(" ")).contains(aspect.label());
    }
}
