package org.honorsdue.reading.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.honorsdue.reference.unit.UnitKind;
import org.honorsdue.reference.unit.UnitPart;

/** Takes the tokens of a line apart into parts, numbered designations and what could not be read. */
final class LineParts {
    private static final int HIGHEST_BATTALION = 4;

    final List<UnitPart> parts = new ArrayList<>();
    /** Unnumbered words that name a part; kept to find a division's own signal company and the like. */
    final List<List<Word>> partWords = new ArrayList<>();
    final List<Designation> designations = new ArrayList<>();
    final List<String> notes = new ArrayList<>();
    final List<String> unread = new ArrayList<>();
    boolean attached;
    boolean corrected;
    boolean doubtful;

    private final List<Token> tokens;
    private int at;

    LineParts(List<Token> tokens) {
        this.tokens = tokens;
        while (at < tokens.size()) {
            step();
        }
    }

    private void step() {
        Token token = tokens.get(at);
        if (token.type() == Token.Type.UNKNOWN && token.typed().equals("APO")) {
            at++;
            if (at < tokens.size() && tokens.get(at).isNumber()) {
                at++;
            }
            return;
        }
        switch (token.type()) {
            case SLASH, AMPERSAND, OPEN, CLOSE -> at++;
            case UNKNOWN -> {
                unread.add(token.typed());
                at++;
            }
            case LETTER -> letter();
            case NUMBER -> numbered();
            case WORD -> words();
        }
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
        return token.is(Word.BATTALION) && (token.typed().equalsIgnoreCase("bat") || token.typed().equalsIgnoreCase("batt"));
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
        if (and && token.letter().equals("H") && tokens.get(at + 2).letter().equals("H")) {
            parts.add(new UnitPart("headquarters-company"));
            at += letteredWord(3) || word(3, Word.SQUADRON) || word(3, Word.DETACHMENT) ? 4 : 3;
            return;
        }
        boolean inBrackets = type(-1, Token.Type.OPEN) && type(1, Token.Type.CLOSE);
        if (inBrackets) {
            at++;
            return;
        }
        boolean numberNext = type(1, Token.Type.NUMBER)
                || type(1, Token.Type.SLASH) && type(2, Token.Type.NUMBER);
        if (numberNext && token.letter().charAt(0) <= 'M') {
            parts.add(new UnitPart("company-" + token.letter().toLowerCase(java.util.Locale.ROOT)));
            at++;
            return;
        }
        unread.add(token.typed());
        at++;
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
        parts.add(new UnitPart(name + "-" + letter.letter().toLowerCase(java.util.Locale.ROOT)));
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
            parts.add(new UnitPart((tokens.get(at).is(Word.COMPANY) ? "company" : "battery") + "-i"));
            notes.add("\"%s 1\" read as the letter I.".formatted(tokens.get(at).typed()));
            corrected = true;
            at += 2;
            return;
        }
        if (tokens.get(at).is(Word.ATTACHED)) {
            attached = true;
            at++;
            return;
        }
        var words = new ArrayList<Word>();
        var typed = new StringBuilder();
        int start = at;
        while (at < tokens.size() && continuesWords(start)) {
            Token token = tokens.get(at);
            if (token.isWord()) {
                words.add(token.word());
                corrected |= token.corrected();
                typed.append(typed.isEmpty() ? "" : " ").append(token.typed());
            }
            at++;
        }
        takeUnnumbered(words, typed.toString());
    }

    private boolean continuesWords(int start) {
        Token token = tokens.get(at);
        return switch (token.type()) {
            case WORD -> at == start || !(letteredWord(0) && type(1, Token.Type.LETTER)) && !token.is(Word.ATTACHED);
            case AMPERSAND, SLASH -> true;
            case NUMBER, LETTER, UNKNOWN, OPEN, CLOSE -> false;
        };
    }

    private void takeUnnumbered(List<Word> words, String typed) {
        Optional<UnitPart> part = PartNames.of(words);
        if (part.isPresent()) {
            parts.add(part.orElseThrow());
            partWords.add(words);
            return;
        }
        boolean says = words.stream().anyMatch(word -> word.role() != Word.Role.NOISE);
        if (says) {
            partWords.add(words);
            unread.add(typed);
        }
    }

    /** "Co 1 331st Inf": a number one without ending that a numbered unit follows. */
    private boolean companyOne() {
        Token one = tokens.get(at + 1);
        return one.number() == 1 && !one.ordinal() && type(2, Token.Type.NUMBER);
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
        var words = new ArrayList<Word>();
        boolean broken = false;
        while (at < tokens.size() && continuesDesignation(words)) {
            Token token = tokens.get(at);
            if (token.isWord()) {
                words.add(token.word());
                corrected |= token.corrected();
            } else if (token.type() == Token.Type.UNKNOWN) {
                unread.add(token.typed());
                broken = true;
            }
            at++;
        }
        if (!words.isEmpty() && words.get(0) == Word.PLATOON && words.size() == 1) {
            parts.add(new UnitPart("platoon-" + number.number()));
            return;
        }
        designate(number, words, broken);
    }

    private boolean continuesDesignation(List<Word> words) {
        Token token = tokens.get(at);
        return switch (token.type()) {
            case WORD ->
                !token.is(Word.HEADQUARTERS)
                        && !token.is(Word.ATTACHED)
                        && !(letteredWord(0) && type(1, Token.Type.LETTER) && !words.isEmpty());
            case AMPERSAND, OPEN, CLOSE, SLASH -> true;
            case LETTER -> type(-1, Token.Type.OPEN) && type(1, Token.Type.CLOSE);
            case UNKNOWN ->
                !token.typed().equals("APO")
                        && !Kinds.of(words).isEmpty() == false
                        && peek(1).map(Token::word)
                                .filter(word -> word.role() == Word.Role.SIZE)
                                .isPresent();
            case NUMBER -> false;
        };
    }

    private void designate(Token number, List<Word> words, boolean broken) {
        if (!broken) {
            for (int length = words.size(); length > 0; length--) {
                List<UnitKind> kinds = Kinds.of(words.subList(0, length));
                List<Word> rest = words.subList(length, words.size());
                if (!kinds.isEmpty() && (onlyNoise(rest) || PartNames.of(rest).isPresent())) {
                    designations.add(new Designation(
                            number.number(), List.copyOf(words.subList(0, length)), kinds, number.corrected(), false));
                    if (!onlyNoise(rest)) {
                        takeUnnumbered(List.copyOf(rest), "");
                    }
                    return;
                }
            }
            for (int length = words.size(); length > 0; length--) {
                var first = new Designation(
                        number.number(), List.copyOf(words.subList(0, length)), List.of(), number.corrected(), false);
                List<Word> rest = words.subList(length, words.size());
                if (first.isBattalionOfRegiment() && (onlyNoise(rest) || PartNames.of(rest).isPresent())) {
                    designations.add(first);
                    if (!onlyNoise(rest)) {
                        takeUnnumbered(List.copyOf(rest), "");
                    }
                    return;
                }
            }
        }
        designations.add(new Designation(number.number(), List.copyOf(words), List.of(), number.corrected(), broken));
    }

    private static boolean onlyNoise(List<Word> words) {
        return words.stream().allMatch(word -> word.role() == Word.Role.NOISE);
    }
}
