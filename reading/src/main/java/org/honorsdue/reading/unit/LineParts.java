package org.honorsdue.reading.unit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.honorsdue.reference.unit.Echelon;
import org.honorsdue.reference.unit.UnitKind;
import org.honorsdue.reference.unit.UnitPart;

/** Takes the tokens of a line apart into parts, numbered designations and what could not be read. */
final class LineParts {
    private static final int HIGHEST_BATTALION = 4;
    private static final Pattern COMBAT_COMMAND = Pattern.compile("CC[ABR]");
    private static final int HIGHEST_PART = 9;
    private static final int HIGHEST_STAFF_SECTION = 5;
    private static final int LONGEST_ABBREVIATION = 4;
    private static final UnitPart MEDICAL_DETACHMENT = new UnitPart("medical-detachment");
    private static final List<String> OFFICES = List.of("artillery", "trains", "special-troops");
    private static final Set<Word> NUMBERED_PARTS =
            EnumSet.of(Word.PLATOON, Word.COMPANY, Word.REGIMENT, Word.SECTION, Word.BATTERY, Word.TROOP, Word.SQUAD);

    final List<UnitPart> parts = new ArrayList<>();
    /** Unnumbered words that name a part; kept to find a division's own signal company and the like. */
    final List<List<Word>> partWords = new ArrayList<>();

    final List<Designation> designations = new ArrayList<>();
    final List<String> notes = new ArrayList<>();
    final List<String> unread = new ArrayList<>();
    boolean bareLetter;
    /** Whether a small number without words was taken for a battalion. */
    boolean bareBattalion;

    /** The first word of a post typed, as in "Fort Devens"; empty when none was. */
    String station = "";

    boolean attached;
    boolean corrected;
    boolean doubtful;

    private static final Set<Word> LETTERED_TOO = EnumSet.of(Word.SQUADRON, Word.DETACHMENT, Word.SECTION, Word.FLIGHT);
    private static final Set<Word> OWN_SIZES = EnumSet.of(
            Word.COMPANY, Word.BATTALION, Word.GROUP, Word.TROOP, Word.SQUADRON, Word.DEPOT, Word.UNIT, Word.PLANT);
    private static final Set<Word> SERVICES = EnumSet.of(
            Word.QUARTERMASTER,
            Word.SIGNAL,
            Word.ORDNANCE,
            Word.ENGINEER,
            Word.CHEMICAL,
            Word.MILITARY_POLICE,
            Word.MEDICAL,
            Word.TRANSPORTATION,
            Word.PORT,
            Word.RAILWAY,
            Word.AMPHIBIAN,
            Word.PRISONER);
    private static final Set<Word> LINE_ARMS = EnumSet.of(
            Word.INFANTRY,
            Word.FIELD_ARTILLERY,
            Word.CAVALRY,
            Word.TANK,
            Word.TANK_DESTROYER,
            Word.PARACHUTE,
            Word.GLIDER,
            Word.COMBAT_TEAM);

    private final List<Token> tokens;
    private int at;
    /** An arm typed before the number of the designation, as in "AAA 482 AW Bn"; empty as a rule. */
    private List<Word> armBefore = List.of();

    LineParts(List<Token> tokens) {
        this.tokens = tokens;
        while (at < tokens.size()) {
            step();
        }
        joinOffices();
    }

    /** Artillery or trains of a division and a headquarters beside them are one: the headquarters of the artillery. */
    private void joinOffices() {
        for (String office : OFFICES) {
            int at = parts.indexOf(new UnitPart(office));
            Optional<UnitPart> headquarters = parts.stream()
                    .filter(part -> part.id().startsWith("headquarters"))
                    .findFirst();
            if (at >= 0) {
                String full = office.equals("artillery") ? "division-artillery" : office;
                if (headquarters.isPresent()) {
                    parts.remove(headquarters.orElseThrow());
                    full += "-" + headquarters.orElseThrow().id();
                }
                parts.set(parts.indexOf(new UnitPart(office)), new UnitPart(full));
            }
        }
    }

