package strawbed.account;

import static strawbed.text.MessageKey.*;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import strawbed.calf.Feed;
import strawbed.care.Absorption;
import strawbed.care.AgeStart;
import strawbed.care.Antibody;
import strawbed.care.AntibodyMass;
import strawbed.care.BirthWeight;
import strawbed.care.ColostrumQuality;
import strawbed.care.ColostrumTiming;
import strawbed.care.Farm;
import strawbed.care.FeedWarmth;
import strawbed.care.FirstDose;
import strawbed.care.Judged;
import strawbed.care.TestAccuracy;
import strawbed.event.Event.CalfWeighed;
import strawbed.measure.Mass;
import strawbed.measure.MassUnit;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;
import strawbed.text.Figures;
import strawbed.text.Messages;
import strawbed.text.SettingPhrases;

/** Whether the first dose of colostrum came in time, was large and good enough, and what it should lead to. */
record Enough(FirstDose dose, Farm farm, Messages messages, Figures figures, SettingPhrases settings) {
    /** The least serum IgG of a calf with good passive immunity, in g/L. Source: Lombard 2020. */
    private static final BigDecimal GOOD = new BigDecimal("18");

    List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        lines.add(timing());
        weight().ifPresent(lines::add);
        Judged<ColostrumQuality> quality = ColostrumQuality.of(dose, farm);
        lines.add(quality(quality));
        if (dose.feeds().isEmpty()) {
            // Without a feed all the rest is not judged for the same reason as the first line.
            return lines;
        }
        lines.add(size());
        lines.add(ruleOfThumb());
        warmth().ifPresent(lines::add);
        lines.add(judgements()
                .line(
                        ACCOUNT_ANTIBODY,
                        quality.then(ColostrumQuality::antibody),
                        this::antibody,
                        List.of(messages.text(ACCOUNT_ANTIBODY_WHY))));
        lines.add(mass());
        lines.add(expected());
        lines.add(needed());
        lines.add(observed());
        return lines;
    }

    private Judgements judgements() {
        return new Judgements(messages);
    }

    private Line timing() {
        List<String> reasons = new ArrayList<>();
        reasons.add(judgements()
                .rule(
                        ACCOUNT_FIRST_FEED_RULE,
                        protocol(),
                        settings,
                        Setting.BEST_WITHIN_HOURS,
                        Setting.TARGET_WITHIN_HOURS,
                        Setting.ACCEPTABLE_WITHIN_HOURS,
                        Setting.LATE_WITHIN_HOURS));
        AgeStart.of(dose.calf())
                .filter(AgeStart::isEstimated)
                .ifPresent(start -> reasons.add(messages.word(start.basis())));
        return judgements()
                .line(
                        ACCOUNT_FIRST_FEED,
                        dose.ageAtFirstFeed(),
                        age -> messages.text(
                                ACCOUNT_FIRST_FEED_BAND,
                                figures.shortly(age),
                                messages.word(ColostrumTiming.of(age, protocol()))),
                        reasons);
    }

    private Optional<Line> weight() {
        return BirthWeight.of(dose.calf()).value().map(weight -> {
            String kilograms = figures.mass(new Mass(weight.shownKilograms(), MassUnit.KILOGRAM));
            CalfWeighed measured = weight.measured();
            return new Line(
                    messages.text(ACCOUNT_WEIGHT),
                    measured == null
                            ? messages.text(ACCOUNT_WEIGHT_ASSUMED, kilograms)
                            : figures.mass(measured.weight()),
                    judgements().assumed(weight.assumptions()));
        });
    }

    private Line size() {
        List<String> reasons = new ArrayList<>();
        if (dose.shareOfBirthWeight().value().isPresent()) {
            reasons.add(judgements().rule(ACCOUNT_DOSE_RULE, protocol(), settings, Setting.DOSE_BIRTH_WEIGHT_PERCENT));
            reasons.addAll(judgements().assumed(dose.assumptions()));
        } else {
            dose.shareOfBirthWeight()
                    .whyNot()
                    .filter(why -> !dose.feeds().isEmpty())
                    .ifPresent(why -> reasons.add(messages.text(ACCOUNT_NO_SHARE, messages.word(why))));
        }
        if (dose.suckled() && !dose.feeds().isEmpty()) {
            reasons.add(messages.text(ACCOUNT_AND_SUCKLED));
        }
        return judgements().line(ACCOUNT_DOSE, dose.litres(), this::size, reasons);
    }

    private String size(BigDecimal litres) {
        String taken = figures.taken(dose.feeds());
        return dose.shareOfBirthWeight()
                .value()
                .map(share -> messages.text(ACCOUNT_DOSE_SHARE, taken, figures.percent(share), target()))
                .orElse(taken);
    }

    private String target() {
        String target = litres(dose.targetLitres().value().orElseThrow());
        return dose.meetsTarget()
                .value()
                .map(meets -> messages.text(meets ? ACCOUNT_TARGET_MET : ACCOUNT_TARGET_NOT_MET, target))
                .orElseGet(() -> messages.text(ACCOUNT_TARGET_IS, target));
    }

    private Line ruleOfThumb() {
        return judgements()
                .line(
                        ACCOUNT_RULE_OF_THUMB,
                        dose.size(),
                        messages::word,
                        List.of(messages.text(ACCOUNT_RULE_OF_THUMB_WHY)));
    }

    /** The coolest and the hottest feed of the dose tell most. */
    private Optional<Line> warmth() {
        return dose.feeds().stream()
                .flatMap(feed -> Stream.ofNullable(feed.warmedTo()))
                .filter(fed -> FeedWarmth.of(fed, protocol()) != FeedWarmth.FITTING)
                .findFirst()
                .or(() -> dose.feeds().stream()
                        .map(Feed::warmedTo)
                        .flatMap(Stream::ofNullable)
                        .findFirst())
                .map(fed -> new Line(
                        messages.text(ACCOUNT_WARMTH),
                        messages.text(
                                ACCOUNT_VALUE_IS,
                                figures.temperature(fed),
                                messages.word(FeedWarmth.of(fed, protocol()))),
                        List.of(judgements()
                                .rule(
                                        ACCOUNT_WARMTH_RULE,
                                        protocol(),
                                        settings,
                                        Setting.FEED_COOL_BELOW_FAHRENHEIT,
                                        Setting.FEED_HOT_ABOVE_FAHRENHEIT))));
    }

    private Line quality(Judged<ColostrumQuality> quality) {
        boolean byBrix = quality.value()
                .filter(known -> known.test() instanceof ColostrumQuality.Test.Brix)
                .isPresent();
        List<String> reasons = new ArrayList<>();
        reasons.add(
                byBrix
                        ? judgements()
                                .rule(
                                        ACCOUNT_BRIX_RULE,
                                        protocol(),
                                        settings,
                                        Setting.GOOD_FROM_BRIX_PERCENT,
                                        Setting.LOW_BELOW_BRIX_PERCENT)
                        : judgements()
                                .rule(
                                        ACCOUNT_HYDROMETER_RULE,
                                        protocol(),
                                        settings,
                                        Setting.GOOD_FROM_GRAMS_PER_LITER));
        if (byBrix) {
            reasons.add(messages.text(
                    ACCOUNT_BRIX_ACCURACY,
                    figures.percent(TestAccuracy.BRIX_AT_22.trulyPositive()),
                    figures.percent(TestAccuracy.BRIX_AT_22.trulyNegative())));
        }
        quality.value()
                .filter(ColostrumQuality::ofBatch)
                .ifPresent(known -> reasons.add(messages.text(ACCOUNT_OF_BATCH)));
        return judgements()
                .line(
                        ACCOUNT_QUALITY,
                        quality.then(known -> known.grade()
                                .then(grade ->
                                        Judged.of(messages.text(ACCOUNT_VALUE_IS, read(known), messages.word(grade))))),
                        text -> text,
                        reasons);
    }

    private String read(ColostrumQuality quality) {
        if (quality.test() instanceof ColostrumQuality.Test.Brix brix) {
            return messages.text(ACCOUNT_BRIX, figures.percent(brix.percent()));
        }
        return messages.text(
                ACCOUNT_HYDROMETER,
                figures.number(((ColostrumQuality.Test.ByHydrometer) quality.test())
                        .reading()
                        .reading()));
    }

    private String antibody(Antibody antibody) {
        return antibody.isEstimate()
                ? messages.text(
                        ACCOUNT_ANTIBODY_ABOUT,
                        whole(antibody.gramsPerLitre()),
                        whole(antibody.least()),
                        whole(antibody.most()))
                : messages.text(ACCOUNT_ANTIBODY_MEASURED, whole(antibody.gramsPerLitre()));
    }

    private Line mass() {
        Judged<AntibodyMass> mass = AntibodyMass.of(dose, farm);
        List<String> reasons = new ArrayList<>();
        reasons.add(judgements()
                .rule(
                        ACCOUNT_MASS_RULE,
                        protocol(),
                        settings,
                        Setting.ANTIBODY_LOW_BELOW_GRAMS,
                        Setting.ANTIBODY_ADVISED_GRAMS));
        mass.value().ifPresent(known -> reasons.addAll(judgements().assumed(known.assumptions())));
        return judgements().line(ACCOUNT_MASS, mass, this::mass, reasons);
    }

    private String mass(AntibodyMass mass) {
        String grams = mass.isEstimate()
                ? messages.text(ACCOUNT_MASS_ABOUT, whole(mass.grams()), whole(mass.least()), whole(mass.most()))
                : messages.text(ACCOUNT_MASS_MEASURED, whole(mass.grams()));
        return messages.text(ACCOUNT_VALUE_IS, grams, grade(mass));
    }

    private Line expected() {
        Judged<Absorption.Range> range = Absorption.expectedSerum(dose, farm);
        return judgements()
                .line(
                        ACCOUNT_EXPECTED,
                        range,
                        known -> messages.text(ACCOUNT_EXPECTED_RANGE, whole(known.least()), whole(known.most())),
                        assumed(range));
    }

    private Line needed() {
        Judged<Absorption.Range> range = Absorption.massFor(GOOD, dose);
        return judgements()
                .line(
                        ACCOUNT_NEEDED,
                        range,
                        known -> messages.text(
                                ACCOUNT_NEEDED_RANGE, whole(GOOD), whole(known.least()), whole(known.most())),
                        assumed(range));
    }

    private Line observed() {
        Judged<Absorption.Range> observed = Absorption.observed(dose, farm);
        List<String> reasons = new ArrayList<>(List.of(messages.text(ACCOUNT_EFFICIENCY_WHY)));
        reasons.addAll(assumed(observed));
        return judgements().line(ACCOUNT_EFFICIENCY, observed, this::efficiency, reasons);
    }

    private String efficiency(Absorption.Range range) {
        return range.least().compareTo(range.most()) == 0
                ? messages.text(ACCOUNT_EFFICIENCY_ABOUT, percent(range.least()))
                : messages.text(ACCOUNT_EFFICIENCY_RANGE, whole(range.least()), percent(range.most()));
    }

    /** An estimate whose spread has more than one grade says so. */
    private String grade(AntibodyMass mass) {
        return mass.grade(protocol())
                .value()
                .map(grade -> mass.isGradeSure(protocol())
                        ? messages.word(grade)
                        : messages.text(ACCOUNT_PERHAPS, messages.word(grade)))
                .orElseGet(() -> messages.text(
                        ACCOUNT_NOT_JUDGED,
                        messages.word(mass.grade(protocol()).whyNot().orElseThrow())));
    }

    private List<String> assumed(Judged<Absorption.Range> range) {
        return range.value()
                .map(known -> judgements().assumed(known.assumptions()))
                .orElse(List.of());
    }

    private Protocol protocol() {
        return dose.protocol();
    }

    private String litres(BigDecimal litres) {
        return figures.volume(new Volume(litres.setScale(1, RoundingMode.HALF_UP), VolumeUnit.LITRE));
    }

    private String percent(BigDecimal percent) {
        return figures.percent(percent.setScale(0, RoundingMode.HALF_UP));
    }

    private String whole(BigDecimal number) {
        return figures.number(number.setScale(0, RoundingMode.HALF_UP));
    }
}
