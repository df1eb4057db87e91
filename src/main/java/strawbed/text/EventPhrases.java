package strawbed.text;

import static strawbed.text.MessageKey.*;

import java.math.BigDecimal;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.event.When;
import strawbed.protocol.Units;

/**
 * What happened, in the few words in which people of the trade would say it. The record's own words are never shown.
 *
 * <p>Immutable, safe for any thread.
 */
public final class EventPhrases implements Event.Cases<String> {
    private static final String EVENT_SIGN = "event.sign.";

    private final Wording wording;
    private final Figures figures;

    /** For the eye, with amounts as they were spoken; {@code zone} is the farm's. */
    public EventPhrases(Messages messages, ZoneId zone) {
        this(new Written(messages), zone);
    }

    /** For the eye, with amounts in these units. */
    public EventPhrases(Messages messages, ZoneId zone, Units units) {
        this(new Written(messages), new Figures(new Written(messages), zone, units));
    }

    EventPhrases(Wording wording, ZoneId zone) {
        this(wording, new Figures(wording, zone));
    }

    private EventPhrases(Wording wording, Figures figures) {
        this.wording = wording;
        this.figures = figures;
    }

    /** Such as "navel dipped with iodine 7 percent"; without a full stop, in lower case. */
    public String of(Event event) {
        return event.match(this);
    }

    @Override
    public String calfOpened(Event.CalfOpened e) {
        return new CalfNames(wording).opened(e.number(), e.dam());
    }

    @Override
    public String calfNumbered(Event.CalfNumbered e) {
        return wording.text(EVENT_NUMBERED, figures.animal(e.number()));
    }

    @Override
    public String damNoted(Event.DamNoted e) {
        if (e.dam() == null) {
            return wording.text(EVENT_PARITY, count(e.parity()));
        }
        String dam = figures.animal(e.dam());
        return e.parity() == null
                ? wording.text(EVENT_DAM, dam)
                : wording.text(EVENT_DAM_AND_PARITY, dam, count(e.parity()));
    }

    @Override
    public String breedNoted(Event.BreedNoted e) {
        return wording.text(
                EVENT_BREED,
                Arrays.stream(e.breed().split(" ", -1))
                        .map(word ->
                                Sentences.capitalised(word, wording.messages().locale()))
                        .collect(Collectors.joining(" ")));
    }

    @Override
    public String twinNoted(Event.TwinNoted e) {
        if (e.count() == 2) {
            return e.of() == null ? wording.text(EVENT_TWIN) : wording.text(EVENT_TWIN_OF, figures.animal(e.of()));
        }
        return e.of() == null
                ? wording.text(EVENT_MULTIPLE, count(e.count()))
                : wording.text(EVENT_MULTIPLE_WITH, count(e.count()), figures.animal(e.of()));
    }

    @Override
    public String sexNoted(Event.SexNoted e) {
        return wording.word(e.sex());
    }

    @Override
    public String earTagFitted(Event.EarTagFitted e) {
        return switch (e.scheme()) {
            case FARM -> wording.text(EVENT_FARM_TAG, figures.animal(e.number()));
            case OFFICIAL -> wording.text(EVENT_OFFICIAL_TAG, figures.officialTag(e.number()));
        };
    }

    @Override
    public String calfBorn(Event.CalfBorn e) {
        return when(e.when(), EVENT_BORN, EVENT_BORN_BETWEEN);
    }

    @Override
    public String calfFound(Event.CalfFound e) {
        return when(e.when(), EVENT_FOUND, EVENT_FOUND_BETWEEN);
    }

    @Override
    public String calvingEaseNoted(Event.CalvingEaseNoted e) {
        return e.ease() == null ? wording.text(EVENT_EASE_SCORE, count(e.score())) : wording.word(e.ease());
    }

    @Override
    public String presentationNoted(Event.PresentationNoted e) {
        return wording.text(EVENT_PRESENTATION, wording.word(e.presentation()));
    }

    @Override
    public String calfDied(Event.CalfDied e) {
        return switch (e.when()) {
            case AT_BIRTH -> wording.text(EVENT_BORN_DEAD);
            case LATER -> wording.text(EVENT_DIED, figures.time(e.at()));
        };
    }

    @Override
    public String breathingNoted(Event.BreathingNoted e) {
        return wording.word(e.breathing());
    }

    @Override
    public String breathingStimulated(Event.BreathingStimulated e) {
        return wording.word(e.means());
    }

    @Override
    public String lickingNoted(Event.LickingNoted e) {
        return wording.text(e.licked() ? EVENT_LICKED : EVENT_NOT_LICKED);
    }