    private void step() {
        Token token = tokens.get(at);
        switch (token.type()) {
            case SLASH, AMPERSAND, OPEN, CLOSE -> at++;
            case UNKNOWN -> unknown(token);
            case LETTER -> letter();
            case NUMBER -> numbered();
            case WORD -> words();
        }
    }

    private void unknown(Token token) {
        if (token.letter().equals("CC") && type(1, Token.Type.LETTER)) {
            parts.add(
                    new UnitPart("combat-command-" + tokens.get(at + 1).letter().toLowerCase(Locale.ROOT)));
            at++;
        } else if (token.letter().equals("MD") && at == 0 && type(1, Token.Type.NUMBER)) {
            parts.add(MEDICAL_DETACHMENT);
        } else if (COMBAT_COMMAND.matcher(token.letter()).matches()) {
            parts.add(
                    new UnitPart("combat-command-" + token.typed().substring(2).toLowerCase(Locale.ROOT)));
        } else {
            unread.add(token.typed());
            doubtful |= gluedToNumber();
        }
        at++;
    }

    private Optional<Token> peek(int ahead) {
        int i = at + ahead;
        return i >= 0 && i < tokens.size() ? Optional.of(tokens.get(i)) : Optional.empty();
    }

    private boolean type(int ahead, Token.Type type) {
        return peek(ahead).filter(token -> token.type() == type).isPresent();
    }

    private boolean word(int ahead, Word word) {
        return peek(ahead).filter(token -> token.is(word)).isPresent();
    }

    /** Whether the token there is company, battery, troop, or "Bat" before or after a letter. */
    private boolean letteredWord(int ahead) {
        return peek(ahead)
                .filter(token -> Phrases.isLettered(token) || isBat(token))
                .isPresent();
    }

    private static boolean isBat(Token token) {
        return token.is(Word.BATTALION)
                && (token.typed().equalsIgnoreCase("bat") || token.typed().equalsIgnoreCase("batt"));
    }

    private void letter() {
        Token token = tokens.get(at);
        if (letteredWord(1) && !lettersOwnCompany(2)) {
            addLettered(tokens.get(at + 1), token);
            at += 2;
            return;
        }
        boolean and = type(1, Token.Type.AMPERSAND) && type(2, Token.Type.LETTER);
        if (and && token.letter().equals("H") && tokens.get(at + 2).letter().equals("S")) {
            headquartersAndService();
            return;
        }
        if (and && token.letter().equals("I") && tokens.get(at + 2).letter().equals("R")) {
            parts.add(new UnitPart("intelligence-and-reconnaissance-platoon"));
            at += word(3, Word.PLATOON) ? 4 : 3;
            return;
        }
        if (and && token.letter().equals("A") && tokens.get(at + 2).letter().equals("P") && word(3, Word.PLATOON)) {
            parts.add(new UnitPart("ammunition-and-pioneer-platoon"));
            at += 4;
            return;
        }
        if (and && token.letter().equals("H") && tokens.get(at + 2).letter().equals("H")) {
            parts.add(new UnitPart("headquarters-company"));
            at += letteredWord(3) || word(3, Word.SQUADRON) || word(3, Word.DETACHMENT) ? 4 : 3;
            return;
        }
        if (isStaffSection(token)) {
            int number = tokens.get(at + 1).number();
            parts.add(new UnitPart(token.letter().toLowerCase(Locale.ROOT) + number + "-section"));
            at += word(2, Word.SECTION) ? 3 : 2;
            return;
        }
        boolean inBrackets = type(-1, Token.Type.OPEN) && type(1, Token.Type.CLOSE);
        if (inBrackets) {
            at++;
            return;
        }
        boolean numberNext = type(1, Token.Type.NUMBER) || type(1, Token.Type.SLASH) && type(2, Token.Type.NUMBER);
        if (numberNext && token.letter().charAt(0) <= 'M') {
            parts.add(new UnitPart("company-" + token.letter().toLowerCase(Locale.ROOT)));
            bareLetter = true;
            at++;
            return;
        }
        boolean last = at + 1 == tokens.size()
                && at > 0
                && !isWeight(token)
                && token.letter().charAt(0) <= 'M';
        if (last && parts.stream().noneMatch(UnitPart::isLettered) && lastHasCompanies()) {
            parts.add(new UnitPart("company-" + token.letter().toLowerCase(Locale.ROOT)));
            bareLetter = true;
            at++;
            return;
        }
        if (isWeight(token)) {
            at++;
            return;
        }
        doubtful |= letteredWord(2) || type(1, Token.Type.LETTER) || gluedToNumber();
        unread.add(token.typed());
        at++;
    }

