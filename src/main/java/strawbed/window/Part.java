package strawbed.window;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.List;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JPanel;

/** A painted part of the screen that tells a screen reader what it shows. */
abstract class Part extends JPanel {
    private static final long serialVersionUID = 1;

    final transient Paint paint;

    Part(Paint paint, String spoken) {
        super(null);
        this.paint = paint;
        setOpaque(false);
        getAccessibleContext().setAccessibleName(spoken);
    }

    /** Paints it. */
    abstract void draw(Graphics2D g);

    /** Whether all that it shows has room. */
    boolean fits() {
        return true;
    }

    /** How high the capitals are, in dots, of what is to be read from two metres. */
    List<Double> farCapitals() {
        return List.of();
    }

    @Override
    protected final void paintComponent(Graphics graphics) {
        Graphics2D g = Brush.smooth(graphics);
        draw(g);
        g.dispose();
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJPanel() {
                private static final long serialVersionUID = 1;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.LABEL;
                }
            };
        }
        return accessibleContext;
    }
}
