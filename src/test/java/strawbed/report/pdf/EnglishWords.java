package strawbed.report.pdf;

import strawbed.report.CardWord;
import strawbed.report.CardWords;

/** Words for invented cards. */
record EnglishWords() implements CardWords {
    @Override
    public String language() {
        return "en-US";
    }

    @Override
    public String word(CardWord word) {
        return switch (word) {
            case FEED -> "FEED";
            case NAVEL -> "NAVEL";
            case CHECK -> "CHECK";
            case FROM_BIRTH -> "birth";
            case FROM_FIRST_SEEN -> "first seen";
            case DONE -> "done";
            case PLANNED -> "planned";
            case FIRST_DAY -> "The first day";
            case NONE -> "none";
            case NOTHING_TO_DO -> "Nothing more to do is listed.";
            case NOTHING_RECORDED -> "Nothing else is recorded.";
        };
    }

    @Override
    public String hours(int hours) {
        return hours + " h";
    }

    @Override
    public String more(int count) {
        return "and " + count + " more";
    }

    @Override
    public String onScreen(int cautions) {
        return cautions + " cautions are on the screen.";
    }

    @Override
    public String moreOnScreen(int cautions) {
        return cautions + " more cautions are on the screen.";
    }
}
