package org.oaktag.examples;

/** The main job. */
public final class NightCrew {
    private NightCrew() {}

    public static void main(String[] args) {
        System.out.println("Oaktag: the night crew's hooded top is not drafted yet.");
    }
}
