package strawbed.calf;

/** How numbers of animals compare: 0412 and 412 are one number. */
public final class Numbers {
    private Numbers() {}

    public static boolean same(String one, String other) {
        return plain(one).equals(plain(other));
    }

    /** The number without blanks around it and zeros in front; a lone zero stays. */
    public static String plain(String number) {
        return number.strip().replaceFirst("^0+(?=.)", "");
    }
}