    /** Whether the unread characters run on into a number, which may then be another one. */
    private boolean gluedToNumber() {
        return type(1, Token.Type.NUMBER)
                && tokens.get(at + 1).start() == tokens.get(at).end();
    }

    /** "448th BG H", "745 Tk Bn M": heavy, medium, light; how the unit was armed. */
    private boolean isWeight(Token token) {
        boolean flying = word(-1, Word.GROUP) || word(-1, Word.SQUADRON) || word(-1, Word.WING);
        boolean tanks = word(-1, Word.BATTALION) && word(-2, Word.TANK);
        return flying && "HMLRC".contains(token.letter()) || tanks && "ML".contains(token.letter());
    }

    /** "157 Inf L": a letter at the end after a unit that had companies. */
    private boolean lastHasCompanies() {
        if (designations.isEmpty()) {
            return false;
        }
        List<UnitKind> kinds = designations.get(designations.size() - 1).kinds();
        return !kinds.isEmpty()
                && kinds.get(0).hasLetteredParts()
                && (kinds.get(0).echelon() == Echelon.REGIMENT || kinds.get(0).echelon() == Echelon.BATTALION);
    }

    /** "G-2 Sec", "S-3": a staff section of a headquarters. */
    private boolean isStaffSection(Token token) {
        boolean staff = token.letter().equals("G") || token.letter().equals("S");
        return staff
                && peek(1).filter(number -> number.isNumber()
                                && !number.ordinal()
                                && number.number() <= HIGHEST_STAFF_SECTION
                                && number.start() == token.end() + 1)
                        .isPresent()
                && (word(2, Word.SECTION) || word(2, Word.HEADQUARTERS));
    }

    /** In {@code C Btry B ...} the word belongs to the second letter; not met, yet harmless to ask. */
    private boolean lettersOwnCompany(int ahead) {
        return type(ahead, Token.Type.LETTER) && !type(ahead + 1, Token.Type.NUMBER) && letteredWord(ahead + 1);
    }

    private void headquartersAndService() {
        Word size = peek(3).map(Token::word).orElse(null);
        boolean named = letteredWord(3);
        parts.add(new UnitPart("headquarters-and-service-" + (size == Word.BATTERY ? "battery" : "company")));
        at += named ? 4 : 3;
    }

    private void addLettered(Token word, Token letter) {
        String name = word.is(Word.COMPANY) ? "company" : word.is(Word.TROOP) ? "troop" : "battery";
        parts.add(new UnitPart(name + "-" + letter.letter().toLowerCase(Locale.ROOT)));
        if (letter.typed().equals("l")) {
            notes.add("A small l read as Company L; it may stand for I.");
            corrected = true;
        }
        if (letter.letter().charAt(0) > 'M') {
            notes.add("No %s was lettered so high; look at the letter again.".formatted(name));
            doubtful = true;
        }
        if (letter.letter().equals("J")) {
            notes.add("No Company J existed; look at the letter again.");
            doubtful = true;
        }
    }

