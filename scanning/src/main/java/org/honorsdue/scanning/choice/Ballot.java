package org.honorsdue.scanning.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.honorsdue.scanning.recognition.GlyphNet;

/**
 * One line as a row of places of one letter each, with what speaks for every letter at every place: the logarithm of
 * its likelihood, up to a constant. The letters are those of {@link GlyphNet#LETTERS}; the first is an empty place.
 */
final class Ballot {
    static final int LETTERS = GlyphNet.LETTERS.length();

    /** How far an engine's word counts beside the net's. */
    private static final double ENGINE = 0.4;

    private static final double ENGINE_RIGHT = 0.93;

    final double[][] score;

    /** What each engine that was counted saw at each place. */
    private final List<int[]> votes = new ArrayList<>();

    Ballot(List<GlyphNet.Seen> places) {
        score = new double[places.size()][LETTERS];
        for (int i = 0; i < score.length; i++) {
            var likelihood = places.get(i).likelihood();
            for (int c = 0; c < LETTERS; c++) {
                score[i][c] = Math.log(likelihood[c] + 1e-4);
            }
        }
    }

    int places() {
        return score.length;
    }

    /**
     * Counts an engine's reading of the line. Its letters are laid on the places where the net makes them likeliest, in
     * order.
     *
     * @param before what the net alone says, so that engines do not place each other's letters
     */
    void count(String text, double[][] before, double weight) {
        int n = score.length;
        int m = text.length();
        var letters = new int[m];
        for (int j = 0; j < m; j++) {
            letters[j] = GlyphNet.LETTERS.indexOf(text.charAt(j));
        }
        var best = new double[n + 1][m + 1];
        var step = new byte[n + 1][m + 1];
        for (int i = 0; i <= n; i++) {
            for (int j = 0; j <= m; j++) {
                if (i == 0 && j == 0) {
                    continue;
                }
                double most = Double.NEGATIVE_INFINITY;
                byte how = 0;
                if (i > 0 && j > 0) {
                    double fit = letters[j - 1] < 0 ? -5 : Math.max(-5, before[i - 1][letters[j - 1]]);
                    most = best[i - 1][j - 1] + fit;
                    how = 1;
                }
                if (i > 0) {
                    // A place the engine saw nothing at; empty places cost little, engines give one space for many.
                    double skipped = best[i - 1][j] + Math.max(-5, before[i - 1][0]) - 0.3;
                    if (skipped > most) {
                        most = skipped;
                        how = 2;
                    }
                }
                if (j > 0) {
                    double surplus = best[i][j - 1] - (text.charAt(j - 1) == ' ' ? 1.0 : 4.5);
                    if (surplus > most) {
                        most = surplus;
                        how = 3;
                    }
                }
                best[i][j] = most;
                step[i][j] = how;
            }
        }
        var seen = new int[n];
        int i = n;
        int j = m;
        while (i > 0 || j > 0) {
            switch (step[i][j]) {
                case 1 -> {
                    vote(i - 1, letters[j - 1], weight);
                    seen[i - 1] = letters[j - 1];
                    i--;
                    j--;
                }
                case 2 -> {
                    vote(i - 1, 0, weight * 0.4);
                    i--;
                }
                default -> j--;
            }
        }
        votes.add(seen);
    }

    /** The share of the engines that saw that letter at that place, 0 to 1. */
    double agreement(int place, int letter) {
        return votes.stream().filter(seen -> seen[place] == letter).count() / (double) Math.max(1, votes.size());
    }

    private void vote(int place, int letter, double weight) {
        if (letter < 0) {
            return;
        }
        double other = Math.log((1 - ENGINE_RIGHT) / (LETTERS - 1));
        double own = Math.log(ENGINE_RIGHT);
        for (int c = 0; c < LETTERS; c++) {
            score[place][c] += ENGINE * weight * ((c == letter ? own : other) - other);
        }
    }

    int best(int place) {
        int best = 0;
        for (int c = 1; c < LETTERS; c++) {
            if (score[place][c] > score[place][best]) {
                best = c;
            }
        }
        return best;
    }

    /** How likely that letter is at that place, 0 to 1, all letters considered. */
    double likelihood(int place, int letter) {
        double most = score[place][best(place)];
        double sum = 0;
        for (double value : score[place]) {
            sum += Math.exp(value - most);
        }
        return Math.exp(score[place][letter] - most) / sum;
    }

    double[][] copy() {
        return Arrays.stream(score).map(double[]::clone).toArray(double[][]::new);
    }
}
