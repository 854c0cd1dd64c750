package org.honorsdue.reading.unit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Words that belong together: field + artillery, tank + destroyer, F + A. */
final class Phrases {
    private static final Set<Word> LETTERED = Set.of(Word.COMPANY, Word.BATTERY, Word.TROOP);
    private static final Set<String> SQUADS = Set.of("SQUAD", "SQD");
    private static final Set<String> ENDINGS = Set.of("ST", "ND", "RD", "TH");
    private static final Set<String> SPOKEN = Set.of(
            "ABLE", "BAKER", "CHARLIE", "CHARLEY", "DOG", "EASY", "FOX", "GEORGE", "HOW", "ITEM", "KING", "LOVE",
            "MIKE");
    private static final Set<Word> ARMS_BEFORE =
            EnumSet.of(Word.ENGINEER, Word.ARMORED, Word.PARACHUTE, Word.GLIDER, Word.AIRBORNE, Word.FIELD);
    private static final Set<Word> MENDED =
            EnumSet.of(Word.SALVAGE, Word.TIRE, Word.DEPOT, Word.SIGNAL, Word.RECLAMATION);
    private static final Set<Word> COMPOSITES = Set.of(Word.GROUP, Word.UNIT, Word.SQUADRON, Word.WING);
    private static final Set<Word> ROMAN_BEFORE = Set.of(
            Word.CORPS,
            Word.TACTICAL,
            Word.BOMBARDMENT,
            Word.FIGHTER,
            Word.AIR,
            Word.AIR_FORCE,
            Word.TROOP,
            Word.TROOP_CARRIER,
            Word.ENGINEER,
            Word.ARMORED,
            Word.AIRBORNE);
    private static final Map<List<Word>, Word> PAIRS = Map.ofEntries(
            Map.entry(List.of(Word.FIELD, Word.ARTILLERY), Word.FIELD_ARTILLERY),
            Map.entry(List.of(Word.COAST, Word.ARTILLERY), Word.COAST_ARTILLERY),
            Map.entry(List.of(Word.ANTIAIRCRAFT, Word.ARTILLERY), Word.ANTIAIRCRAFT),
            Map.entry(List.of(Word.ANTI, Word.ANTIAIRCRAFT), Word.ANTIAIRCRAFT),
            Map.entry(List.of(Word.ANTI, Word.TANK), Word.ANTITANK),
            Map.entry(List.of(Word.MILITARY, Word.POLICE), Word.MILITARY_POLICE),
            Map.entry(List.of(Word.TANK, Word.DESTROYER), Word.TANK_DESTROYER),
            Map.entry(List.of(Word.TROOP, Word.CARRIER), Word.TROOP_CARRIER),
            Map.entry(List.of(Word.AIR, Word.FORCE), Word.AIR_FORCE),
            Map.entry(List.of(Word.AUTOMATIC, Word.WEAPONS), Word.AUTOMATIC_WEAPONS),
            Map.entry(List.of(Word.COMBAT, Word.TEAM), Word.COMBAT_TEAM),
            Map.entry(List.of(Word.COMBAT, Word.COMMAND), Word.COMBAT_COMMAND),
            Map.entry(List.of(Word.ANTIAIRCRAFT, Word.WARNING), Word.AIRCRAFT_WARNING),
            Map.entry(List.of(Word.BOMBARDMENT, Word.DISPOSAL), Word.BOMB_DISPOSAL),
            Map.entry(List.of(Word.BOMBARDMENT, Word.DISPENSARY), Word.BOMB_DISPOSAL),
            Map.entry(List.of(Word.BOMBARDMENT, Word.COMMAND), Word.BOMBER_COMMAND),
            Map.entry(List.of(Word.TRANSPORTATION, Word.CORPS), Word.TRANSPORTATION_CORPS),
            Map.entry(List.of(Word.COUNTER, Word.INTELLIGENCE), Word.COUNTER_INTELLIGENCE),
            Map.entry(List.of(Word.COUNTER_INTELLIGENCE, Word.CORPS), Word.COUNTER_INTELLIGENCE_CORPS),
            Map.entry(List.of(Word.PHILIPPINE, Word.SCOUTS), Word.SCOUTS),
            Map.entry(List.of(Word.SPECIAL, Word.TROOP), Word.SPECIAL_TROOPS));
    /** Two letters parted by a stroke or a hyphen that stand for an arm: A/T, A-T, F/A. */
    private static final Set<String> SPLIT_ARMS =
            Set.of("AT", "AW", "AB", "AA", "FA", "MP", "TD", "QM", "SP", "GS", "CA", "TC");
    /** Before these a split arm stands without a number before it: A/T Co. */
    private static final Set<Word> SPLIT_BEFORE = EnumSet.of(Word.COMPANY, Word.PLATOON, Word.BATTALION);
    /** Two initials joined by "and" with the words they stand for, after the arm that used them. */
    private static final Map<String, List<Word>> INITIALS = Map.of(
            "S&M", List.of(Word.SUPPLY, Word.MAINTENANCE),
            "B&S", List.of(Word.BOAT, Word.SHORE),
            "F&B", List.of(Word.FUMIGATION, Word.BATH),
            "S&B", List.of(Word.STERILIZATION, Word.BATH),
            "EB&SR", List.of(Word.ENGINEER, Word.BOAT, Word.SHORE, Word.REGIMENT),
            "PC&R", List.of(Word.PORT, Word.CONSTRUCTION, Word.REPAIR));

