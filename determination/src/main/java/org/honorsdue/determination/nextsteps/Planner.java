package org.honorsdue.determination.nextsteps;

import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.finding.Need;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.paper.ProofDocument;
import org.honorsdue.service.fact.ServiceFacts;

/** Turns needs into requests, chooses the easiest requests that settle every need, and says why. */
final class Planner {
    private static final int UNKNOWN_EFFORT = 5;

    /** Of the months that would do for a question, the most that are weighed against each other. */
    private static final int MONTHS_WEIGHED = 3;

    /** Kept by company and month: asking for "everything" is asking for nothing. */
    private static final Set<String> BY_COMPANY_AND_MONTH = Set.of("morning-reports", "unit-rosters");

    private final Reference reference;
    private final Occasions occasions;
    private final Likely likely;

    Planner(ServiceFacts facts, Reference reference) {
        this.reference = reference;
        this.occasions = new Occasions(facts, reference);
        this.likely = new Likely(facts);
    }

    /** A question with what would settle it, in documents. */
    private record Open(OpenQuestion question, Need need) {}

    /** A question with the requests that would settle it: all of any one set. */
    private record Quest(OpenQuestion question, List<Set<Request>> ways) {}

    NextSteps plan(Findings findings) {
        var open = open(findings);
        var months = decisiveMonths(open);
        var quests = new ArrayList<Quest>();
        var beyond = new ArrayList<OpenQuestion>();
        for (var one : open) {
            var ways = ways(one, months);
            if (ways.isEmpty()) {
                beyond.add(one.question());
            } else {
                quests.add(new Quest(one.question(), ways));
            }
        }
        var choice = SmallestCover.of(quests.stream().map(Quest::ways).toList(), this::effort);
        return new NextSteps(
                steps(quests, choice.things()),
                beyond,
                quests.size(),
                choice.cost(),
                choice.proven(),
                reasoning(quests, beyond.size(), choice));
    }

    private List<Open> open(Findings findings) {
        var open = new ArrayList<Open>();
        for (var finding : findings.findings()) {
            for (var need : finding.needs()) {
                open.add(new Open(new OpenQuestion(finding.award(), finding.name(), need.question()), need));
            }
        }
        var asked = new TreeSet<String>();
        for (var result : findings.crosschecks()) {
            Doubt.of(result, reference)
                    .filter(doubt -> asked.add(doubt.need().question()))
                    .ifPresent(doubt -> open.add(new Open(
                            new OpenQuestion(
                                    result.check(), doubt.name(), doubt.need().question()),
                            doubt.need())));
        }
        return open;
    }

    /** Months that answer at least as many questions as any other month that answers the same ones. */
    private SortedSet<YearMonth> decisiveMonths(List<Open> open) {
        var windows = new ArrayList<Window>();
        for (var one : open) {
            boolean monthly = one.need().settledBy().stream()
                    .anyMatch(way -> way.stream().anyMatch(BY_COMPANY_AND_MONTH::contains));
            if (monthly) {
                one.need().wanted().stream()
                        .map(wanted -> occasions.of(wanted, one.question().about()))
                        .forEach(windows::add);
            }
        }
        var answers = new TreeMap<YearMonth, Set<Integer>>();
        for (int i = 0; i < windows.size(); i++) {
            for (var month : windows.get(i).months()) {
                answers.computeIfAbsent(month, key -> new TreeSet<>()).add(i);
            }
        }
        var kept = new TreeSet<YearMonth>();
        answers.forEach((month, answered) -> {
            boolean better = answers.entrySet().stream()
                    .anyMatch(other -> other.getValue().containsAll(answered)
                            && (other.getValue().size() > answered.size()
                                    || other.getKey().isBefore(month)));
            if (!better) {
                kept.add(month);
            }
        });
        return kept;
    }

    /** Ways by documents this man can have had; if none is left, all the ways the rules know. */
    private List<Set<Request>> ways(Open open, SortedSet<YearMonth> months) {
        var likelyWays = open.need().settledBy().stream()
                .filter(way -> way.stream().allMatch(likely::exists))
                .toList();
        var ways = new LinkedHashSet<Set<Request>>();
        for (var documents : likelyWays.isEmpty() ? open.need().settledBy() : likelyWays) {
            List<Set<Request>> partial = List.of(Set.of());
            for (var document : new TreeSet<>(documents)) {
                partial = combine(partial, requests(document, open, months));
            }
            ways.addAll(partial);
        }
        return List.copyOf(ways);
    }

    private static List<Set<Request>> combine(List<Set<Request>> ways, List<Set<Request>> choices) {
        var combined = new ArrayList<Set<Request>>();
        for (var way : ways) {
            for (var choice : choices) {
                var both = new TreeSet<>(way);
                both.addAll(choice);
                combined.add(both);
            }
        }
        return combined;
    }

    /** The ways to ask for a kind of document so that it answers its part of the need. */
    private List<Set<Request>> requests(String document, Open open, SortedSet<YearMonth> months) {
        if (!BY_COMPANY_AND_MONTH.contains(document)) {
            return List.of(Set.of(new Request(document, "", Optional.empty())));
        }
        List<Set<Request>> choices = List.of(Set.of());
        for (var window : windows(document, open)) {
            var company = occasions.company(window).orElse("his company (not yet known)");
            var inWindow = months.stream()
                    .filter(window::contains)
                    .limit(MONTHS_WEIGHED)
                    .toList();
            var one = new ArrayList<Set<Request>>();
            for (var month : inWindow.isEmpty() ? List.of(window.first()) : inWindow) {
                one.add(Set.of(new Request(document, company, Optional.of(month))));
            }
            choices = combine(choices, one);
        }
        return choices;
    }

