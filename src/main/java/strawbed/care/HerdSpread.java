package strawbed.care;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strawbed.calf.CalfRecord;
import strawbed.calf.Timed;
import strawbed.protocol.Protocol;

/**
 * How the calves of a period lie beside each other, calf by calf, so that a chart can show what a share hides.
 *
 * @param doses of the calves born alive whose first dose and birth weight are known and plausible
 * @param brix of the colostrum, in percent, as last tested for each calf; plausible readings only
 * @param protocol whose lines are drawn: the one in force at the last birth of the period, else now
 */
public record HerdSpread(FirstFeedAges firstFeeds, List<Dose> doses, List<BigDecimal> brix, Protocol protocol) {
    public HerdSpread {
        doses = List.copyOf(doses);
        brix = List.copyOf(brix);
    }

    /**
     * One calf's first dose.
     *
     * @param kilograms what the calf weighed at birth, or its breed's mean
     * @param grams of antibody, where that can be worked out
     */
    public record Dose(BigDecimal kilograms, BigDecimal litres, Optional<BigDecimal> grams) {}

    static HerdSpread of(List<CalfRecord> born, Farm farm, Instant now) {
        List<Dose> doses = new ArrayList<>();
        List<BigDecimal> brix = new ArrayList<>();
        for (CalfRecord calf : born) {
            calf.brix()
                    .map(Timed::event)
                    .filter(test -> Plausibility.of(test).isEmpty())
                    .ifPresent(test -> brix.add(test.brix()));
            if (!BirthOutcome.isBornDead(calf)) {
                dose(calf, farm, now).value().ifPresent(doses::add);
            }
        }
        return new HerdSpread(HerdFigures.firstFeeds(born), doses, brix, protocol(born, farm));
    }

    private static Judged<Dose> dose(CalfRecord calf, Farm farm, Instant now) {
        FirstDose dose = FirstDose.of(calf, farm.protocolFor(calf), now);
        Optional<BigDecimal> grams = AntibodyMass.of(dose, farm).value().map(AntibodyMass::grams);
        return BirthWeight.of(calf)
                .then(weight ->
                        dose.plausibleLitres().then(litres -> Judged.of(new Dose(weight.kilograms(), litres, grams))));
    }

    private static Protocol protocol(List<CalfRecord> born, Farm farm) {
        return born.stream()
                .max((one, other) -> one.bornAbout()
                        .orElseThrow()
                        .compareTo(other.bornAbout().orElseThrow()))
                .map(farm::protocolFor)
                .orElseGet(farm::protocol);
    }
}
