package org.honorsdue.reading.token;

import java.time.Month;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.honorsdue.reading.token.Sense.Standing;
import org.honorsdue.reading.token.Vocabulary.Known;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.history.Campaign;
import org.honorsdue.reference.history.Place;
import org.honorsdue.reference.law.Award;
import org.honorsdue.reference.paper.Abbreviation;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.TableFaults;
import org.honorsdue.reference.table.TableSource;
import org.jspecify.annotations.Nullable;

/**
 * All that clerks are known to have typed, compiled for fast look-up: the spellings and phrases of this module, and the
 * abbreviations, awards, campaigns and places of the reference. Built once; immutable and thread-safe.
 */
public final class Lexicon {
    /** Short words that occur run together with others, as in {@code GOODCONDUCTRIB}. */
    static final Set<String> SHORT_PARTS = Set.of("RIB", "MDL", "BDG", "INF", "AND", "EAME");

    private final Vocabulary vocabulary;
    private final PhraseTable phrases;
    private final List<String> ideas;
    private final List<List<String>> spellingsOf;
    private final List<Opening> openings;
    private final int[] monthOfIdea;

    private Lexicon(Vocabulary vocabulary, PhraseTable phrases, List<String> ideas, List<List<String>> spellingsOf) {
        this.vocabulary = vocabulary;
        this.phrases = phrases;
        this.ideas = List.copyOf(ideas);
        this.spellingsOf = List.copyOf(spellingsOf);
        openings = findOpenings();
        monthOfIdea = new int[ideas.size()];
        for (Month month : Month.values()) {
            int idea = ideas.indexOf(month.name().toLowerCase(Locale.ROOT));
            if (idea >= 0) {
                monthOfIdea[idea] = month.getValue();
            }
        }
    }

    /**
     * Compiles the lexicon.
     *
     * @throws TableFaults with every fault of the two tables of this module
     */
    public static Lexicon of(Reference reference) {
        return of(reference, TableSource.beside(Lexicon.class));
    }

    static Lexicon of(Reference reference, TableSource source) {
        var faults = new FaultList();
        var words = LexiconTables.words(source, faults);
        var patterns = LexiconTables.phrases(source, faults);
        faults.refuseIfAny();
        return new Builder(words, patterns).with(reference).build();
    }

    Vocabulary vocabulary() {
        return vocabulary;
    }

    PhraseTable phrases() {
        return phrases;
    }

    /** 1 to 12 when a spelling can name a month; else 0. */
    int month(Known known) {
        for (int idea : known.ideas()) {
            if (idea < monthOfIdea.length && monthOfIdea[idea] > 0) {
                return monthOfIdea[idea];
            }
        }
        return 0;
    }

    /**
     * An idea that a phrase can begin with.
     *
     * @param capitals its name in capitals
     * @param node where the phrases that begin with it go on
     */
    record Opening(String capitals, int node) {}

    /** The ideas of the tables of this module that a phrase can begin with; words taken as typed are left out. */
    List<Opening> openings() {
        return openings;
    }

    private List<Opening> findOpenings() {
        var found = new ArrayList<Opening>();
        for (int idea : phrases.children(PhraseTable.ROOT)) {
            String name = ideas.get(idea);
            if (!name.startsWith("=") && name.length() >= 4) {
                found.add(new Opening(name.toUpperCase(Locale.ROOT), phrases.step(PhraseTable.ROOT, idea)));
            }
        }
        return List.copyOf(found);
    }

    /** The idea in full, as in {@code conduct}. */
    String idea(int number) {
        return ideas.get(number);
    }

    List<String> spellings(int idea) {
        return spellingsOf.get(idea);
    }

    /** The words of a text. */
    public Words words(String text) {
        return Words.of(text, vocabulary);
    }

    /** Collects spellings and phrases. */
    private static final class Builder {
        private final Map<String, Integer> ideaNumbers = new LinkedHashMap<>();
        private final Map<String, Set<Integer>> spellings = new LinkedHashMap<>();
        private final PhraseTable.Builder phrases = new PhraseTable.Builder();
        private final int patternIdeas;
        private @Nullable Lexicon patternsOnly;

