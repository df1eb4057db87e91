package strawbed.journal.sqlite;

import java.util.Map;

/** The pages of a file, with or without those of its log in their place; numbered from 1. */
final class Pages {
    private final PageFile file;
    private final PageForm form;
    private final Map<Integer, Long> frames;
    private final int count;

    Pages(PageFile file, PageForm form, Map<Integer, Long> frames) {
        this.file = file;
        this.form = form;
        this.frames = Map.copyOf(frames);
        long inFile = (file.length() + form.size() - 1) / form.size();
        int inLog = frames.keySet().stream().mapToInt(number -> number).max().orElse(0);
        this.count = (int) Math.min(Integer.MAX_VALUE - 1, Math.max(inFile, inLog));
    }

    int usable() {
        return form.usable();
    }

    int count() {
        return count;
    }

    /** What there is of a page: fewer bytes, or none, where the file ends or the disk refuses. */
    byte[] page(int number) {
        Long frame = frames.get(number);
        return frame == null
                ? file.bytes((long) (number - 1) * form.size(), form.usable())
                : file.log(frame, form.usable());
    }

    /** Where the page's own header begins: behind the file's on the first. */
    static int begin(int number) {
        return number == 1 ? PageFile.HEADER : 0;
    }
}
