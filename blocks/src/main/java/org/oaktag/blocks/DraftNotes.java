package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.garment.Note;
import org.oaktag.measure.Length;

/**
 * What the draft of a knit top says of itself: the rules it followed, what it did beyond what was asked, its cautions.
 */
final class DraftNotes {

    /** A departure smaller than this, in millimetres, is not told. */
    private static final double WORTH_SAYING = 1;

    /** A knit back narrower than the body's by less than this, in millimetres, is not felt (common practice). */
    private static final double WORTH_A_CAUTION = 5;

    private DraftNotes() {}

    static List<Note> of(BodyMeasurements body, TopAmounts ease, SleeveDraft drafted) {
        BodyDraft draft = drafted.body();
        List<Note> notes = new ArrayList<>();
        Length neck = body.measure(BodyMeasure.NECK_BASE_GIRTH);
        Length arm = body.measure(BodyMeasure.UPPER_ARM_GIRTH);
        notes.add(Note.rule("neckline = neck base girth " + neck.text() + " + ease "
                + ease.neckline().text() + ": solved by a front neck depth of "
                + Length.mm(draft.frontNeckDepth()).text()));
        double width = drafted.cap().width();
        notes.add(Note.rule("sleeve width = upper arm girth " + arm.text() + " + ease "
                + Length.mm(width - arm.mm()).text() + ": solved by a cap height of "
                + Length.mm(drafted.cap().height()).text() + ", " + CapBand.text(drafted.share())
                + " of the armhole's depth"));
        if (draft.shoulderBeyond() > WORTH_SAYING) {
            notes.add(Note.done("the shoulder is drawn "
                    + Length.mm(draft.shoulderBeyond()).text()
                    + " longer than the body's, as the back with its ease is so broad; the sleeve is as much shorter"));
        }
        if (draft.shoulderBeyond() < -WORTH_SAYING) {
            notes.add(Note.caution("the shoulder is drawn "
                    + Length.mm(-draft.shoulderBeyond()).text()
                    + " shorter than the body's, as so narrow a chest leaves no armhole below a longer one; the sleeve is as"
                    + " much longer: give more ease at the bust"));
        }
        addDepth(notes, ease, drafted);
        addWidth(notes, draft.capBand(), arm.mm() + ease.upperArm().mm(), width);
        addRoom(notes, draft);
        return notes;
    }

    private static void addDepth(List<Note> notes, TopAmounts ease, SleeveDraft drafted) {
        double deeper = drafted.body().depth() - ease.scyeDepth().mm();
        if (Math.abs(deeper) > WORTH_SAYING) {
            notes.add(Note.done(
                    "the armhole is drawn " + Length.mm(Math.abs(deeper)).text()
                            + (deeper > 0 ? " deeper" : " less deep") + " than asked, so that the cap of the sleeve is "
                            + drafted.body().capBand().text() + " of its depth"));
        }
    }

    private static void addWidth(List<Note> notes, CapBand band, double asked, double width) {
        if (width > asked + WORTH_SAYING) {
            notes.add(Note.done("the sleeve is " + Length.mm(width - asked).text()
                    + " wider than asked: a cap of more than "
                    + CapBand.text(band.most())
                    + " of the armhole's depth would bind"));
        }
        if (width < asked - WORTH_SAYING) {
            notes.add(Note.caution("the sleeve is " + Length.mm(asked - width).text()
                    + " narrower than asked: a cap of less than "
                    + CapBand.text(band.least())
                    + " of the armhole's depth would fold when the arm hangs; give more ease at the bust, or less at the"
                    + " upper arm"));
        }
    }

    private static void addRoom(List<Note> notes, BodyDraft draft) {
        if (draft.narrowerThanBody() > WORTH_A_CAUTION) {
            notes.add(Note.caution(
                    "the back is " + Length.mm(draft.narrowerThanBody()).text()
                            + " narrower across than the body on each side: so little ease at the bust leaves no more room for an"
                            + " armhole"));
        }
    }
}
