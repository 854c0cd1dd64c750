package org.honorsdue.reading;

import static org.assertj.core.api.Assertions.assertThat;

import org.honorsdue.reading.DecodeCorpus.Outcome;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * Box text of an outside examiner, who wrote the expected meanings before the reader was run on any of it; the figures of
 * that first run stand in the head of {@code decode-blind.tsv}.
 */
@DisplayName("Reading of box text nobody had seen")
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class DecodeBlindTest {
    @Test
    void is_right_for_at_least_the_share_of_the_first_run() {
        var judged = DecodeCorpus.judged("decode-blind.tsv");
        assertThat(judged).hasSize(260);
        double odd = DecodeCorpus.share(DecodeCorpus.half(judged, true));
        double even = DecodeCorpus.share(DecodeCorpus.half(judged, false));
        long silentOdd = DecodeCorpus.count(DecodeCorpus.half(judged, true), Outcome.SILENT);
        long silentEven = DecodeCorpus.count(DecodeCorpus.half(judged, false), Outcome.SILENT);
        System.out.printf(
                "decode blind: odd %.1f %%, even %.1f %% right; wrong in silence %d odd, %d even%n",
                odd, even, silentOdd, silentEven);
        assertThat(odd).as("share right, odd").isGreaterThanOrEqualTo(98.0);
        assertThat(even).as("share right, even").isGreaterThanOrEqualTo(96.5);
        assertThat(silentOdd + silentEven).as("lines read wrong without a mark").isLessThanOrEqualTo(4);
    }
}
