package strawbed.exchange;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.care.AgeStart;
import strawbed.care.AntibodyMass;
import strawbed.care.Farm;
import strawbed.care.FirstDose;
import strawbed.care.FirstFeedAge;
import strawbed.care.FirstFeedAges;
import strawbed.care.PassiveImmunity;
import strawbed.event.CalfId;
import strawbed.event.Event.CalfWeighed;
import strawbed.event.Event.ColostrumTestedByBrix;
import strawbed.event.Term;
import strawbed.event.When;
import strawbed.journal.RecordParts;

/**
 * The calves of the record as a table with a row for each. What was not recorded, and what cannot be judged, is empty;
 * no dip on record is not zero dips. Times are those of the zone in which the calf's record was opened.
 */
public final class CalfSheet {
    static final List<String> COLUMNS = List.of(
            "number",
            "id",
            "dam",
            "sex",
            "breed",
            "born_local",
            "born_known",
            "born_earliest_local",
            "born_latest_local",
            "zone",
            "ease",
            "ease_score_1_to_5",
            "first_feed_age_hours",
            "first_dose_litres",
            "brix_percent",
            "antibody_g",
            "antibody_least_g",
            "antibody_most_g",
            "dips",
            "weight_kg",
            "tag",
            "passive_immunity",
            "died_local");

    private CalfSheet() {}

    /**
     * Writes the table of a whole record. Only some of its calves are in memory at a time.
     *
     * @param now when it is judged
     */
    public static void write(RecordParts record, Instant now, Appendable out) throws IOException {
        Farm farm = Farm.of(Herd.of(record.ofBarn(Instant.MIN)));
        Sheet sheet = new Sheet(COLUMNS, out);
        for (List<CalfId> some : record.calvesInPortions()) {
            write(Herd.of(record.ofCalves(some)), farm, now, sheet);
        }
    }

    private static void write(Herd herd, Farm farm, Instant now, Sheet sheet) throws IOException {
        for (CalfRecord calf : herd.calves()) {
            Sheet.Row row = sheet.row();
            identity(row, calf);
            birth(row, calf);
            colostrum(row, calf, farm, now);
            sheet.write(row);
        }
    }

    private static void identity(Sheet.Row row, CalfRecord calf) {
        String tags = calf.tags().stream().map(tag -> tag.event().number()).collect(Collectors.joining("; "));
        row.text("number", calf.number().orElse(null))
                .text("id", calf.id().toString())
                .text("dam", calf.dam().orElse(null))
                .text("sex", calf.sex().map(Term::word).orElse(null))
                .text("breed", calf.breed().orElse(null))
                .text("tag", tags.isEmpty() ? null : tags)
                .number("dips", calf.dips().isEmpty() ? null : calf.dips().size())
                .number(
                        "weight_kg",
                        calf.last(CalfWeighed.class)
                                .map(weighed -> weighed.event().weight().inKilograms())
                                .orElse(null));
    }

    private static void birth(Sheet.Row row, CalfRecord calf) {
        ZoneId zone = calf.history().get(0).recorded().zone();
        Optional<AgeStart> start = AgeStart.of(calf);
        row.text("born_local", start.map(age -> Sheet.local(age.at(), zone)).orElse(null))
                .text("born_known", start.map(age -> known(age.basis())).orElse(null))
                .text("zone", zone.getId())
                .text("ease", calf.ease().map(Term::word).orElse(null))
                .number("ease_score_1_to_5", calf.easeScore().orElse(null))
                .text(
                        "died_local",
                        calf.death().map(died -> Sheet.local(died.at(), zone)).orElse(null));
        if (calf.birth().orElse(null) instanceof When.Between window) {
            row.text("born_earliest_local", Sheet.local(window.earliest(), zone))
                    .text("born_latest_local", Sheet.local(window.latest(), zone));
        }
    }

    private static void colostrum(Sheet.Row row, CalfRecord calf, Farm farm, Instant now) {
        FirstDose dose = FirstDose.of(calf, farm.protocolFor(calf), now);
        Optional<AntibodyMass> antibody = AntibodyMass.of(dose, farm).value();
        row.number(
                        "first_feed_age_hours",
                        FirstFeedAge.of(calf)
                                .value()
                                .map(age -> FirstFeedAges.hours(age.middle()))
                                .orElse(null))
                .number("first_dose_litres", dose.litres().value().orElse(null))
                .number(
                        "brix_percent",
                        calf.last(ColostrumTestedByBrix.class)
                                .map(test -> test.event().brix())
                                .orElse(null))
                .number(
                        "antibody_g",
                        antibody.map(AntibodyMass::grams).map(CalfSheet::grams).orElse(null))
                .number(
                        "antibody_least_g",
                        antibody.map(AntibodyMass::least).map(CalfSheet::grams).orElse(null))
                .number(
                        "antibody_most_g",
                        antibody.map(AntibodyMass::most).map(CalfSheet::grams).orElse(null))
                .text("passive_immunity", immunity(calf, farm));
    }

    private static @Nullable String immunity(CalfRecord calf, Farm farm) {
        return PassiveImmunity.of(calf, farm)
                .value()
                .map(judged -> judged.category().name().toLowerCase(Locale.ROOT))
                .orElse(null);
    }

    private static String known(AgeStart.Basis basis) {
        return switch (basis) {
            case BORN -> "timed";
            case BORN_IN_WINDOW -> "middle of window";
            case FOUND -> "found";
            case OPENED -> "record opened";
        };
    }

    private static BigDecimal grams(BigDecimal exact) {
        return exact.setScale(1, RoundingMode.HALF_UP);
    }
}
