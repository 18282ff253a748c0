package org.oaktag.laws.recipes;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import org.oaktag.adjust.AmountKind;
import org.oaktag.adjust.Closing;
import org.oaktag.adjust.Darts;
import org.oaktag.adjust.LineAcross;
import org.oaktag.adjust.Part;
import org.oaktag.adjust.Pieces;
import org.oaktag.adjust.Place;
import org.oaktag.adjust.Slash;
import org.oaktag.adjust.SlashAndSpread;
import org.oaktag.adjust.SplitPiece;
import org.oaktag.adjust.Spread;
import org.oaktag.adjust.Step;
import org.oaktag.adjust.StepCatalogue;
import org.oaktag.adjust.StepKind;
import org.oaktag.adjust.data.AmountField;
import org.oaktag.adjust.data.Datum;
import org.oaktag.adjustments.TopSteps;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.Name;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;
import org.oaktag.measure.Percent;
import org.oaktag.skirt.PleatKind;
import org.oaktag.skirt.SkirtFinishes;
import org.oaktag.skirt.SkirtShapes;

/**
 * Steps of every kind in the catalogue with amounts drawn by chance from what is usual. Where an amount is a list or a
 * line, the kind has a drawing of its own here.
 */
final class DrawnSteps {

    private static final Name DART = Name.of("dart");

    private final StepCatalogue catalogue = TopSteps.catalogue();
    private final Map<String, Function<Random, Step>> own = new LinkedHashMap<>();

    DrawnSteps() {
        own.put("slash and spread", DrawnSteps::slash);
        own.put("split piece", DrawnSteps::split);
        own.put(
                "open dart",
                random -> Darts.openDart(
                        TopNames.FRONT,
                        DART,
                        Place.share(EdgeNames.SIDE, between(random, 0.1, 0.5)),
                        mm(random, 10, 40),
                        mm(random, 60, 140)));
        own.put("join pieces", random -> {
            boolean yoke = random.nextBoolean();
            Name piece = random.nextBoolean() ? TopNames.FRONT : TopNames.BACK;
            return yoke
                    ? Pieces.joinPieces(
                            EdgeRef.of(piece, Name.of("yoke line")),
                            EdgeRef.of(piece.with("yoke"), Name.of("yoke line")),
                            piece)
                    : Pieces.joinPieces(
                            EdgeRef.of(TopNames.FRONT, TopEdges.SHOULDER),
                            EdgeRef.of(TopNames.BACK, TopEdges.SHOULDER),
                            Name.of("body"));
        });
        own.put(
                "move point",
                random -> Pieces.movePoint(
                        piece(random),
                        Place.share(random.nextBoolean() ? EdgeNames.HEM : EdgeNames.CENTRE, between(random, 0.0, 1.0)),
                        mm(random, -10, 10),
                        mm(random, -10, 10),
                        mm(random, 30, 120)));
        own.put("extend edge", random -> Pieces.extendEdge(edge(random), mm(random, 5, 50)));
        own.put("cut on facing", random -> Pieces.cutOnFacing(edge(random), mm(random, 20, 60)));
        own.put("finish edges", random -> {
            EdgeRef front = EdgeRef.of(TopNames.FRONT, TopEdges.NECKLINE);
            EdgeRef back = EdgeRef.of(TopNames.BACK, TopEdges.NECKLINE);
            return random.nextBoolean() ? Pieces.turnBack(front, back) : Pieces.leaveRaw(front, back);
        });
        own.put(
                "separate facing",
                random -> Pieces.separateFacing(
                        EdgeRef.of(random.nextBoolean() ? TopNames.FRONT : TopNames.BACK, TopEdges.NECKLINE),
                        mm(random, 25, 70),
                        Name.of("facing"),
                        Cloth.knit("facing jersey", Percent.percent(30))));
        own.put(
                "move dart",
                random -> Darts.moveDart(
                        TopNames.FRONT, DART, Place.share(TopEdges.SHOULDER, between(random, 0.2, 0.8))));
        own.put(
                "pleat skirt",
                random -> SkirtShapes.pleatSkirt(
                        List.of(PleatKind.KNIFE, PleatKind.BOX, PleatKind.INVERTED)
                                .get(random.nextInt(3)),
                        4 * (1 + random.nextInt(10)),
                        mm(random, 15, 40)));
        own.put("ease dart", random -> Darts.easeDart(TopNames.FRONT, DART));
        own.put("button front", random -> SkirtFinishes.buttons(mm(random, 15, 30), 4 + random.nextInt(5)));
        own.put(
                "true dart fold",
                random -> Darts.trueDartFold(TopNames.FRONT, DART, random.nextBoolean() ? End.START : End.END));
    }