        Builder(List<LexiconTables.Word> words, List<LexiconTables.Phrase> patterns) {
            for (var word : words) {
                int idea = idea(word.idea());
                spell(word.idea().toUpperCase(Locale.ROOT), idea);
                word.spellings().forEach(spelling -> spell(spelling, idea));
            }
            Vocabulary.NUMBER_WORDS.forEach(word -> spell(word, idea(word.toLowerCase(Locale.ROOT))));
            Vocabulary.ORDINAL_WORDS.forEach(word -> spell(word, idea(word.toLowerCase(Locale.ROOT))));
            for (var pattern : patterns) {
                for (var sequence : pattern.sequences()) {
                    phrases.add(sequence.stream().map(this::ideaOfPatternWord).toList(), pattern.sense());
                }
            }
            addPlurals();
            patternIdeas = ideaNumbers.size();
        }

        private int idea(String name) {
            return ideaNumbers.computeIfAbsent(name, key -> ideaNumbers.size());
        }

        private void spell(String spelling, int idea) {
            spellings.computeIfAbsent(spelling, key -> new LinkedHashSet<>()).add(idea);
        }

        private void addPlurals() {
            for (var known : List.copyOf(spellings.entrySet())) {
                String word = known.getKey();
                if (word.length() >= 3 && !word.endsWith("S") && Character.isLetter(word.charAt(word.length() - 1))) {
                    known.getValue().forEach(idea -> spell(word + "S", idea));
                }
            }
        }

        private int ideaOfPatternWord(String word) {
            boolean isNew = !ideaNumbers.containsKey(word);
            int idea = idea(word);
            if (isNew) {
                spell(canonical(word.toUpperCase(Locale.ROOT)), idea);
            }
            return idea;
        }

        /** Ordinals in figures have one spelling: 1ST, 2D, 3D, 4TH. */
        static String canonical(String word) {
            return switch (word) {
                case "2ND" -> "2D";
                case "3RD" -> "3D";
                default -> word;
            };
        }

        Builder with(Reference reference) {
            patternsOnly = build();
            for (Award award : reference.awards()) {
                var sense = Sense.of(SenseKind.AWARD, award.id(), award.name());
                if (resolve(beforeBracket(award.name())).isEmpty()) {
                    literal(beforeBracket(award.name()), sense);
                }
                award.otherNames().stream()
                        .filter(name -> name.length() > 4 && !name.contains("("))
                        .filter(name -> resolve(name).isEmpty())
                        .forEach(name -> literal(name, sense));
            }
            reference.campaigns().forEach(campaign -> campaign(campaign, reference));
            var inFull = new LinkedHashMap<String, String>();
            reference.abbreviations().stream()
                    .filter(row -> kind(row.kind()) == SenseKind.THEATER)
                    .forEach(row -> inFull.putIfAbsent(row.token(), row.expansion()));
            reference.places().forEach(place -> place(place, inFull));
            reference.abbreviations().forEach(row -> abbreviation(row, reference));
            return this;
        }

        private static String beforeBracket(String name) {
            int bracket = name.indexOf('(');
            return bracket < 0 ? name : name.substring(0, bracket);
        }

        private void campaign(Campaign campaign, Reference reference) {
            var sense = Sense.of(SenseKind.CAMPAIGN, campaign.id(), campaign.name());
            literal(campaign.name(), sense);
            for (String variant : campaign.variants()) {
                boolean shared = reference.campaigns().stream()
                                .filter(other -> other.variants().contains(variant))
                                .count()
                        > 1;
                if (resolve(variant).stream().anyMatch(known -> known.kind() == SenseKind.CAMPAIGN) && !shared) {
                    continue;
                }
                boolean loose = shared || reference.place(variant).isPresent() || !alike(variant, campaign.name());
                literal(
                        variant,
                        new Sense(
                                SenseKind.CAMPAIGN,
                                campaign.id(),
                                campaign.name(),
                                loose ? "not the name of a campaign; it may stand for this one" : "",
                                loose ? Standing.LOOSE : Standing.NAME));
            }
        }

        /** Whether a spelling begins as the name does. */
        private static boolean alike(String spelling, String name) {
            int length = Math.min(3, Math.min(spelling.length(), name.length()));
            return spelling.regionMatches(true, 0, name, 0, length);
        }