    private void words() {
        if (letteredWord(0) && type(1, Token.Type.LETTER)) {
            addLettered(tokens.get(at), tokens.get(at + 1));
            corrected |= tokens.get(at).corrected();
            at += 2;
            return;
        }
        if (letteredWord(0) && type(1, Token.Type.NUMBER) && companyOne()) {
            String letter = tokens.get(at + 1).number() == 1 ? "I" : "B";
            parts.add(new UnitPart(
                    (tokens.get(at).is(Word.COMPANY) ? "company-" : "battery-") + letter.toLowerCase(Locale.ROOT)));
            notes.add("\"%s %s\" read as the letter %s."
                    .formatted(tokens.get(at).typed(), tokens.get(at + 1).typed(), letter));
            corrected = true;
            at += 2;
            return;
        }
        if (tokens.get(at).is(Word.ATTACHED)) {
            attached = true;
            at++;
            return;
        }
        Word first = tokens.get(at).meant();
        if (first.role() == Word.Role.NAME) {
            namedUnit();
            return;
        }
        if (first.role() == Word.Role.PLACE) {
            place();
            return;
        }
        boolean lettered = type(1, Token.Type.LETTER);
        if (first == Word.COMBAT_COMMAND && lettered) {
            parts.add(
                    new UnitPart("combat-command-" + tokens.get(at + 1).letter().toLowerCase(Locale.ROOT)));
            at += 2;
            return;
        }
        if (first == Word.RESERVE && word(1, Word.COMMAND)) {
            parts.add(new UnitPart("combat-command-r"));
            at += 2;
            return;
        }
        if (LETTERED_TOO.contains(first) && lettered) {
            parts.add(new UnitPart(first.name().toLowerCase(Locale.ROOT) + "-"
                    + tokens.get(at + 1).letter().toLowerCase(Locale.ROOT)));
            at += 2;
            return;
        }
        if (armOfNumber()) {
            armBefore = List.of(first);
            at++;
            return;
        }
        var words = new ArrayList<Word>();
        var typed = new StringBuilder();
        int start = at;
        while (at < tokens.size() && continuesWords(start)) {
            Token token = tokens.get(at);
            if (token.isWord()) {
                words.add(token.meant());
                corrected |= token.corrected();
                if (at == start || tokens.get(at - 1).start() != token.start()) {
                    typed.append(typed.isEmpty() ? "" : " ").append(token.typed());
                }
            }
            at++;
        }
        takeUnnumbered(words, typed.toString());
    }

    /** "Inf 331 Regt", "AAA 482 AW Bn": the arm first, then the number, then what it was without an arm. */
    private boolean armOfNumber() {
        boolean arm = tokens.get(at).meant().role() == Word.Role.ARM && type(1, Token.Type.NUMBER);
        boolean sized = false;
        for (int ahead = 2; arm && peek(ahead).filter(Token::isWord).isPresent(); ahead++) {
            Word word = tokens.get(at + ahead).meant();
            sized |= word.role() == Word.Role.SIZE && !Phrases.isLettered(word);
            if (word.role() == Word.Role.ARM) {
                return false;
            }
            if (sized) {
                return true;
            }
        }
        return false;
    }

    private boolean placeNext(int ahead) {
        return peek(ahead)
                .filter(token -> token.isWord() && token.meant().role() == Word.Role.PLACE)
                .isPresent();
    }

    /** "Ft Dix NJ": where he was, not which unit he was in; the words are passed over to the next number. */
    private void place() {
        var name = new StringBuilder(tokens.get(at++).meant().title());
        boolean named = false;
        while (at < tokens.size() && !tokens.get(at).isNumber()) {
            Token token = tokens.get(at++);
            if (!named) {
                name.append(' ').append(capitalised(token.typed()));
                named = true;
            }
        }
        station = named ? name.toString() : "";
    }

    private static String capitalised(String word) {
        boolean capitals = word.equals(word.toUpperCase(Locale.ROOT)) || word.equals(word.toLowerCase(Locale.ROOT));
        return capitals
                ? word.substring(0, 1).toUpperCase(Locale.ROOT)
                        + word.substring(1).toLowerCase(Locale.ROOT)
                : word;
    }

