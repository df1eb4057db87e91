package strawbed.care;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.Set;
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

    /** Not judged where dose or antibody is not. */
    public static Judged<AntibodyMass> of(FirstDose dose, Farm farm) {
        return dose.litres()
                .then(litres -> ColostrumQuality.of(dose, farm)
                        .then(ColostrumQuality::antibody)
                        .then(antibody -> Judged.of(of(litres, antibody, dose))));
    }

    private static AntibodyMass of(BigDecimal litres, Antibody antibody, FirstDose dose) {
        Set<Assumption> assumptions = EnumSet.noneOf(Assumption.class);
        if (antibody.isEstimate()) {
            assumptions.add(Assumption.ANTIBODY_FROM_BRIX);
        }
        if (dose.feeds().size() > 1) {
            assumptions.add(Assumption.ONE_COLOSTRUM);
        }
        return new AntibodyMass(
                litres.multiply(antibody.gramsPerLitre()),
                litres.multiply(antibody.least()),
                litres.multiply(antibody.most()),
                dose.suckled(),
                assumptions);
    }

    /** Whether it is an estimate. */
    public boolean isEstimate() {
        return least.compareTo(most) < 0;
    }

    /** The grade of the mass itself, without its spread; each line belongs to the better grade. */
    public MassGrade grade(Protocol protocol) {
        if (grams.compareTo(protocol.number(Setting.ANTIBODY_LOW_BELOW_GRAMS)) < 0) {
            return MassGrade.LOW;
        }
        return grams.compareTo(protocol.number(Setting.ANTIBODY_ADVISED_GRAMS)) < 0
                ? MassGrade.AT_THE_LINE
                : MassGrade.ADVISED;
    }
}
