package strawbed.care;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;

/**
 * The antibody that a calf took in its first dose: liters times grams per liter. Source: Elizondo-Salazar 2011, by way
 * of Penn State Extension.
 *
 * @param grams exact
 * @param least the least it may be, in grams; as {@code grams} where the antibody was measured
 * @param most the most it may be, in grams, of what was measured by volume
 * @param isAtLeast whether the calf also sucked its dam, so that it is more
 */
public record AntibodyMass(
        BigDecimal grams, BigDecimal least, BigDecimal most, boolean isAtLeast, Set<Assumption> assumptions) {
    /** How a mass stands against the farm's lines; usually those of Chigerwe 2008, Am J Vet Res 69:1158. */
    public enum MassGrade {
        LOW,
        AT_THE_LINE,
        ADVISED
    }

    public AntibodyMass {
        assumptions = Set.copyOf(assumptions);
    }

    /** The sum of the feeds; not judged where the dose, or the antibody of one of its feeds, is not. */
    public static Judged<AntibodyMass> of(FirstDose dose, Farm farm) {
        return dose.plausibleLitres()
                .then(litres -> FedAntibody.ofAll(
                        FedColostrum.of(dose.calf(), dose.feeds(), dose.end(), dose.protocol(), farm)))
                .then(fed -> Judged.of(of(fed, dose.suckled())));
    }

    static AntibodyMass of(List<FedAntibody> fed, boolean isAtLeast) {
        Set<Assumption> assumptions = EnumSet.noneOf(Assumption.class);
        if (fed.stream().anyMatch(FedAntibody::isEstimate)) {
            assumptions.add(Assumption.ANTIBODY_FROM_BRIX);
        }
        if (fed.stream().anyMatch(FedAntibody::isAssumed)) {
            assumptions.add(Assumption.ONE_COLOSTRUM);
        }
        return new AntibodyMass(
                sum(fed, FedAntibody::grams),
                sum(fed, FedAntibody::least),
                sum(fed, FedAntibody::most),
                isAtLeast,
                assumptions);
    }

    /** Whether it is an estimate. */
    public boolean isEstimate() {
        return least.compareTo(most) < 0;
    }

    /**
     * The grade of the mass itself, without its spread; each line belongs to the better grade. Low is not judged of a
     * calf that also sucked its dam, for it may have had enough.
     */
    public Judged<MassGrade> grade(Protocol protocol) {
        MassGrade grade = gradeOf(grams, protocol);
        return grade == MassGrade.LOW && isAtLeast ? Judged.not(WhyNot.SUCKLED) : Judged.of(grade);
    }

    /** Whether the whole spread has one grade, so that the estimate does not decide it. */
    public boolean isGradeSure(Protocol protocol) {
        return gradeOf(least, protocol) == gradeOf(most, protocol);
    }

    private static MassGrade gradeOf(BigDecimal grams, Protocol protocol) {
        if (grams.compareTo(protocol.number(Setting.ANTIBODY_LOW_BELOW_GRAMS)) < 0) {
            return MassGrade.LOW;
        }
        return grams.compareTo(protocol.number(Setting.ANTIBODY_ADVISED_GRAMS)) < 0
                ? MassGrade.AT_THE_LINE
                : MassGrade.ADVISED;
    }

    private static BigDecimal sum(List<FedAntibody> fed, Function<FedAntibody, BigDecimal> part) {
        return fed.stream().map(part).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