    private static final Set<Word> HAVE_INITIALS = EnumSet.of(Word.ORDNANCE, Word.ENGINEER, Word.QUARTERMASTER);
    private static final Set<Integer> CALIBERS = Set.of(37, 40, 57, 75, 76, 90, 105, 120, 155, 240);

    private Phrases() {}

    static boolean isLettered(Word word) {
        return LETTERED.contains(word);
    }

    static boolean isLettered(Token token) {
        return token.word() != null && LETTERED.contains(token.word());
    }

    static List<Token> joined(List<Token> tokens) {
        return pairs(inContext(romans(
                initials(singleLetters(spokenLetters(inWords(withEndings(withoutCalibers(splitArms(tokens))))))))));
    }

    /** "90mm Gun Bn", "155 How": what the guns were says nothing of which unit it is. */
    private static List<Token> withoutCalibers(List<Token> tokens) {
        var read = new ArrayList<Token>();
        boolean numbered = false;
        for (int i = 0; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            boolean caliber = token.isNumber() && !token.ordinal();
            boolean millimetres =
                    caliber && i + 1 < tokens.size() && typed(tokens.get(i + 1)).equals("MM");
            Word next = wordAt(tokens, i + 1);
            boolean guns = caliber
                    && numbered
                    && CALIBERS.contains(token.number())
                    && (next == Word.HOWITZER || next == Word.GUN);
            if (millimetres) {
                while (i + 1 < tokens.size() && typed(tokens.get(i + 1)).equals("MM")) {
                    i++;
                }
            } else if (!guns) {
                read.add(token);
            }
            numbered |= token.isNumber();
        }
        return read;
    }

