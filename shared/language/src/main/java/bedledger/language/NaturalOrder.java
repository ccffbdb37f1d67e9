package bedledger.language;

import java.util.Comparator;

/** Orders names as people do: N2 before N10. A number of up to nine digits counts as one; a longer one is cut after each nine. */
public enum NaturalOrder implements Comparator<String> {
    INSTANCE;

    private static final int DIGITS = 9;

    @Override
    public int compare(String a, String b) {
        int atA = 0;
        int atB = 0;
        while (atA < a.length() && atB < b.length()) {
            int endA = endOfNumber(a, atA);
            int endB = endOfNumber(b, atB);
            int order = endA > atA && endB > atB
                    ? Integer.compare(number(a, atA, endA), number(b, atB, endB))
                    : Character.compare(first(a, atA, endA), first(b, atB, endB));
            if (order != 0) {
                return order;
            }
            atA = Math.max(endA, atA + 1);
            atB = Math.max(endB, atB + 1);
        }
        int left = Integer.compare(a.length() - atA, b.length() - atB);
        return left == 0 ? a.compareTo(b) : left;
    }

    private static int endOfNumber(String name, int from) {
        int at = from;
        while (at < name.length() && at - from < DIGITS && name.charAt(at) >= '0' && name.charAt(at) <= '9') {
            at++;
        }
        return at;
    }

    private static int number(String name, int from, int end) {
        return Integer.parseInt(name, from, end, 10);
    }

    /** Beside what is no number, a number stands where one with leading zeros would. */
    private static char first(String name, int from, int end) {
        return end > from && end - from < DIGITS ? '0' : name.charAt(from);
    }
}
