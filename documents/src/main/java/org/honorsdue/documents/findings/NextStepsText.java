package org.honorsdue.documents.findings;

import java.util.List;
import java.util.stream.Collectors;
import org.honorsdue.determination.nextsteps.NextSteps;
import org.honorsdue.determination.nextsteps.OpenQuestion;
import org.honorsdue.determination.nextsteps.Step;

/** What to look for next, for the reader at a terminal. */
public final class NextStepsText {
    private final Ink ink;
    private final int width;

    public NextStepsText(Ink ink, int width) {
        this.ink = ink;
        this.width = width;
    }

    /** Empty when nothing is open. */
    public String write(NextSteps next) {
        if (next.steps().isEmpty() && next.beyond().isEmpty()) {
            return "";
        }
        var page = new Column(width);
        page.line(ink.heading("WHAT TO LOOK FOR NEXT"));
        int number = 0;
        for (var step : next.steps()) {
            number++;
            step(page, number, step);
        }
        if (!next.beyond().isEmpty()) {
            page.paragraph("  No document known here settles: ", names(next.beyond()), ink::doubt);
        }
        page.paragraph("  ", next.reasoning(), ink::dim);
        return page.toString();
    }

    private void step(Column page, int number, Step step) {
        String what = step.document().name() + (step.subject().isBlank() ? "" : ": " + step.subject());
        page.paragraph("  %d. ".formatted(number), what, ink::bold);
        page.paragraph("     where: ", step.document().keptBy());
        if (!step.settles().isEmpty()) {
            page.paragraph("     settles: ", names(step.settles()));
        }
        if (!step.bearsOn().isEmpty()) {
            page.paragraph("     helps with: ", names(step.bearsOn()));
        }
        page.paragraph("     ", step.because(), ink::dim);
        if (!step.otherwise().isEmpty()) {
            page.paragraph("     if it is not to be had: ", String.join("; ", step.otherwise()), ink::dim);
        }
        step.cautions().forEach(caution -> page.paragraph("     ! ", caution, ink::doubt));
    }

    private static String names(List<OpenQuestion> questions) {
        return questions.stream().map(OpenQuestion::name).distinct().collect(Collectors.joining(", "));
    }
}