    /** "A/T Co", "F-A Bn", "A/B Div", and H/S for headquarters and service. */
    private static List<Token> splitArms(List<Token> tokens) {
        var read = new ArrayList<Token>();
        int i = 0;
        while (i < tokens.size()) {
            Token first = tokens.get(i);
            boolean stroke = i + 2 < tokens.size() && tokens.get(i + 1).type() == Token.Type.SLASH;
            int second = stroke ? i + 2 : i + 1;
            boolean two = first.isLetter()
                    && second < tokens.size()
                    && tokens.get(second).isLetter()
                    && tokens.get(second).start() == first.end() + 1;
            String run = two ? first.letter() + tokens.get(second).letter() : "";
            boolean placed = !read.isEmpty() && !isLettered(read.get(read.size() - 1))
                    || SPLIT_BEFORE.contains(wordAt(tokens, second + 1));
            if (two && placed && SPLIT_ARMS.contains(run)) {
                for (Word word : Spelling.whole(run).orElseThrow()) {
                    read.add(new Token(
                            Token.Type.WORD,
                            word,
                            0,
                            false,
                            false,
                            first.start(),
                            tokens.get(second).end(),
                            run));
                }
                i = second + 1;
            } else if (two && run.equals("HS") && second + 1 < tokens.size() && isLettered(tokens.get(second + 1))) {
                read.add(first);
                read.add(new Token(Token.Type.AMPERSAND, null, 0, false, false, first.end(), first.end() + 1, "&"));
                read.add(tokens.get(second));
                i = second + 1;
            } else {
                read.add(first);
                i++;
            }
        }
        return read;
    }

    /** "Ord S & M Co": initials after the arm that used them. */
    private static List<Token> initials(List<Token> tokens) {
        var read = new ArrayList<Token>();
        int i = 0;
        while (i < tokens.size()) {
            Token first = tokens.get(i);
            boolean and = i + 2 < tokens.size() && tokens.get(i + 1).type() == Token.Type.AMPERSAND;
            List<Word> words =
                    and ? INITIALS.getOrDefault(typed(first) + "&" + typed(tokens.get(i + 2)), List.of()) : List.of();
            Word before = lastWord(read);
            boolean armSaid = before != null && HAVE_INITIALS.contains(before) || words.contains(Word.ENGINEER);
            if (!words.isEmpty() && armSaid) {
                Token last = tokens.get(i + 2);
                for (Word word : words) {
                    read.add(
                            new Token(Token.Type.WORD, word, 0, false, false, first.start(), last.end(), typed(first)));
                }
                i += 3;
            } else {
                read.add(first);
                i++;
            }
        }
        return read;
    }

    /** Abbreviations that take their meaning from their neighbours. */
    private static List<Token> inContext(List<Token> tokens) {
        var read = new ArrayList<Token>();
        for (int i = 0; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            Word before = i == 0 ? null : lastWord(read);
            Word next = wordAt(tokens, i + 1);
            if (token.is(Word.SQUADRON) && SQUADS.contains(typed(token)) && platoonFollows(tokens, i)) {
                read.add(token.as(Word.SQUAD));
            } else if (token.is(Word.AIR) && afterNumber(read) && endsThere(tokens, i)) {
                read.add(token.as(Word.ARMORED));
                read.add(token.as(Word.INFANTRY));
                read.add(token.as(Word.REGIMENT));
            } else {
                read.add(inContext(token, before, next));
            }
        }
        return read;
    }

    private static boolean platoonFollows(List<Token> tokens, int from) {
        return tokens.subList(from, tokens.size()).stream().anyMatch(token -> token.is(Word.PLATOON));
    }

    private static boolean endsThere(List<Token> tokens, int i) {
        return i + 1 == tokens.size() || isLettered(tokens.get(i + 1));
    }

    private static boolean afterNumber(List<Token> read) {
        return !read.isEmpty() && read.get(read.size() - 1).isNumber();
    }

    private static String typed(Token token) {
        return token.typed().toUpperCase(Locale.ROOT);
    }

    /** "331 st": an ending typed apart from its number. */
    private static List<Token> withEndings(List<Token> tokens) {
        var read = new ArrayList<Token>();
        for (Token token : tokens) {
            Token last = read.isEmpty() ? null : read.get(read.size() - 1);
            boolean ending = token.type() == Token.Type.UNKNOWN && ENDINGS.contains(typed(token));
            if (ending && last != null && last.isNumber() && !last.ordinal()) {
                read.set(read.size() - 1, numberOf(last.number(), last, token, last.corrected()));
            } else {
                read.add(token);
            }
        }
        return read;
    }