    /** "Americal Div", "Philippine Division". */
    private void namedUnit() {
        Token name = tokens.get(at++);
        var words = new ArrayList<Word>();
        words.add(name.meant());
        boolean alone = at == tokens.size() || !tokens.get(at).isWord();
        if (name.is(Word.AMERICAL) && alone) {
            words.add(Word.DIVISION);
        }
        while (at < tokens.size()
                && tokens.get(at).isWord()
                && tokens.get(at).meant().role() == Word.Role.SIZE
                && words.size() == 1) {
            words.add(tokens.get(at++).meant());
        }
        designations.add(new Designation(0, name.meant().title(), List.copyOf(words), List.of(), false, ""));
    }

    private boolean continuesWords(int start) {
        Token token = tokens.get(at);
        return switch (token.type()) {
            case WORD ->
                at == start
                        || !(letteredWord(0) && type(1, Token.Type.LETTER))
                                && !smallPartEnded(start)
                                && !(token.is(Word.RESERVE) && word(1, Word.COMMAND))
                                && !token.is(Word.ATTACHED)
                                && !breaksRun(token.meant());
            case AMPERSAND, SLASH -> true;
            case NUMBER, LETTER, UNKNOWN, OPEN, CLOSE -> false;
        };
    }

    /** "Wire Sec Hq Btry": a platoon or section with its name ends there; what follows is another part. */
    private boolean smallPartEnded(int start) {
        Token before = tokens.get(at - 1);
        boolean lettered = tokens.get(at).is(Word.HEADQUARTERS)
                && peek(1).filter(Phrases::isLettered).isPresent();
        return (at - start > 1 || lettered)
                && (before.is(Word.PLATOON) || before.is(Word.SECTION) || before.is(Word.SQUAD));
    }

    private static boolean breaksRun(Word word) {
        return word.role() == Word.Role.NAME || word.role() == Word.Role.PLACE || word == Word.COMBAT_COMMAND;
    }

    private void takeUnnumbered(List<Word> words, String typed) {
        if (numberComesLast(words) || bearsName(words)) {
            return;
        }
        int detachment = words.indexOf(Word.DETACHMENT);
        if (detachment > 0 && detachment + 1 < words.size() && isPlace(words)) {
            takeUnnumbered(words.subList(0, detachment + 1), "");
            takeUnnumbered(words.subList(detachment + 1, words.size()), "");
            return;
        }
        boolean medics =
                words.equals(List.of(Word.MEDICAL)) && (typed.equalsIgnoreCase("medics") || type(0, Token.Type.NUMBER));
        if (medics) {
            parts.add(MEDICAL_DETACHMENT);
            return;
        }
        Optional<UnitPart> part = PartNames.of(words);
        if (part.isPresent()) {
            boolean casual = words.contains(Word.CASUAL)
                    && type(0, Token.Type.NUMBER)
                    && (!type(1, Token.Type.WORD) || placeNext(1));
            String number = casual ? "-" + tokens.get(at++).number() : "";
            parts.add(new UnitPart(part.orElseThrow().id() + number));
            partWords.add(words);
            return;
        }
        boolean alone = at == tokens.size() || placeNext(0);
        if (isPlace(words) && alone && unread.isEmpty() && designations.isEmpty()) {
            parts.add(new UnitPart(PartNames.id(words)));
            return;
        }
        boolean says = words.stream().anyMatch(word -> word.role() != Word.Role.NOISE);
        if (says && !typed.isEmpty()) {
            partWords.add(words);
            unread.add(typed);
            doubtful |= type(0, Token.Type.NUMBER) || words.stream().anyMatch(LineParts::tellsUnit);
        }
    }

