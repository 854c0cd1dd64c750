package org.honorsdue.reading.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Cuts a typed line into tokens and puts slips of the typewriter right. */
final class Lexer {
    private static final Pattern PIECE = Pattern.compile(
            "\\b4\\.[25]\\b|(?:[A-Za-z]\\.){2,}[A-Za-z]?|O'[A-Za-z]{3,}|[A-Za-z0-9]+(?:'[A-Za-z]{1,3}(?![A-Za-z']))?|[/&()\\[\\]]");
    private static final Pattern CALIBER = Pattern.compile("4\\.[25]");
    private static final Pattern CASE_TURN = Pattern.compile("(?<=[a-z])(?<!\\bMc)(?<![0-9][lo]{1,2})(?=[A-Z])");
    private static final Pattern NUMBER_FIRST = Pattern.compile("^([0-9OIL]+)(.*)$");
    private static final Pattern ONE_TYPED_AS_L = Pattern.compile("(?<=[0-9])l(?=$|[0-9lO])");
    private static final Pattern FIRST_TYPED_AS_L = Pattern.compile("^l(?=[0-9O]|(?:ST|st|Oth|OTH)$)");
    private static final Pattern NOUGHT_AT_END = Pattern.compile("(?<=[0-9])O(?=$)");
    private static final Pattern FIVE_WITHIN = Pattern.compile("(?<=[0-9])S(?=[0-9])");
    private static final Pattern TWO_WITHIN = Pattern.compile("(?<=[0-9])Z(?=[0-9])");
    private static final Pattern ORDINAL_WORD = Pattern.compile("^([OIL]+)(ST|ND|RD|TH)$");
    private static final Pattern ROMAN_WITH_ONES = Pattern.compile("(?i)(?=.*[XV])(?=.*[l1])[XVIl1]{2,}");
    private static final Pattern ENDING = Pattern.compile("^(ST|ND|RD|D|TH)(.*)$");
    private static final int LONGEST_NUMBER = 5;
    /** INFATRY is a slip of infantry, though it could be cut into INF, AT and RY. */
    private static final int SURELY_ONE_WORD = 6;

    private final String line;
    private final List<Token> tokens = new ArrayList<>();

    private Lexer(String line) {
        this.line = line;
    }

    static List<Token> tokens(String line) {
        var lexer = new Lexer(line);
        Matcher piece = PIECE.matcher(line);
        while (piece.find()) {
            if (CALIBER.matcher(piece.group()).matches()) {
                continue;
            }
            lexer.piece(piece.group(), piece.start());
        }
        return Phrases.joined(withoutPostOffices(lexer.tokens));
    }

    /** An APO and its number say where the mail went, not which unit it was. */
    private static List<Token> withoutPostOffices(List<Token> tokens) {
        var kept = new ArrayList<Token>();
        boolean number = false;
        for (Token token : tokens) {
            if (token.type() == Token.Type.UNKNOWN && token.letter().equals("APO")) {
                number = true;
            } else if (number && token.isNumber()) {
                number = false;
            } else {
                number = false;
                kept.add(token);
            }
        }
        return kept;
    }

    private void piece(String piece, int start) {
        switch (piece) {
            case "/" -> sign(Token.Type.SLASH, start);
            case "&" -> sign(Token.Type.AMPERSAND, start);
            case "(", "[" -> sign(Token.Type.OPEN, start);
            case ")", "]" -> sign(Token.Type.CLOSE, start);
            default -> {
                if (piece.startsWith("O'")) {
                    unknown(piece, start, start + piece.length());
                    return;
                }
                if (piece.indexOf('.') >= 0) {
                    run(piece.replace(".", "").toUpperCase(Locale.ROOT), start, start + piece.length());
                    return;
                }
                if (ROMAN_WITH_ONES.matcher(piece).matches()) {
                    String roman =
                            piece.toUpperCase(Locale.ROOT).replace('L', 'I').replace('1', 'I');
                    tokens.add(
                            new Token(Token.Type.UNKNOWN, null, 0, false, true, start, start + piece.length(), roman));
                    return;
                }
                String bare = FIRST_TYPED_AS_L.matcher(piece.replace("'", "")).replaceFirst("1");
                if (Spelling.whole(bare.toUpperCase(Locale.ROOT)).isPresent()) {
                    run(bare.toUpperCase(Locale.ROOT), start, start + bare.length());
                    return;
                }
                int at = start;
                for (String part : CASE_TURN.split(bare)) {
                    run(slipsOfNumbers(part), at, at + part.length());
                    at += part.length();
                }
            }
        }
    }