    private static Token numberOf(int value, Token first, Token last, boolean corrected) {
        return new Token(
                Token.Type.NUMBER,
                null,
                value,
                true,
                corrected,
                first.start(),
                last.end(),
                first.typed() + " " + last.typed());
    }

    /** "Three Hundred Thirty First": a number written out that ends in an ordinal. */
    private static List<Token> inWords(List<Token> tokens) {
        var read = new ArrayList<Token>();
        int i = 0;
        while (i < tokens.size()) {
            int end = i;
            while (end < tokens.size() && isComponent(tokens.get(end))) {
                end++;
            }
            boolean ordinal = end > i
                    && end < tokens.size()
                    && NumberWords.value(typed(tokens.get(end))).isPresent();
            if (ordinal) {
                List<String> words =
                        tokens.subList(i, end + 1).stream().map(Phrases::typed).toList();
                read.add(numberOf(NumberWords.composed(words), tokens.get(i), tokens.get(end), false));
                i = end + 1;
            } else {
                read.add(tokens.get(i++));
            }
        }
        return read;
    }

    private static boolean isComponent(Token token) {
        return token.type() == Token.Type.UNKNOWN && NumberWords.isComponent(typed(token));
    }

    /** Easy Company, Co Fox: the letter as it was spoken. */
    private static List<Token> spokenLetters(List<Token> tokens) {
        var read = new ArrayList<Token>();
        for (int i = 0; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            boolean before = wordAt(tokens, i + 1) != null && LETTERED.contains(wordAt(tokens, i + 1));
            boolean after = i > 0 && isLettered(tokens.get(i - 1)) && !token.is(Word.HOWITZER);
            boolean single = token.type() == Token.Type.UNKNOWN
                    || token.is(Word.HOWITZER) && wordAt(tokens, i + 1) == Word.COMPANY;
            if (single && (before || after) && SPOKEN.contains(typed(token))) {
                read.add(new Token(
                        Token.Type.LETTER,
                        null,
                        0,
                        false,
                        false,
                        token.start(),
                        token.end(),
                        typed(token).substring(0, 1)));
            } else {
                read.add(token);
            }
        }
        return read;
    }

    /** Whether a word is the spoken name of a letter, and not to be put right into anything else. */
    static boolean isSpokenLetter(String capitals) {
        return SPOKEN.contains(capitals) && !capitals.equals("HOW");
    }

    private static @Nullable Word lastWord(List<Token> read) {
        for (int i = read.size() - 1; i >= 0; i--) {
            if (read.get(i).isWord() || read.get(i).isNumber()) {
                return read.get(i).word();
            }
        }
        return null;
    }