    /** "Sta Hosp", "Sep Center", "Inf School": a place of duty without number or name. */
    private static boolean isPlace(List<Word> words) {
        Word last = words.get(words.size() - 1);
        return words.size() > 1 && (last == Word.HOSPITAL || last == Word.CENTER || last == Word.SCHOOL);
    }

    /** An arm or a size that was read as no part of any designation: it may belong to the unit beside it. */
    private static boolean tellsUnit(Word word) {
        boolean tells = word.role() == Word.Role.ARM || word.role() == Word.Role.SIZE;
        return tells && word != Word.AIR_FORCE && word != Word.AIR;
    }

    /** "SCU 1901", "Inf 331": the words first, a bare number after them, and nothing more of it. */
    private boolean numberComesLast(List<Word> words) {
        boolean bare = at < tokens.size() && tokens.get(at).isNumber() && !type(1, Token.Type.WORD);
        if (!bare || words.contains(Word.HEADQUARTERS)) {
            return false;
        }
        if (at + 1 == tokens.size() && isOwnUnit(words)) {
            Token number = tokens.get(at++);
            designations.add(
                    new Designation(number.number(), "", List.copyOf(words), Kinds.of(words), number.corrected(), ""));
            return true;
        }
        for (int from = 0; from < words.size(); from++) {
            List<Word> ending = List.copyOf(words.subList(from, words.size()));
            List<UnitKind> kinds = Kinds.of(ending);
            if (!kinds.isEmpty()) {
                Token number = tokens.get(at++);
                designations.add(new Designation(number.number(), "", ending, kinds, number.corrected(), ""));
                if (from > 0) {
                    takeUnnumbered(words.subList(0, from), titles(words.subList(0, from)));
                }
                return true;
            }
        }
        return false;
    }

    /** "QM Gas Sup Co 3877": words of a service with their size, which no unit of the line had as a part. */
    private static boolean isOwnUnit(List<Word> words) {
        boolean service = words.stream().anyMatch(SERVICES::contains) || words.contains(Word.HOSPITAL);
        boolean sized = words.stream().anyMatch(OWN_SIZES::contains);
        return service
                && sized
                && words.size() > 2
                && PartNames.ofRest(words, false).isEmpty();
    }

    /** "Lawson Gen Hosp": a hospital in the United States bore a name. */
    private boolean bearsName(List<Word> words) {
        if (!words.contains(Word.HOSPITAL) || Kinds.of(words).isEmpty() || unread.isEmpty()) {
            return false;
        }
        String name = nameBefore(words);
        designations.add(new Designation(0, name, List.copyOf(words), List.of(), false, ""));
        return true;
    }

    private static boolean isName(Token token) {
        return token.type() == Token.Type.UNKNOWN || token.isWord() && token.corrected();
    }

    /** The unread words just before a named hospital, which are its name. */
    private String nameBefore(List<Word> words) {
        var name = new StringBuilder();
        int before = at - words.size() - 1;
        while (before >= 0 && isName(tokens.get(before)) && !unread.isEmpty()) {
            String word = unread.remove(unread.size() - 1);
            name.insert(0, (name.isEmpty() ? "" : " ")).insert(0, capitalised(word));
            before--;
        }
        return name.isEmpty() ? unread.remove(unread.size() - 1) : name.toString();
    }

    /** "Co 1 331st Inf", "Btry 8 391st FA": a one for I or an eight for B without ending that a numbered unit follows. */
    private boolean companyOne() {
        Token one = tokens.get(at + 1);
        return (one.number() == 1 || one.number() == 8) && !one.ordinal() && type(2, Token.Type.NUMBER);
    }

