package strawbed.dialog;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.event.CalfId;
import strawbed.statement.CalfReference;

/** Finds the calf that somebody means. */
final class Targets {
    private Targets() {}

    static Target of(CalfReference calf, Herd herd, @Nullable CalfId sameCalf, Supplier<UUID> ids) {
        if (calf instanceof CalfReference.Numbered numbered) {
            return herd.byNumber(numbered.number())
                    .map(Targets::known)
                    .orElseGet(() -> new Target.Opened(new CalfId(ids.get()), numbered.number(), null));
        }
        if (calf instanceof CalfReference.Same) {
            return Optional.ofNullable(sameCalf)
                    .flatMap(herd::calf)
                    .map(Targets::known)
                    .orElseGet(() -> new Target.Unknown(Target.Reason.NO_CALF_NAMED_BEFORE));
        }
        if (calf instanceof CalfReference.OfCow ofCow) {
            return ofCow(ofCow, herd, ids);
        }
        if (calf instanceof CalfReference.Renumbered renumbered) {
            return ofCow(renumbered.calf(), herd, ids);
        }
        if (calf instanceof CalfReference.New fresh) {
            return new Target.Opened(new CalfId(ids.get()), fresh.number(), fresh.dam());
        }
        if (calf instanceof CalfReference.Listed listed) {
            return herd.calf(listed.calf())
                    .map(Targets::known)
                    .orElseGet(() -> new Target.Unknown(Target.Reason.NO_SUCH_CALF));
        }
        if (calf instanceof CalfReference.Barn) {
            return new Target.Barn();
        }
        throw new AssertionError(calf);
    }

    private static Target ofCow(CalfReference.OfCow calf, Herd herd, Supplier<UUID> ids) {
        List<CalfRecord> calves = herd.byDam(calf.dam());
        Integer order = calf.order();
        if (order != null) {
            return order <= calves.size()
                    ? known(calves.get(order - 1))
                    : new Target.Unknown(Target.Reason.NO_SUCH_CALF);
        }
        return switch (calves.size()) {
            case 0 -> new Target.Opened(new CalfId(ids.get()), null, calf.dam());
            case 1 -> known(calves.get(0));
            default -> new Target.Unknown(Target.Reason.FIRST_OR_SECOND);
        };
    }

    private static Target known(CalfRecord calf) {
        return new Target.Known(calf.id(), calf.number().orElse(null));
    }
}
