package org.honorsdue.scanning.choice;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.scanning.picture.Gray;
import org.honorsdue.scanning.recognition.GlyphNet;
import org.honorsdue.scanning.recognition.LineReader;
import org.honorsdue.scanning.typing.Evening;
import org.honorsdue.scanning.typing.LetterCell;
import org.honorsdue.scanning.typing.LetterGrid;
import org.honorsdue.scanning.typing.TypedLine;

/**
 * Reads the lines of one page. Three opinions are asked on every line: the engine on the line as it is, the engine on
 * the line with its ink made even, and the net of letter shapes place by place; then the page's own type is learnt from
 * the letters all three agree on and asked as a fourth.
 */
public final class LineChooser {
    /** How far the places are moved, in steps, to see whether the letters become clearer. */
    private static final double[] MOVES = {0, -0.1, 0.1};

    private final LineReader reader;
    private final GlyphNet net;
    private final PeriodWords words;

    public LineChooser(LineReader reader, GlyphNet net, PeriodWords words) {
        this.reader = reader;
        this.net = net;
        this.words = words;
    }

    /** A line with what can stand in it. */
    public record Task(EntryKind kind, TypedLine line) {}

    /** What was read of one line before anything is chosen. */
    private record Opinions(String plain, String evened, List<GlyphNet.Seen> places, double[] ink) {}

    /**
     * @param goOn told the share of the lines read; when it says no, the rest of the lines come back {@link LineChoice#UNREAD}
     * @return one choice for each task, in order
     */
    public List<LineChoice> choose(List<Task> tasks, java.util.function.DoublePredicate goOn) {
        var grid = LetterGrid.of(tasks.stream().map(Task::line).toList());
        var opinions = new ArrayList<Opinions>();
        for (var task : tasks) {
            if (!goOn.test(opinions.size() / (double) tasks.size())) {
                break;
            }
            opinions.add(opinions(task.line(), grid));
        }
        var choices = new ArrayList<LineChoice>();
        var ballots = new ArrayList<Ballot>();
        for (var opinion : opinions) {
            var ballot = new Ballot(opinion.places);
            var net = ballot.copy();
            ballot.count(opinion.plain, net, 1);
            ballot.count(opinion.evened, net, 1);
            ballots.add(ballot);
        }
        var type = PageType.of(opinions.stream().map(Opinions::places).toList(), ballots);
        for (int i = 0; i < tasks.size(); i++) {
            if (i >= opinions.size()) {
                choices.add(LineChoice.UNREAD);
                continue;
            }
            type.count(opinions.get(i).places, ballots.get(i));
            choices.add(new LetterChoice(ballots.get(i), words, opinions.get(i).places, type, opinions.get(i).ink)
                    .choose(tasks.get(i).kind(), opinions.get(i).plain));
        }
        return choices;
    }

    private Opinions opinions(TypedLine line, LetterGrid grid) {
        var plain = reader.read(whitened(line.picture(), 20, 205)).text();
        var even = Evening.even(line.picture(), (int) grid.step(), line.grain());
        var evened = reader.read(whitened(even, 40, 170).localMean(1)).text();
        double move = 0;
        List<GlyphNet.Seen> places = List.of();
        var middles = grid.middles(line);
        double clearest = Double.NEGATIVE_INFINITY;
        for (double each : MOVES) {
            var seen = new ArrayList<GlyphNet.Seen>();
            double clear = 0;
            for (double middle : middles) {
                var place = net.see(LetterCell.of(line, middle + each * grid.step(), grid.step()));
                seen.add(place);
                clear += Math.log(place.likelihood()[place.best()] + 1e-6);
            }
            if (clear > clearest) {
                clearest = clear;
                places = seen;
                move = each;
            }
            if (clear > -0.05 * middles.size()) {
                break;
            }
        }
        var ink = new double[middles.size()];
        for (int i = 0; i < ink.length; i++) {
            ink[i] = LetterCell.darkest(line, middles.get(i) + move * grid.step(), grid.step());
        }
        return new Opinions(plain, evened, places, ink);
    }

    /** Paper to white, and the ink stretched. */
    private static Gray whitened(Gray line, int black, int range) {
        var made = new byte[line.pixels().length];
        for (int i = 0; i < made.length; i++) {
            int value = ((line.pixels()[i] & 255) - black) * 255 / range;
            made[i] = (byte) Math.max(0, Math.min(255, value));
        }
        return new Gray(line.width(), line.height(), made);
    }
}
