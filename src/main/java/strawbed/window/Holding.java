package strawbed.window;

import java.util.function.Consumer;
import javax.swing.ButtonModel;
import javax.swing.event.ChangeEvent;
import javax.swing.event.ChangeListener;
import strawbed.station.Act;

/** Tells when a key that is held goes down and up. */
final class Holding implements ChangeListener {
    private final ButtonModel model;
    private final Consumer<Act> acts;
    private boolean down;

    Holding(ButtonModel model, Consumer<Act> acts) {
        this.model = model;
        this.acts = acts;
    }

    @Override
    public void stateChanged(ChangeEvent event) {
        if (model.isPressed() != down) {
            down = model.isPressed();
            acts.accept(new Act.Talk(down));
        }
    }
}