    private static Token inContext(Token token, @Nullable Word before, @Nullable Word next) {
        String typed = typed(token);
        if (token.is(Word.COMPANY) && typed.equals("COMP") && next != null && COMPOSITES.contains(next)) {
            return token.as(Word.COMPOSITE);
        }
        if (before == Word.STATION && token.is(Word.COMPANY) && typed.equals("COMP")) {
            return token.as(Word.COMPLEMENT);
        }
        if (before == Word.QUARTERMASTER && token.is(Word.GROUP) && typed.equals("GR")) {
            return token.as(
                    next == Word.REGISTRATION || next == Word.REGIMENT ? Word.GRAVES : Word.GRAVES_REGISTRATION);
        }
        boolean bat = token.is(Word.BATTALION) && (typed.equals("BAT") || typed.equals("BATT"));
        if (bat && (before == Word.HEADQUARTERS || before == Word.SERVICE)) {
            return token.as(Word.BATTERY);
        }
        if (before == Word.TREADWAY && token.is(Word.BATTALION) && typed.equals("TB")) {
            return token.as(Word.BRIDGE);
        }
        if (before == Word.ENGINEER && token.is(Word.TANK) && typed.equals("TB")) {
            return token.as(Word.TREADWAY);
        }
        if (token.is(Word.SEPARATE) && next == Word.CENTER) {
            return token.as(Word.SEPARATION);
        }
        if (token.is(Word.BRIDGE) && next == Word.BALLOON) {
            return token.as(Word.BARRAGE);
        }
        if (before == Word.RAILWAY && token.is(Word.GROUP) && typed.equals("GR")) {
            return token.as(Word.GRAND);
        }
        if (token.is(Word.PORT) && next == Word.SURGICAL) {
            return token.as(Word.PORTABLE);
        }
        if (token.is(Word.TOWED) && next == Word.TARGET) {
            return token.as(Word.TOW_TARGET);
        }
        if (token.is(Word.TRAINS) && before == Word.HOSPITAL && !typed.equals("TRAINS")) {
            return token.as(Word.TRAIN);
        }
        if (token.is(Word.PACK) && before == Word.QUARTERMASTER) {
            return token.as(Word.PACK_ANIMALS);
        }
        if (token.is(Word.SQUADRON)
                && (before == Word.BOMB_DISPOSAL || before == Word.DISPOSAL || before == Word.DISPENSARY)
                && (SQUADS.contains(typed) || typed.equals("SQ"))) {
            return token.as(Word.SQUAD);
        }
        if (before == Word.ORDNANCE && token.type() == Token.Type.UNKNOWN && typed.equals("BD")) {
            return token.as(Word.BOMB_DISPOSAL);
        }
        if ((before == Word.TACTICAL || before == Word.PHOTO)
                && (token.isLetter() && typed.equals("R"))
                && (next == Word.SQUADRON || next == Word.GROUP)) {
            return token.as(Word.RECONNAISSANCE);
        }
        if (before == Word.ANTIAIRCRAFT && token.is(Word.GENERAL) && typed.equals("GN")) {
            return token.as(Word.GUN);
        }
        if (token.is(Word.REPLACEMENT) && before != null && MENDED.contains(before) && typed.equals("REP")) {
            return token.as(Word.REPAIR);
        }
        if (token.is(Word.RECONNAISSANCE) && before == Word.MACHINE) {
            return token.as(Word.RECORDS);
        }
        if (token.is(Word.REGIMENT) && before == Word.TRAFFIC) {
            return token.as(Word.REGULATING);
        }
        if (token.is(Word.AUTOMATIC) && next == Word.MAINTENANCE) {
            return token.as(Word.AUTOMOTIVE);
        }
        if (token.is(Word.CARRIER) && before == Word.QUARTERMASTER) {
            return token.as(Word.CAR);
        }
        if (token.is(Word.GROUND) && before == Word.RAILWAY) {
            return token.as(Word.GRAND);
        }
        if (token.is(Word.COLLECTING) && next == Word.TRAINING) {
            return token.as(Word.COLLEGE);
        }
        if (token.is(Word.SEMIMOBILE) && typed.equals("SM") && next == Word.GENERAL) {
            return token.as(Word.SMOKE);
        }
        if (before == Word.HOSPITAL && token.is(Word.PLATOON) && typed.equals("PLT")) {
            return token.as(Word.PLANT);
        }
        if (before == Word.SIGNAL && token.is(Word.AUTOMATIC_WEAPONS)) {
            return token.as(Word.AIRCRAFT_WARNING);
        }
        if (before == Word.ORDNANCE && token.is(Word.MEDICAL) && typed.equals("MED")) {
            return token.as(Word.MEDIUM);
        }
        if (before == Word.QUARTERMASTER && token.is(Word.GAS)) {
            return token.as(Word.GASOLINE);
        }
        if (before == Word.RAILWAY && token.is(Word.OPERATION)) {
            return token.as(Word.OPERATING);
        }
        if (before == Word.GRAVES && token.is(Word.REGIMENT)) {
            return token.as(Word.REGISTRATION);
        }
        if (before == Word.SMOKE && token.is(Word.GENERAL)) {
            return token.as(Word.GENERATOR);
        }
        if (token.is(Word.SPECIAL)
                && typed.equals("SP")
                && (before == Word.BATTALION || before == Word.AUTOMATIC_WEAPONS)) {
            return token.as(Word.SELF_PROPELLED);
        }
        return token;
    }