    private void numbered() {
        Token number = tokens.get(at);
        corrected |= number.corrected();
        if (type(1, Token.Type.SLASH) && type(2, Token.Type.NUMBER) && number.number() <= HIGHEST_BATTALION) {
            parts.add(UnitPart.battalion(number.number()));
            at += 2;
            return;
        }
        at++;
        var words = new ArrayList<Word>(armBefore);
        armBefore = List.of();
        var wording = new StringBuilder();
        boolean broken = false;
        while (at < tokens.size() && continuesDesignation(words)) {
            Token token = tokens.get(at);
            if (token.type() == Token.Type.OPEN && !Kinds.of(words).isEmpty() && bracketUnread()) {
                continue;
            }
            boolean bracketed = token.is(Word.SPECIAL) && type(1, Token.Type.CLOSE);
            if ((bracketed || token.is(Word.WOMENS_ARMY_CORPS)) && type(-1, Token.Type.OPEN)) {
                at++;
                continue;
            }
            if (token.isWord()) {
                words.add(token.meant());
                corrected |= token.corrected();
                wording.append(
                        token.meant().role() == Word.Role.NOISE
                                ? ""
                                : " " + token.meant().title());
            } else if (isCombat(token, words)) {
                words.add(Word.COMBAT);
                wording.append(" Combat");
            } else if (isAirborne(words)) {
                words.add(Word.AIRBORNE);
                wording.append(" Airborne");
                at += 2;
            } else if (token.type() == Token.Type.UNKNOWN) {
                String typed = token.typed();
                wording.append(' ')
                        .append(
                                typed.length() <= LONGEST_ABBREVIATION && typed.equals(token.letter())
                                        ? typed
                                        : capitalised(typed));
                broken = true;
            }
            at++;
        }
        if (words.size() == 1 && NUMBERED_PARTS.contains(words.get(0)) && number.number() <= HIGHEST_PART) {
            parts.add(new UnitPart(words.get(0).name().toLowerCase(Locale.ROOT) + "-" + number.number()));
            return;
        }
        if (type(0, Token.Type.UNKNOWN)
                && words.stream().anyMatch(SERVICES::contains)
                && words.stream().noneMatch(word -> word.role() == Word.Role.SIZE)) {
            doubtful = true;
            notes.add("\"%s\" after the arm was not read; it may make it another unit."
                    .formatted(tokens.get(at).typed()));
        }
        designate(number, words, broken ? wording.toString().strip() : "");
    }

    private boolean continuesDesignation(List<Word> words) {
        Token token = tokens.get(at);
        return switch (token.type()) {
            case WORD ->
                !token.is(Word.HEADQUARTERS)
                        && !(token.typed().toUpperCase(Locale.ROOT).endsWith("RTC") && !words.isEmpty())
                        && !token.is(Word.ATTACHED)
                        && !breaksRun(token.meant())
                        && !(letteredWord(0) && type(1, Token.Type.LETTER) && !words.isEmpty());
            case AMPERSAND, OPEN, CLOSE, SLASH -> true;
            case LETTER ->
                type(-1, Token.Type.OPEN) && type(1, Token.Type.CLOSE) || isCombat(token, words) || isAirborne(words);
            case UNKNOWN -> words.isEmpty() || sizeFollows();
            case NUMBER -> false;
        };
    }

    /** Passes over brackets after a kind of unit that hold something unread: "475th Inf (LR Pen Regt Sp)". */
    private boolean bracketUnread() {
        int close = at + 1;
        boolean unknown = false;
        while (close < tokens.size() && tokens.get(close).type() != Token.Type.CLOSE) {
            unknown |= tokens.get(close).type() == Token.Type.UNKNOWN;
            close++;
        }
        if (!unknown || close == tokens.size()) {
            return false;
        }
        tokens.subList(at + 1, close).forEach(token -> unread.add(token.typed()));
        doubtful = true;
        at = close + 1;
        return true;
    }

    /** An unread word between a number and its size, as in "149th Engr Xyz Bn", makes it another unit. */
    private boolean sizeFollows() {
        for (int ahead = 1; at + ahead < tokens.size(); ahead++) {
            Token token = tokens.get(at + ahead);
            boolean lettered = Phrases.isLettered(token) && type(ahead + 1, Token.Type.LETTER);
            if (token.isNumber() || token.isLetter() || lettered || token.is(Word.HEADQUARTERS)) {
                return false;
            }
            if (token.isWord() && token.meant().role() == Word.Role.SIZE) {
                return true;
            }
        }
        return false;
    }