    /** Within and after digits a small l is a one, as typewriters had it, O a nought, S a five and Z a two. */
    private static String slipsOfNumbers(String part) {
        String number = ONE_TYPED_AS_L.matcher(part).replaceAll("1");
        number = NOUGHT_AT_END.matcher(number.toUpperCase(Locale.ROOT)).replaceAll("0");
        return TWO_WITHIN.matcher(FIVE_WITHIN.matcher(number).replaceAll("5")).replaceAll("2");
    }

    private void sign(Token.Type type, int at) {
        tokens.add(new Token(type, null, 0, false, false, at, at + 1, line.substring(at, at + 1)));
    }

    /** A run of capitals and digits. Positions are exact for the run, approximate within it when a slip was cut out. */
    private void run(String run, int start, int end) {
        if (run.isEmpty()) {
            return;
        }
        boolean digits = run.chars().anyMatch(c -> c >= '0' && c <= '9');
        if (!digits) {
            letters(run, start, end);
            return;
        }
        if (run.charAt(0) >= 'A' || run.length() <= 3) {
            Optional<List<Word>> meant = Spelling.whole(lettersForDigits(run));
            if (meant.isPresent() && !isOrdinal(run)) {
                words(meant.orElseThrow(), true, start, end);
                return;
            }
        }
        int firstDigit = 0;
        while (run.charAt(firstDigit) < '0' || run.charAt(firstDigit) > '9') {
            firstDigit++;
        }
        int numberStart = firstDigit;
        while (numberStart > 0 && isDigitLike(run.charAt(numberStart - 1))) {
            numberStart--;
        }
        if (numberStart < firstDigit && belongsToWord(run, numberStart, firstDigit)) {
            numberStart = firstDigit;
        }
        if (numberStart > 0) {
            letters(run.substring(0, numberStart), start, start + numberStart);
        }
        number(run.substring(numberStart), Math.min(start + numberStart, end), end);
    }

    /** Digit-like letters before a digit belong to the word when they end one: CoI106th, COL5. */
    private boolean belongsToWord(String run, int numberStart, int firstDigit) {
        String word = run.substring(0, firstDigit);
        if (Spelling.whole(word).isPresent() || letterAfterCompany(word)) {
            return true;
        }
        boolean afterCompany = numberStart == 0
                && firstDigit == 1
                && !tokens.isEmpty()
                && Phrases.isLettered(tokens.get(tokens.size() - 1));
        return afterCompany;
    }

    private static boolean isOrdinal(String run) {
        return run.length() > 1
                && Character.isDigit(run.charAt(0))
                && ENDING.matcher(run.substring(1)).matches()
                && run.substring(1).length() <= 2;
    }

    private static boolean isDigitLike(char c) {
        return c == 'O' || c == 'I' || c == 'L';
    }

    private static String lettersForDigits(String run) {
        return run.replace('0', 'O').replace('1', 'I').replace('5', 'S');
    }

    private static String digitsForLetters(String run) {
        return run.replace('O', '0').replace('I', '1').replace('L', '1');
    }

    /** A run that begins with a number: 331STINF, 33LST, 1OOTH, 3O2ND. */
    private void number(String run, int start, int end) {
        Matcher number = NUMBER_FIRST.matcher(run);
        if (!number.matches()) {
            unknown(run, start, end);
            return;
        }
        String digits = number.group(1);
        String rest = number.group(2);
        // Letters that could be digits at the end belong to the number only when an ending or nothing of a word
        // follows.
        while (isDigitLike(digits.charAt(digits.length() - 1))
                && !ENDING.matcher(rest).matches()) {
            rest = digits.charAt(digits.length() - 1) + rest;
            digits = digits.substring(0, digits.length() - 1);
        }
        if (digits.length() > LONGEST_NUMBER) {
            unknown(run, start, end);
            return;
        }
        boolean corrected = digits.chars().anyMatch(c -> c < '0' || c > '9');
        int value = Integer.parseInt(digitsForLetters(digits));
        boolean ordinal = false;
        Matcher ending = ENDING.matcher(rest);
        if (ending.matches()
                && readable(ending.group(2))
                && (!readable(rest)
                        || fits(value, ending.group(1)) && Spelling.whole(rest).isEmpty())) {
            ordinal = true;
            rest = ending.group(2);
        } else if (ending.matches() && ending.group(2).isEmpty()) {
            ordinal = true;
            rest = "";
        }
        int numberEnd = Math.max(start, end - rest.length());
        tokens.add(new Token(
                Token.Type.NUMBER,
                null,
                value,
                ordinal,
                corrected,
                start,
                numberEnd,
                line.substring(Math.min(start, line.length()), numberEnd)));
        if (!rest.isEmpty()) {
            run(rest, numberEnd, end);
        }
    }