    @Override
    public String calfDried(Event.CalfDried e) {
        return e.means() == null ? wording.text(EVENT_DRIED) : wording.text(EVENT_DRIED_WITH, wording.word(e.means()));
    }

    @Override
    public String shelterGiven(Event.ShelterGiven e) {
        return wording.word(e.means());
    }

    @Override
    public String milestoneReached(Event.MilestoneReached e) {
        return wording.word(e.milestone());
    }

    @Override
    public String signNoted(Event.SignNoted e) {
        String place = said(e.place());
        String finding = said(e.finding());
        if (e.sign() == Term.Sign.SWOLLEN && place != null && finding == null) {
            return wording.text(EVENT_SWOLLEN_PLACE, place);
        }
        if (e.sign() == Term.Sign.GUMS && finding != null && place == null) {
            return wording.text(EVENT_GUMS, finding);
        }
        if (e.sign() == Term.Sign.SUCK_REFLEX && finding != null && place == null) {
            return "none".equals(e.finding())
                    ? wording.text(EVENT_NO_SUCK_REFLEX)
                    : wording.text(EVENT_SUCK_REFLEX, finding);
        }
        return and(and(wording.word(e.sign()), place), finding);
    }

    @Override
    public String navelDipped(Event.NavelDipped e) {
        String agent = e.agent() == null ? null : wording.word(e.agent());
        String strength = e.percent() == null ? null : figures.percent(e.percent());
        if (agent == null) {
            return strength == null ? wording.text(EVENT_DIPPED) : wording.text(EVENT_DIPPED_STRENGTH, strength);
        }
        return strength == null
                ? wording.text(EVENT_DIPPED_WITH, agent)
                : wording.text(EVENT_DIPPED_WITH_STRENGTH, agent, strength);
    }

    @Override
    public String navelChecked(Event.NavelChecked e) {
        return wording.text(EVENT_NAVEL, wording.word(e.finding()));
    }

    @Override
    public String temperatureTaken(Event.TemperatureTaken e) {
        return wording.text(EVENT_TEMPERATURE, figures.temperature(e.temperature()));
    }

    @Override
    public String heartRateCounted(Event.HeartRateCounted e) {
        return wording.text(EVENT_HEART_RATE, wording.text(PER_MINUTE, count(e.perMinute())));
    }

    @Override
    public String breathingRateCounted(Event.BreathingRateCounted e) {
        return wording.text(EVENT_BREATHING_RATE, wording.text(PER_MINUTE, count(e.perMinute())));
    }

    @Override
    public String calfWeighed(Event.CalfWeighed e) {
        String weight = figures.mass(e.weight());
        return e.method() == null
                ? wording.text(EVENT_WEIGHT, weight)
                : wording.text(EVENT_WEIGHT_BY, weight, wording.word(e.method()));
    }

    @Override
    public String serumTested(Event.SerumTested e) {
        String result = switch (e.kind()) {
            case PROTEIN -> wording.text(EVENT_SERUM_PROTEIN, wording.counted(GRAMS_A_DECILITRE, e.value()));
            case IGG -> wording.text(EVENT_SERUM_IGG, wording.counted(GRAMS_A_LITRE, e.value()));
            case BRIX -> wording.text(EVENT_SERUM_BRIX, figures.percent(e.value()));
        };
        return e.drawnAt() == null ? result : wording.text(EVENT_BLOOD_DRAWN, result, figures.time(e.drawnAt()));
    }

    @Override
    public String colostrumTestedByBrix(Event.ColostrumTestedByBrix e) {
        return wording.text(EVENT_COLOSTRUM_BRIX, figures.percent(e.brix()));
    }

    @Override
    public String colostrumTestedByHydrometer(Event.ColostrumTestedByHydrometer e) {
        String reading = wording.counted(MILLIGRAMS_A_MILLILITRE, e.reading());
        return e.milk() == null
                ? wording.text(EVENT_HYDROMETER, reading)
                : wording.text(EVENT_HYDROMETER_AT, reading, figures.temperature(e.milk()));
    }

    @Override
    public String colostrumSourceNoted(Event.ColostrumSourceNoted e) {
        return and(source(e), word(e.treatment()));
    }

    @Override
    public String colostrumFed(Event.ColostrumFed e) {
        String volume = figures.volume(e.volume());
        String fed = e.method() == null
                ? wording.text(EVENT_FED, volume)
                : wording.text(EVENT_FED_BY, volume, wording.word(e.method()));
        return e.warmedTo() == null ? fed : wording.text(EVENT_WARMED_TO, fed, figures.temperature(e.warmedTo()));
    }

