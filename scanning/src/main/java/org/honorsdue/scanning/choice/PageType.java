package org.honorsdue.scanning.choice;

import java.util.List;
import java.util.OptionalDouble;
import org.honorsdue.scanning.recognition.GlyphNet;

/**
 * The type of one page, learnt from the letters that were read without doubt: what the net's last layer but one saw,
 * averaged for each letter. A doubtful place is then held against the page's own letters.
 */
final class PageType {
    private static final double SURE = 0.995;
    private static final int ENOUGH = 2;
    private static final double SHARPNESS = 14;
    private static final double WEIGHT = 0.8;

    private final float[][] middle;
    private final int[] count;

    private PageType(float[][] middle, int[] count) {
        this.middle = middle;
        this.count = count;
    }

    static PageType of(List<List<GlyphNet.Seen>> lines, List<Ballot> ballots) {
        var middle = new float[Ballot.LETTERS][GlyphNet.FULL];
        var count = new int[Ballot.LETTERS];
        for (int l = 0; l < lines.size(); l++) {
            for (int i = 0; i < ballots.get(l).places(); i++) {
                int letter = ballots.get(l).best(i);
                if (letter != 0 && ballots.get(l).likelihood(i, letter) > SURE) {
                    var shape = unit(lines.get(l).get(i).shape());
                    for (int k = 0; k < shape.length; k++) {
                        middle[letter][k] += shape[k];
                    }
                    count[letter]++;
                }
            }
        }
        for (int c = 0; c < middle.length; c++) {
            middle[c] = unit(middle[c]);
        }
        return new PageType(middle, count);
    }

    private static float[] unit(float[] shape) {
        double sum = 0;
        for (float value : shape) {
            sum += value * value;
        }
        float length = (float) Math.sqrt(Math.max(1e-12, sum));
        var made = new float[shape.length];
        for (int i = 0; i < shape.length; i++) {
            made[i] = shape[i] / length;
        }
        return made;
    }

    /** How like the page's own letter that place is, -1 to 1; empty where the page has not shown the letter. */
    OptionalDouble likeness(GlyphNet.Seen place, int letter) {
        if (count[letter] < ENOUGH) {
            return OptionalDouble.empty();
        }
        var shape = unit(place.shape());
        double likeness = 0;
        for (int k = 0; k < shape.length; k++) {
            likeness += shape[k] * middle[letter][k];
        }
        return OptionalDouble.of(likeness);
    }

    /** Adds the page's own letters to what speaks for each letter, where a place is not empty. */
    void count(List<GlyphNet.Seen> places, Ballot ballot) {
        for (int i = 0; i < ballot.places(); i++) {
            if (ballot.likelihood(i, 0) > 0.5) {
                continue;
            }
            var shape = unit(places.get(i).shape());
            double nearest = 0;
            var likeness = new double[Ballot.LETTERS];
            for (int c = 1; c < Ballot.LETTERS; c++) {
                if (count[c] >= ENOUGH) {
                    for (int k = 0; k < shape.length; k++) {
                        likeness[c] += shape[k] * middle[c][k];
                    }
                    nearest = Math.max(nearest, likeness[c]);
                }
            }
            for (int c = 0; c < Ballot.LETTERS; c++) {
                // Of a letter that the page has not shown yet nothing is known either way.
                double own = count[c] >= ENOUGH ? likeness[c] : nearest - 0.12;
                ballot.score[i][c] += WEIGHT * SHARPNESS * (own - nearest);
            }
        }
    }
}
