package strawbed.exchange.ade;

/** The resources of the ICAR Animal Data Exchange standard that are written, in the order in which they are written. */
public enum AdeType {
    ANIMAL("icarAnimalCoreResource"),
    PARTURITION("icarReproParturitionEventResource"),
    WEIGHT("icarWeightEventResource"),
    TREATMENT("icarTreatmentEventResource"),
    DEATH("icarMovementDeathEventResource");

    private final String resourceType;

    AdeType(String resourceType) {
        this.resourceType = resourceType;
    }

    /** The standard's name, which stands in each resource. */
    public String resourceType() {
        return resourceType;
    }
}