    /** The windows in which the document must speak for its part of the need, each once. */
    private Set<Window> windows(String document, Open open) {
        var proves = reference.document(document).map(ProofDocument::proves).orElse(List.of());
        var windows = new TreeSet<>(Comparator.comparing(Window::first).thenComparing(Window::last));
        open.need().wanted().stream()
                .filter(wanted -> proves.contains(wanted.kind()))
                .map(wanted -> occasions.of(wanted, open.question().about()))
                .forEach(windows::add);
        return windows;
    }

    private int effort(Request request) {
        return reference.document(request.document()).map(Likely::effort).orElse(UNKNOWN_EFFORT);
    }

    private List<Step> steps(List<Quest> quests, SortedSet<Request> chosen) {
        var steps = new ArrayList<Step>();
        for (var request : inOrder(quests, chosen)) {
            var document = reference.document(request.document());
            if (document.isPresent()) {
                steps.add(step(request, document.get(), quests, chosen));
            }
        }
        return steps;
    }

    /** What settles or bears on most questions for its effort, by the chance that it exists at all, goes first. */
    private List<Request> inOrder(List<Quest> quests, SortedSet<Request> chosen) {
        return chosen.stream()
                .sorted(Comparator.comparingDouble((Request request) -> -worth(request, quests, chosen))
                        .thenComparingInt(this::effort)
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
    }

    private double worth(Request request, List<Quest> quests, SortedSet<Request> chosen) {
        double chance = reference
                .document(request.document())
                .filter(ProofDocument::burned)
                .map(document -> Likely.LEFT_BY_THE_FIRE)
                .orElse(1.0);
        return chance * uses(request, quests, chosen) / effort(request);
    }

    private static long uses(Request request, List<Quest> quests, SortedSet<Request> chosen) {
        return quests.stream().filter(quest -> used(request, quest, chosen)).count();
    }

    private static boolean used(Request request, Quest quest, SortedSet<Request> chosen) {
        return quest.ways().stream().anyMatch(way -> way.contains(request) && chosen.containsAll(way));
    }

    private Step step(Request request, ProofDocument document, List<Quest> quests, SortedSet<Request> chosen) {
        var settles = new ArrayList<OpenQuestion>();
        var bearsOn = new ArrayList<OpenQuestion>();
        for (var quest : quests) {
            if (quest.ways().contains(Set.of(request))) {
                settles.add(quest.question());
            } else if (used(request, quest, chosen)) {
                bearsOn.add(quest.question());
            }
        }
        return new Step(
                document,
                subject(request),
                request.month(),
                settles,
                bearsOn,
                because(request, settles.size() + bearsOn.size(), quests),
                otherwise(request, quests, chosen),
                cautions(request, document));
    }

    private static String subject(Request request) {
        return request.month()
                .map(month -> request.company() + ", " + inWords(month))
                .orElse("");
    }

    private static String inWords(YearMonth month) {
        return month.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " " + month.getYear();
    }

    private String because(Request request, int questions, List<Quest> quests) {
        var says = new StringBuilder("Bears on %d of the %d open questions at effort %d."
                .formatted(questions, quests.size(), effort(request)));
        request.month()
                .ifPresent(month ->
                        says.append(" One month of one company is enough: it falls in the time of each of them."));
        return says.toString();
    }

    /** What to turn to when this one is not to be had: the easiest choice without it, less what is asked for anyway. */
    private List<String> otherwise(Request request, List<Quest> quests, SortedSet<Request> chosen) {
        var without = quests.stream()
                .map(quest -> quest.ways().stream()
                        .filter(way -> !way.contains(request))
                        .toList())
                .toList();
        return SmallestCover.of(without, this::effort).things().stream()
                .filter(other -> !chosen.contains(other))
                .map(this::named)
                .toList();
    }

    private String named(Request request) {
        var name =
                reference.document(request.document()).map(ProofDocument::name).orElse(request.document());
        return request.month().isPresent() ? name + ", " + subject(request) : name;
    }

    private List<String> cautions(Request request, ProofDocument document) {
        var cautions = new ArrayList<String>();
        cautions.add(
                document.burned()
                        ? "The fire of 12 July 1973 took about four in five of these files; the answer that there is no file says nothing about the award."
                        : "Not touched by the fire of 1973.");
        if (!document.cannotProve().isBlank()) {
            cautions.add("Does not prove: " + document.cannotProve() + ".");
        }
        if (request.month().isPresent() && occasions.onlyUnitAtSeparation()) {
            cautions.add(
                    "The unit on the paper is the one he came home with; if he fought with another, ask for that one.");
        }
        if (request.month().isPresent() && occasions.noUnitKnown()) {
            cautions.add("The center does not search without the company; a pay voucher or an order may name it.");
        }
        return cautions;
    }

    private String reasoning(List<Quest> quests, int beyond, SmallestCover.Choice<Request> choice) {
        if (quests.isEmpty()) {
            return "No question is open that a document could settle.";
        }
        int apart = quests.stream()
                .mapToInt(quest -> quest.ways().stream()
                        .mapToInt(way -> way.stream().mapToInt(this::effort).sum())
                        .min()
                        .orElse(0))
                .sum();
        return "%d of %d open questions are settled by %d documents at effort %d together; each question by itself would cost %d. %s"
                .formatted(
                        quests.size(),
                        quests.size() + beyond,
                        choice.things().size(),
                        choice.cost(),
                        apart,
                        choice.proven()
                                ? "No easier choice settles them all."
                                : "An easier choice may exist: the search was cut short.");
    }
}
