package strawbed.card;

import static strawbed.text.MessageKey.*;

import strawbed.report.CardWord;
import strawbed.report.CardWords;
import strawbed.text.Messages;

/** The words that stand on every card. */
record CardPhrases(Messages messages) implements CardWords {
    @Override
    public String language() {
        return messages.locale().toLanguageTag();
    }

    @Override
    public String word(CardWord word) {
        return messages.word(word);
    }

    @Override
    public String hours(int hours) {
        return messages.text(HOURS_SHORT, hours);
    }

    @Override
    public String more(int count) {
        return messages.text(CARD_MORE, count);
    }

    @Override
    public String onScreen(int cautions) {
        return cautions == 1 ? messages.text(CARD_CAUTION_ON_SCREEN) : messages.text(CARD_CAUTIONS_ON_SCREEN, cautions);
    }

    @Override
    public String moreOnScreen(int cautions) {
        return cautions == 1
                ? messages.text(CARD_MORE_CAUTION_ON_SCREEN)
                : messages.text(CARD_MORE_CAUTIONS_ON_SCREEN, cautions);
    }
}