        private void place(Place place, Map<String, String> inFull) {
            var sense = Sense.of(SenseKind.PLACE, place.name(), inFull.getOrDefault(place.name(), place.name()));
            literal(place.name(), sense);
            place.aliases().forEach(alias -> literal(alias, sense));
        }

        private void abbreviation(Abbreviation row, Reference reference) {
            SenseKind kind = kind(row.kind());
            boolean named = kind == SenseKind.AWARD
                    || kind == SenseKind.DEVICE
                    || kind == SenseKind.GRADE
                    || kind == SenseKind.COMPONENT
                    || kind == SenseKind.CAMPAIGN
                    || kind == SenseKind.ARM;
            boolean known = named && !resolve(row.token()).isEmpty();
            if (known
                    || row.kind().equals("date")
                    || isSpelledOutByRules(row, kind)
                    || isSumOfKnownParts(row.token(), kind)) {
                return;
            }
            if (kind == SenseKind.PLACE || kind == SenseKind.THEATER) {
                String name = reference
                        .place(row.token())
                        .or(() -> reference.place(beforeBracket(row.expansion()).strip()))
                        .map(Place::name)
                        .orElse("");
                literal(row.token(), new Sense(kind, name, row.expansion(), row.note(), Standing.NAME));
                return;
            }
            boolean resolved = false;
            for (String part : beforeBracket(row.expansion()).split(" or ", -1)) {
                for (Sense sense : resolve(part)) {
                    if (sense.kind() != SenseKind.LINK && sense.kind() != SenseKind.WORD) {
                        literal(row.token(), sense);
                        resolved = true;
                    }
                }
            }
            if (!resolved && kind == SenseKind.ARM && !row.ambiguous()) {
                String arm = beforeBracket(row.expansion()).strip();
                literal(row.token(), new Sense(kind, arm, arm, row.note(), Standing.NAME));
            } else if (!resolved || kind == SenseKind.WORD || kind == SenseKind.UNIT) {
                literal(row.token(), new Sense(wordKind(kind), "", row.expansion(), row.note(), Standing.NAME));
            }
        }

        /** Counts, devices and orders are put together by rule; a row for each sum of them would hide the parts. */
        private static boolean isSpelledOutByRules(Abbreviation row, SenseKind kind) {
            String token = row.token();
            boolean hasFigure = token.chars().anyMatch(c -> c >= '0' && c <= '9');
            boolean isWith = token.startsWith("w/") || token.contains(" w/");
            return isWith && !token.equals("w/") && !token.equals("w/o")
                    || hasFigure
                            && (kind == SenseKind.DEVICE || kind == SenseKind.ORDER || kind == SenseKind.WORD)
                            && token.length() > 6;
        }

        /** {@code SS Carbine}: a class and a weapon, which the reader puts together; as one phrase it would hide both. */
        private boolean isSumOfKnownParts(String token, SenseKind kind) {
            boolean apart = switch (kind) {
                case AWARD, DEVICE, WORD, WEAPON, ORDER, COMPONENT -> true;
                default -> false;
            };
            if (!apart || patternsOnly == null) {
                return false;
            }
            var words = patternsOnly.words(token);
            var matcher = new Matcher(patternsOnly, words);
            int parts = 0;
            int at = 0;
            while (at < words.count()) {
                var match = matcher.longest(at);
                if (match.isEmpty() && !words.isNumber(at)) {
                    return false;
                }
                at = match.map(Match::to).orElse(at + 1);
                parts++;
            }
            return parts > 1;
        }

        /** A kind that carries an id cannot be claimed by a row whose meaning was not found in the tables. */
        private static SenseKind wordKind(SenseKind kind) {
            return switch (kind) {
                case AWARD, DEVICE, CAMPAIGN, LEVEL, WEAPON, GRADE, ARM, COMPONENT -> SenseKind.WORD;
                default -> kind;
            };
        }