    /** F A, Q M, M P typed with blanks, after a number. */
    private static List<Token> singleLetters(List<Token> tokens) {
        var joined = new ArrayList<Token>();
        int i = 0;
        while (i < tokens.size()) {
            int end = i;
            while (end < tokens.size() && tokens.get(end).isLetter()) {
                end++;
            }
            Token before = i == 0 ? null : tokens.get(i - 1);
            if (end - i >= 2
                    && before != null
                    && (before.isNumber() || before.word() != null && ARMS_BEFORE.contains(before.word()))) {
                var run = new StringBuilder();
                tokens.subList(i, end).forEach(token -> run.append(token.letter()));
                Optional<List<Word>> words = Spelling.whole(run.toString());
                if (words.isPresent()) {
                    for (Word word : words.orElseThrow()) {
                        joined.add(new Token(
                                Token.Type.WORD,
                                word,
                                0,
                                false,
                                false,
                                tokens.get(i).start(),
                                tokens.get(end - 1).end(),
                                run.toString()));
                    }
                    i = end;
                    continue;
                }
            }
            joined.add(tokens.get(i));
            i++;
        }
        return joined;
    }

    private static List<Token> romans(List<Token> tokens) {
        var read = new ArrayList<Token>();
        for (int i = 0; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            Word next = wordAt(tokens, i + 1);
            boolean mayBeRoman = token.type() == Token.Type.UNKNOWN || token.isLetter();
            if (mayBeRoman
                    && next != null
                    && ROMAN_BEFORE.contains(next)
                    && (!token.isLetter() || corpsFollows(tokens, i + 1))) {
                String ones = token.letter().replace('L', 'I').replace('1', 'I');
                Optional<Integer> value = NumberWords.roman(ones);
                if (value.isPresent()) {
                    read.add(new Token(
                            Token.Type.NUMBER,
                            null,
                            value.orElseThrow(),
                            true,
                            token.corrected() || !ones.equals(token.letter()),
                            token.start(),
                            token.end(),
                            token.typed()));
                    continue;
                }
            }
            read.add(token);
        }
        return read;
    }

    private static boolean corpsFollows(List<Token> tokens, int from) {
        return wordAt(tokens, from) == Word.CORPS
                || wordAt(tokens, from + 1) == Word.COMMAND
                || wordAt(tokens, from) == Word.ARMORED && wordAt(tokens, from + 1) == Word.CORPS;
    }

    private static @Nullable Word wordAt(List<Token> tokens, int i) {
        return i < tokens.size() ? tokens.get(i).word() : null;
    }

    private static boolean hospitalFollows(List<Token> tokens, Token army) {
        return wordAt(tokens, tokens.indexOf(army) + 1) == Word.HOSPITAL;
    }

    private static List<Token> pairs(List<Token> tokens) {
        var joined = new ArrayList<Token>();
        for (Token token : tokens) {
            Token last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null
                    && last.is(Word.COMMAND)
                    && token.isLetter()
                    && token.letter().equals("Z")) {
                joined.set(joined.size() - 1, last.as(Word.COMMUNICATIONS_ZONE));
                continue;
            }
            if (last != null && last.is(Word.US) && token.is(Word.ARMY) && hospitalFollows(tokens, token)) {
                joined.set(joined.size() - 1, last.as(Word.US_ARMY));
                continue;
            }
            if (last != null && last.word() != null && token.word() != null) {
                Word both = PAIRS.get(List.of(last.word(), token.word()));
                if (both != null) {
                    joined.set(
                            joined.size() - 1,
                            new Token(
                                    Token.Type.WORD,
                                    both,
                                    0,
                                    false,
                                    last.corrected() || token.corrected(),
                                    last.start(),
                                    token.end(),
                                    last.typed() + " " + token.typed()));
                    continue;
                }
            }
            joined.add(token);
        }
        return joined;
    }
}