    private static boolean fits(int value, String ending) {
        String right = org.honorsdue.reference.unit.Ordinal.text(value).toUpperCase(Locale.ROOT);
        return right.endsWith(ending);
    }

    private static boolean readable(String rest) {
        return rest.isEmpty()
                || rest.chars().anyMatch(c -> c >= '0' && c <= '9')
                || rest.length() == 1
                || Spelling.whole(rest).isPresent()
                || Spelling.cut(rest).isPresent()
                || Spelling.putRight(rest).isPresent();
    }

    private void letters(String run, int start, int end) {
        if (run.length() == 1) {
            String typed = end - start == 1 && end <= line.length() ? line.substring(start, end) : run;
            if (!typed.equalsIgnoreCase(run)) {
                typed = run;
            }
            tokens.add(new Token(Token.Type.LETTER, null, 0, false, false, start, end, typed));
            return;
        }
        Optional<List<Word>> whole = Spelling.whole(run);
        if (whole.isPresent()) {
            words(whole.orElseThrow(), false, start, end);
            return;
        }
        if (Phrases.isSpokenLetter(run) || NumberWords.isComponent(run) || Spelling.isProper(run)) {
            unknown(run, start, end);
            return;
        }
        Matcher ordinalWord = ORDINAL_WORD.matcher(run);
        if (ordinalWord.matches()) {
            int value = Integer.parseInt(digitsForLetters(ordinalWord.group(1)));
            tokens.add(new Token(Token.Type.NUMBER, null, value, true, true, start, end, line.substring(start, end)));
            return;
        }
        Optional<Integer> spelledOut = NumberWords.value(run);
        if (spelledOut.isPresent()) {
            tokens.add(new Token(
                    Token.Type.NUMBER,
                    null,
                    spelledOut.orElseThrow(),
                    true,
                    false,
                    start,
                    end,
                    line.substring(start, end)));
            return;
        }
        if (letterAfterCompany(run)) {
            int last = run.length() - 1;
            letters(run.substring(0, last), start, end - 1);
            letters(run.substring(last), end - 1, end);
            return;
        }
        Optional<List<String>> cut = Spelling.cut(run);
        Optional<String> right = Spelling.putRight(run);
        boolean slipOfOneWord = right.isPresent() && right.orElseThrow().length() >= SURELY_ONE_WORD;
        if (cut.isPresent() && !slipOfOneWord) {
            int at = start;
            for (String part : cut.orElseThrow()) {
                words(Spelling.whole(part).orElseThrow(), false, at, at + part.length());
                at += part.length();
            }
            return;
        }
        if (right.isPresent()) {
            words(Spelling.whole(right.orElseThrow()).orElseThrow(), true, start, end);
            return;
        }
        unknown(run, start, end);
    }

    /** COB, BTRYA, TRPC: a lettered part run together. */
    private static boolean letterAfterCompany(String run) {
        if (run.length() < 3) {
            return false;
        }
        var words = Spelling.whole(run.substring(0, run.length() - 1));
        char letter = run.charAt(run.length() - 1);
        return words.isPresent()
                && words.orElseThrow().size() == 1
                && Phrases.isLettered(words.orElseThrow().get(0))
                && letter <= 'M';
    }

    private void words(List<Word> words, boolean corrected, int start, int end) {
        for (Word word : words) {
            tokens.add(new Token(
                    Token.Type.WORD,
                    word,
                    0,
                    false,
                    corrected,
                    start,
                    end,
                    line.substring(start, Math.min(end, line.length()))));
        }
    }

    private void unknown(String run, int start, int end) {
        String typed = start <= end && end <= line.length() ? line.substring(start, end) : run;
        tokens.add(new Token(
                Token.Type.UNKNOWN, null, 0, false, false, start, end, typed.equalsIgnoreCase(run) ? typed : run));
    }
}