    List<StepKind> kinds() {
        return catalogue.kinds();
    }

    /** Draws a step of any kind. */
    Step any(Random random) {
        return of(kinds().get(random.nextInt(kinds().size())), random);
    }

    /** Draws a step of a kind. */
    Step of(StepKind kind, Random random) {
        Function<Random, Step> drawing = own.get(kind.name());
        if (drawing != null) {
            return drawing.apply(random);
        }
        Datum.Fields fields = new Datum.Fields(Map.of());
        for (AmountKind amount : kind.amounts()) {
            if (!amount.optional() || random.nextInt(3) == 0) {
                fields = fields.with(amount.field(), drawn(kind, amount, random));
            }
        }
        return kind.read("a drawn step", completed(kind, fields));
    }

    /** An optional record that got one of its amounts gets those that it must have. */
    private static Datum.Fields completed(StepKind kind, Datum.Fields fields) {
        Datum.Fields all = fields;
        for (AmountKind amount : kind.amounts()) {
            int dot = amount.field().lastIndexOf('.');
            boolean inOptional = amount.optional() && dot > 0;
            if (inOptional && all.values().containsKey(amount.field().substring(0, dot))) {
                all = all.with(
                        amount.field(),
                        drawn(kind, amount, new Random(amount.field().length())));
            }
        }
        return all;
    }

    private static Datum drawn(StepKind kind, AmountKind amount, Random random) {
        if (!amount.choices().isEmpty()) {
            return new Datum.Text(
                    amount.choices().get(random.nextInt(amount.choices().size())));
        }
        if (amount.sort() == AmountField.Sort.FLAG) {
            return new Datum.Flag(random.nextBoolean());
        }
        if (amount.sort() == AmountField.Sort.TEXT) {
            return new Datum.Text("drawn");
        }
        AmountKind.Usual usual = amount.usual()
                .orElseThrow(() -> new AssertionError("the kind '" + kind.name() + "' must say what is usual for '"
                        + amount.name() + "', or be drawn in a way of its own"));
        return new Datum.Numeral(between(random, usual.least(), usual.most()));
    }

    private static Step slash(Random random) {
        boolean sleeve = random.nextBoolean();
        Place from = Place.share(EdgeNames.HEM, between(random, 0.3, 0.7));
        Place to = sleeve
                ? Place.corner(TopEdges.CAP_FRONT, End.START)
                : Place.share(TopEdges.SHOULDER, between(random, 0.3, 0.7));
        Spread spread = random.nextBoolean()
                ? Spread.parallel(mm(random, 5, 40))
                : Spread.hinged(random.nextBoolean() ? End.START : End.END, Angle.degrees(between(random, 1, 8)));
        Name piece = sleeve ? TopNames.SLEEVE : random.nextBoolean() ? TopNames.FRONT : TopNames.BACK;
        return new SlashAndSpread(
                piece,
                List.of(Slash.of(LineAcross.straight(from, to), spread)),
                random.nextBoolean() ? Closing.straight() : Closing.smooth());
    }

    private static Step split(Random random) {
        boolean front = random.nextBoolean();
        Name piece = front ? TopNames.FRONT : TopNames.BACK;
        Name yoke = piece.with("yoke");
        return new SplitPiece(
                piece,
                LineAcross.bowed(
                        Place.share(TopEdges.ARMHOLE, between(random, 0.2, 0.5)),
                        Place.share(EdgeNames.CENTRE, between(random, 0.6, 0.9)),
                        mm(random, -10, 10)),
                Part.of(piece, Name.of("yoke line")),
                Part.of(yoke, Name.of("yoke line")),
                piece.with("yoke seam"));
    }

    private static Name piece(Random random) {
        return List.of(TopNames.FRONT, TopNames.BACK, TopNames.SLEEVE).get(random.nextInt(3));
    }

    private static EdgeRef edge(Random random) {
        Name edge = List.of(EdgeNames.HEM, EdgeNames.CENTRE, EdgeNames.SIDE).get(random.nextInt(3));
        return EdgeRef.of(piece(random), edge);
    }

    private static Length mm(Random random, double least, double most) {
        return Length.mm(between(random, least, most));
    }

    /** Draws to a tenth, as a maker gives it. */
    static double between(Random random, double least, double most) {
        double drawn = least + (most - least) * random.nextDouble();
        return most - least > 2 ? Math.round(drawn * 10) / 10.0 : drawn;
    }
}
