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
import org.honorsdue.determination.finding.FactWanted;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.finding.Need;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.paper.ProofDocument;
import org.honorsdue.service.fact.ServiceFacts;

/** Turns needs into requests, chooses the easiest requests that settle every need, and says why. */
final class Planner {
    /** Added to the effort of asking for a file of which the fire left one in five. */
    static final int BURNED = 2;

    /** Of the months that would do for a question, the most that are weighed against each other. */
    private static final int MONTHS_WEIGHED = 3;

    /** Kept by company and month: asking for "everything" is asking for nothing. */
    private static final Set<String> BY_COMPANY_AND_MONTH = Set.of("morning-reports", "unit-rosters");

    private final Reference reference;
    private final Occasions occasions;

    Planner(ServiceFacts facts, Reference reference) {
        this.reference = reference;
        this.occasions = new Occasions(facts, reference);
    }

    /** A question with the requests that would settle it: all of any one set. */
    private record Quest(OpenQuestion question, Need need, List<Set<Request>> ways) {}

    NextSteps plan(Findings findings) {
        var quests = new ArrayList<Quest>();
        var beyond = new ArrayList<OpenQuestion>();
        var months = decisiveMonths(findings);
        for (var finding : findings.findings()) {
            for (var need : finding.needs()) {
                var question = new OpenQuestion(finding.award(), finding.name(), need.question());
                var ways = ways(need, months);
                if (ways.isEmpty()) {
                    beyond.add(question);
                } else {
                    quests.add(new Quest(question, need, ways));
                }
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

    /** Months that answer at least as many questions as any other month that answers the same ones. */
    private SortedSet<YearMonth> decisiveMonths(Findings findings) {
        var windows = new ArrayList<Window>();
        for (var finding : findings.findings()) {
            for (var need : finding.needs()) {
                boolean monthly = need.settledBy().stream()
                        .anyMatch(way -> way.stream().anyMatch(BY_COMPANY_AND_MONTH::contains));
                if (monthly) {
                    need.wanted().stream().map(occasions::of).forEach(windows::add);
                }
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

    private List<Set<Request>> ways(Need need, SortedSet<YearMonth> months) {
        var ways = new ArrayList<Set<Request>>();
        for (var documents : need.settledBy()) {
            List<Set<Request>> partial = List.of(Set.of());
            for (var document : new TreeSet<>(documents)) {
                partial = combine(partial, requests(document, need, months));
            }
            ways.addAll(partial);
        }
        return List.copyOf(new LinkedHashSet<>(ways));
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
    private List<Set<Request>> requests(String document, Need need, SortedSet<YearMonth> months) {
        if (!BY_COMPANY_AND_MONTH.contains(document)) {
            return List.of(Set.of(new Request(document, "", Optional.empty())));
        }
        List<Set<Request>> choices = List.of(Set.of());
        for (var window : windows(document, need)) {
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
    private Set<Window> windows(String document, Need need) {
        var proves = reference.document(document).map(ProofDocument::proves).orElse(List.of());
        var windows = new TreeSet<>(Comparator.comparing(Window::first).thenComparing(Window::last));
        need.wanted().stream()
                .filter(wanted -> proves.contains(wanted.kind()))
                .map(occasions::of)
                .forEach(windows::add);
        if (windows.isEmpty()) {
            need.wanted().stream()
                    .sorted(Comparator.comparing(FactWanted::kind).thenComparing(FactWanted::about))
                    .limit(1)
                    .map(occasions::of)
                    .forEach(windows::add);
        }
        return windows;
    }

    private int effort(Request request) {
        return reference
                .document(request.document())
                .map(document -> document.effort() + (document.burned() ? BURNED : 0))
                .orElse(5);
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

    /** What settles or bears on most questions for its effort goes first. */
    private List<Request> inOrder(List<Quest> quests, SortedSet<Request> chosen) {
        return chosen.stream()
                .sorted(Comparator.comparingDouble(
                                (Request request) -> -(double) uses(request, quests, chosen) / effort(request))
                        .thenComparingInt(this::effort)
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
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
                because(request, document, settles.size() + bearsOn.size(), quests),
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

    private String because(Request request, ProofDocument document, int questions, List<Quest> quests) {
        var says = new StringBuilder("Bears on %d of the %d open questions at effort %d."
                .formatted(questions, quests.size(), effort(request)));
        request.month()
                .ifPresent(month ->
                        says.append(" One month of one company is enough: it falls in the time of each of them."));
        var instead = instead(request, quests);
        if (!instead.isEmpty()) {
            says.append(" Instead of it: ").append(String.join("; ", instead)).append('.');
        }
        return says.toString();
    }

    /** Other single documents that would settle a question this one settles, and why they were not taken. */
    private List<String> instead(Request request, List<Quest> quests) {
        var others = new TreeMap<String, String>();
        for (var quest : quests) {
            if (quest.ways().contains(Set.of(request))) {
                for (var way : quest.ways()) {
                    if (way.size() == 1 && !way.contains(request)) {
                        var other = way.iterator().next();
                        if (!other.document().equals(request.document())) {
                            reference
                                    .document(other.document())
                                    .ifPresent(document -> others.put(document.id(), whyNot(document)));
                        }
                    }
                }
            }
        }
        return List.copyOf(others.values());
    }

    private static String whyNot(ProofDocument document) {
        return document.burned()
                ? document.name() + " (effort %d, and most burned in 1973)".formatted(document.effort())
                : document.name() + " (effort %d)".formatted(document.effort());
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