        private static SenseKind kind(String named) {
            return switch (named) {
                case "award", "badge" -> SenseKind.AWARD;
                case "device" -> SenseKind.DEVICE;
                case "campaign" -> SenseKind.CAMPAIGN;
                case "theatre" -> SenseKind.THEATER;
                case "place" -> SenseKind.PLACE;
                case "component" -> SenseKind.COMPONENT;
                case "arm" -> SenseKind.ARM;
                case "grade" -> SenseKind.GRADE;
                case "unit", "AAF unit" -> SenseKind.UNIT;
                case "order" -> SenseKind.ORDER;
                case "school" -> SenseKind.SCHOOL;
                case "MOS" -> SenseKind.SPECIALTY;
                case "weapon" -> SenseKind.WEAPON;
                default -> SenseKind.WORD;
            };
        }

        /** What the patterns say a text means, if they cover it whole. */
        private List<Sense> resolve(String text) {
            if (patternsOnly == null) {
                return List.of();
            }
            var words = patternsOnly.words(text);
            var match = new Matcher(patternsOnly, words).longest(0);
            return match.isPresent() && match.get().to() == words.count()
                    ? List.of(match.get().senses())
                    : List.of();
        }

        /** The words of the text, exactly so spelled, mean that. */
        private void literal(String text, Sense sense) {
            var sequence = new ArrayList<Integer>();
            for (String word : split(text)) {
                sequence.add(literalIdea(word));
            }
            if (!sequence.isEmpty()) {
                phrases.add(sequence, sense);
            }
        }

        /** A spelling of one idea stands for that idea; any other word stands for itself. */
        private int literalIdea(String word) {
            var known = spellings.getOrDefault(word, Set.of()).stream()
                    .filter(idea -> idea < patternIdeas)
                    .toList();
            if (word.length() >= 3 && known.size() == 1) {
                return known.get(0);
            }
            int idea = idea("=" + word);
            spell(word, idea);
            return idea;
        }

        private static List<String> split(String text) {
            var words = Words.of(text, new Vocabulary(Map.of()));
            var all = new ArrayList<String>();
            for (int i = 0; i < words.count(); i++) {
                all.add(canonical(words.plain(i)));
            }
            return all;
        }

        Lexicon build() {
            var ideas = new ArrayList<>(ideaNumbers.keySet());
            var byIdea = new ArrayList<List<String>>();
            ideas.forEach(idea -> byIdea.add(new ArrayList<>()));
            var table = new LinkedHashMap<String, int[]>();
            for (var known : spellings.entrySet()) {
                table.put(
                        known.getKey(),
                        known.getValue().stream().mapToInt(Integer::intValue).toArray());
                known.getValue().forEach(idea -> byIdea.get(idea).add(known.getKey()));
            }
            return new Lexicon(new Vocabulary(table), phrases.build(), ideas, byIdea);
        }
    }

    /**
     * The one meaning of a kind whose spelling is a letter off from a short text; for entries that hold one word of a
     * closed list, where nothing else can stand.
     */
    public Optional<Sense> nearest(String text, SenseKind kind) {
        String typed = text.replaceAll("[^A-Za-z0-9]", "").toUpperCase(Locale.ROOT);
        if (typed.length() < 3 || typed.length() > 12) {
            return Optional.empty();
        }
        Sense found = null;
        for (int idea : phrases.children(PhraseTable.ROOT)) {
            int node = phrases.step(PhraseTable.ROOT, idea);
            Sense[] senses = phrases.senses(node);
            Sense ofKind = null;
            for (int i = 0; senses != null && i < senses.length && ofKind == null; i++) {
                ofKind = senses[i].kind() == kind && !senses[i].id().isEmpty() ? senses[i] : null;
            }
            if (ofKind == null) {
                continue;
            }
            for (String spelling : spellingsOf.get(idea)) {
                if (spelling.length() >= 3 && Spelling.distance(typed, spelling, 1) == 1) {
                    if (found != null && !found.id().equals(ofKind.id())) {
                        return Optional.empty();
                    }
                    found = ofKind;
                }
            }
        }
        return Optional.ofNullable(found);
    }

    /** What the whole of a short text means, if it is one known phrase. */
    public List<Sense> meanings(String text) {
        var words = words(text);
        Optional<Match> match = new Matcher(this, words).longest(0);
        return match.isPresent() && match.get().to() == words.count()
                ? List.of(match.get().senses())
                : List.of();
    }
}
