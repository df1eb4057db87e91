package strawbed.calf;

/** How numbers of animals compare: 0412 and 412 are one number. */
final class Numbers {
    private Numbers() {}

    static boolean same(String one, String other) {
        return plain(one).equals(plain(other));
    }

    private static String plain(String number) {
        return number.strip().replaceFirst("^0+(?=.)", "");
    }
}
