package strawbed.window;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import strawbed.station.Screen;
import strawbed.station.StationPages;
import strawbed.text.Language;

/** Pictures of the station's pages side by side, on a 10.1 inch screen of 1280 by 800. */
public final class StationPictures {
    private static final int WIDTH = 1280;
    private static final int HEIGHT = 800;
    private static final double DOTS_PER_INCH = 149;
    private static final int SMALL_WIDTH = 640;
    private static final int SMALL_HEIGHT = 400;
    private static final int GAP = 8;

    private static final List<String> FIRST = List.of("now", "read back", "entering groups", "OneCalf 0");
    private static final List<String> ALL = List.of(
            "now",
            "read back",
            "asked",
            "not whole",
            "cautions",
            "sign NO_SOUND",
            "sign HOLD_TO_TALK",
            "sign PAUSED",
            "WhoseFacts",
            "entering groups",
            "entering FED VOLUME",
            "entering FED VOLUME pad typed",
            "Calves",
            "OneCalf 0",
            "OneCalf 1",
            "OpenStatements",
            "OneOpen",
            "ThrowAway",
            "More",
            "Prints",
            "OnePrint 31",
            "Operators",
            "Setup",
            "Pedal",
            "Ruler",
            "End");

    private StationPictures() {}

    /** Writes station.png, station-pages.png and station-paginas.png into a folder. */
    public static void write(Path folder) throws IOException {
        sheet(Language.ENGLISH, FIRST, 2, folder.resolve("station.png"));
        sheet(Language.ENGLISH, ALL, 4, folder.resolve("station-pages.png"));
        sheet(Language.SPANISH, ALL, 4, folder.resolve("station-paginas.png"));
    }

    private static void sheet(Language language, List<String> names, int columns, Path file) throws IOException {
        Map<String, Screen> pages = StationPages.all(language);
        List<Image> pictures = new ArrayList<>();
        boolean dark = false;
        for (String name : names) {
            Screen screen = pages.get(name);
            if (screen == null) {
                throw new IllegalStateException("no page is called " + name + ", only " + pages.keySet());
            }
            pictures.add(
                    picture(screen, dark).getScaledInstance(SMALL_WIDTH, SMALL_HEIGHT, Image.SCALE_AREA_AVERAGING));
            dark = !dark && columns > 2;
        }
        int rows = (pictures.size() + columns - 1) / columns;
        BufferedImage sheet = new BufferedImage(
                columns * (SMALL_WIDTH + GAP) + GAP, rows * (SMALL_HEIGHT + GAP) + GAP, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = sheet.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, sheet.getWidth(), sheet.getHeight());
        for (int i = 0; i < pictures.size(); i++) {
            graphics.drawImage(
                    pictures.get(i),
                    GAP + (i % columns) * (SMALL_WIDTH + GAP),
                    GAP + (i / columns) * (SMALL_HEIGHT + GAP),
                    null);
        }
        graphics.dispose();
        ImageIO.write(sheet, "png", file.toFile());
    }

    private static BufferedImage picture(Screen screen, boolean dark) {
        ScreenPanel panel = new ScreenPanel(act -> {}, DOTS_PER_INCH);
        panel.setSize(WIDTH, HEIGHT);
        panel.dark(dark);
        panel.show(screen);
        panel.doLayout();
        panel.level(-22);
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        panel.paint(graphics);
        graphics.dispose();
        return image;
    }
}