    /** "307th A/B Engr Bn": airborne. */
    private boolean isAirborne(List<Word> words) {
        Token token = tokens.get(at);
        return words.isEmpty()
                && token.isLetter()
                && token.letter().equals("A")
                && type(1, Token.Type.SLASH)
                && peek(2).filter(second -> second.isLetter() && second.letter().equals("B"))
                        .isPresent();
    }

    /** "308th Engr C Bn": the C of the engineers is combat. */
    private boolean isCombat(Token token, List<Word> words) {
        return token.isLetter()
                && token.letter().equals("C")
                && !words.isEmpty()
                && words.get(words.size() - 1) == Word.ENGINEER
                && !letteredWord(1);
    }

    /**
     * Finds the longest beginning of the words that is a kind of unit, what follows being a part of it.
     *
     * @param broken the words as typed when something unread stands between them, else empty
     */
    private void designate(Token number, List<Word> words, String broken) {
        if (words.equals(List.of(Word.TACTICAL))) {
            words.addAll(List.of(Word.AIR, Word.COMMAND));
        }
        for (int length = words.size(); length > 0 && broken.isEmpty(); length--) {
            List<Word> first = List.copyOf(words.subList(0, length));
            List<Word> rest = List.copyOf(words.subList(length, words.size()));
            var designation = new Designation(number.number(), "", first, Kinds.of(first), number.corrected(), "");
            boolean whole = !designation.kinds().isEmpty() || designation.isBattalionOfRegiment();
            boolean division = whole
                    && !designation.kinds().isEmpty()
                    && designation.kinds().get(0).echelon() == Echelon.DIVISION;
            if (division && !rest.isEmpty() && !Kinds.of(rest).isEmpty()) {
                designations.add(designation);
                takeUnnumbered(rest, titles(rest));
                return;
            }
            if (whole
                    && (onlyNoise(rest)
                            || canHave(designation, rest)
                                    && PartNames.ofRest(rest, isSized(first)).isPresent())) {
                designations.add(designation);
                if (!onlyNoise(rest)) {
                    takeUnnumbered(rest, "");
                }
                return;
            }
        }
        designations.add(
                new Designation(number.number(), "", List.copyOf(words), List.of(), number.corrected(), broken));
    }

    private static boolean isSized(List<Word> words) {
        Word last = words.get(words.size() - 1);
        return last == Word.BATTALION || last == Word.REGIMENT;
    }

    private static String titles(List<Word> words) {
        return String.join(" ", words.stream().map(Word::title).toList());
    }

    /**
     * Whether the words before can be a unit with such parts. The 4193rd QM Serv Co is not the service company of
     * anything: a service arm needs its size typed before a part may follow.
     */
    private static boolean canHave(Designation designation, List<Word> rest) {
        boolean sized = designation.words().stream().anyMatch(word -> word.role() == Word.Role.SIZE);
        boolean line = designation.words().stream().anyMatch(LINE_ARMS::contains);
        boolean army = !designation.kinds().isEmpty()
                && designation.kinds().get(0).echelon().compareTo(Echelon.CORPS) >= 0;
        if (army && rest.contains(Word.BAND)) {
            return false;
        }
        boolean anywhere = rest.contains(Word.DETACHMENT) || rest.contains(Word.BAND);
        boolean company =
                !designation.kinds().isEmpty() && designation.kinds().get(0).echelon() == Echelon.COMPANY;
        return !company && (sized || line || anywhere);
    }

    /** AAF after a squadron says only that it flew. */
    private static boolean onlyNoise(List<Word> words) {
        return words.stream().allMatch(word -> word.role() == Word.Role.NOISE || word == Word.AIR_FORCE);
    }
}