    @Override
    public String colostrumLeft(Event.ColostrumLeft e) {
        return wording.text(EVENT_LEFT, figures.volume(e.volume()));
    }

    @Override
    public String feedRefused(Event.FeedRefused e) {
        return wording.text(EVENT_REFUSED);
    }

    @Override
    public String damNursed(Event.DamNursed e) {
        return wording.text(EVENT_NURSED);
    }

    @Override
    public String calfMoved(Event.CalfMoved e) {
        return wording.text(EVENT_MOVED, figures.place(e.place()));
    }

    @Override
    public String vetCalled(Event.VetCalled e) {
        return wording.text(EVENT_VET_CALLED);
    }

    @Override
    public String treatmentNoted(Event.TreatmentNoted e) {
        return wording.word(e.kind());
    }

    @Override
    public String voiceNoteTaken(Event.VoiceNoteTaken e) {
        return wording.text(EVENT_VOICE_NOTE);
    }

    @Override
    public String barnClimateNoted(Event.BarnClimateNoted e) {
        String temperature = figures.temperature(e.temperature());
        return e.humidity() == null
                ? wording.text(EVENT_BARN, temperature)
                : wording.text(EVENT_BARN_HUMIDITY, temperature, figures.percent(e.humidity()));
    }

    @Override
    public String colostrumStored(Event.ColostrumStored e) {
        String stored = wording.text(EVENT_STORED, figures.volume(e.volume()), figures.animal(e.batch()));
        String tested = e.brix() == null ? stored : wording.text(EVENT_STORED_BRIX, stored, figures.percent(e.brix()));
        return and(tested, word(e.treatment()));
    }

    @Override
    public String protocolAdopted(Event.ProtocolAdopted e) {
        return wording.text(EVENT_PROTOCOL);
    }

    @Override
    public String cardPrinted(Event.CardPrinted e) {
        return wording.text(EVENT_CARD_PRINTED, wording.word(e.printout()), count(e.number()));
    }

    @Override
    public String eventWithdrawn(Event.EventWithdrawn e) {
        return wording.text(EVENT_WITHDRAWN);
    }

    @Override
    public String operatorChosen(Event.OperatorChosen e) {
        return e.operator() == null ? wording.text(EVENT_OPERATOR_NONE) : wording.text(EVENT_OPERATOR, e.operator());
    }

    @Override
    public String soundsRemoved(Event.SoundsRemoved e) {
        return wording.text(EVENT_SOUNDS_REMOVED, count(e.count()));
    }

    @Override
    public String clockChanged(Event.ClockChanged e) {
        return wording.text(e.found().isBefore(e.expected()) ? EVENT_CLOCK_BACK : EVENT_CLOCK_FORWARD);
    }

    @Override
    public String zoneChanged(Event.ZoneChanged e) {
        return wording.text(EVENT_ZONE_CHANGED, e.to().getId());
    }

    /** A cow or a batch that was named says where it comes from, whether or not the source was said as well. */
    private String source(Event.ColostrumSourceNoted e) {
        if (e.cow() != null) {
            return wording.text(EVENT_COLOSTRUM_OF_COW, figures.animal(e.cow()));
        }
        if (e.batch() != null) {
            return wording.text(EVENT_COLOSTRUM_BATCH, figures.animal(e.batch()));
        }
        if (e.source() == null) {
            return wording.text(EVENT_COLOSTRUM);
        }
        return wording.text(
                switch (e.source()) {
                    case COW -> EVENT_COLOSTRUM_OF_A_COW;
                    case POOLED -> EVENT_COLOSTRUM_POOLED;
                    case REPLACER -> EVENT_COLOSTRUM_REPLACER;
                    case BATCH -> EVENT_COLOSTRUM_OF_A_BATCH;
                });
    }

    private String when(When when, MessageKey at, MessageKey between) {
        if (when instanceof When.Between window) {
            return wording.text(between, figures.clock(window.earliest()), figures.clock(window.latest()));
        }
        return wording.text(at, figures.time(when.midpoint()));
    }

    private String and(String words, @Nullable String more) {
        return more == null ? words : wording.text(EVENT_AND, words, more);
    }

    /** A word of the grammar in the language of the reader; a word that a farm's own grammar has stays as it was said. */
    private @Nullable String said(@Nullable String word) {
        String key = EVENT_SIGN + word;
        return word != null && wording.messages().has(key) ? wording.at(key) : word;
    }

    private @Nullable String word(@Nullable Enum<?> constant) {
        return constant == null ? null : wording.word(constant);
    }

    private String count(@Nullable Integer count) {
        return count == null ? "" : figures.number(BigDecimal.valueOf(count));
    }
}
