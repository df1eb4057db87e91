package strawbed.app;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.card.CardContents;
import strawbed.care.DueItem;
import strawbed.care.DueList;
import strawbed.care.Farm;
import strawbed.dialog.Prompt;
import strawbed.event.CalfId;
import strawbed.report.CalfCard;
import strawbed.report.pdf.CardPaper;
import strawbed.report.pdf.PdfCardWriter;
import strawbed.text.CalfNames;
import strawbed.text.DuePhrases;
import strawbed.text.Messages;
import strawbed.text.Prompts;

/** Turns prompts into sentences, and writes cards. */
final class Answers {
    private final Messages messages;
    private final Settings settings;
    private final Prompts prompts;
    private final DuePhrases duePhrases;
    private final CalfNames names;

    Answers(Messages messages, Settings settings) {
        this.messages = messages;
        this.settings = settings;
        this.prompts = new Prompts(messages, settings.zone(), settings.clock());
        this.duePhrases = new DuePhrases(messages, settings.zone());
        this.names = new CalfNames(messages);
    }

    /** The sentence to show. */
    String shown(Prompt prompt, Herd herd) {
        return told(prompt, herd, prompts.shown(prompt));
    }

    /** The sentence to speak. */
    String spoken(Prompt prompt, Herd herd) {
        return told(prompt, herd, prompts.spoken(prompt));
    }

    /** What is shown and what is spoken of one prompt. */
    record Said(String shown, String spoken) {}

    /** As it is shown and spoken; a card is written, and sent to the printer where one is chosen, once for both. */
    Said said(Prompt prompt, Herd herd, CardSender sender) {
        if (!(prompt instanceof Prompt.PrintCard wanted)) {
            return new Said(shown(prompt, herd), spoken(prompt, herd));
        }
        CalfRecord calf = calf(wanted.calf(), herd);
        Path file;
        try {
            file = writeCard(calf, herd, settings.data().resolve("cards"), CardPaper.FOUR_BY_SIX_INCH);
        } catch (BadInputException failure) {
            // Listening goes on without a card.
            return new Said(String.valueOf(failure.getMessage()), String.valueOf(failure.getMessage()));
        }
        return sender.send(file, calf, herd).orElseGet(() -> {
            String written = "Card written: " + file;
            return new Said(written, written);
        });
    }

    private String told(Prompt prompt, Herd herd, String otherwise) {
        Instant now = settings.clock().instant();
        if (prompt instanceof Prompt.TellDue) {
            return duePhrases.due(DueList.open(herd, now), herd, now);
        }
        if (prompt instanceof Prompt.TellCalf asked) {
            CalfRecord calf = calf(asked.calf(), herd);
            return duePhrases.calf(calf, DueList.of(calf, Farm.of(herd), now), now);
        }
        if (prompt instanceof Prompt.PrintCard wanted) {
            CalfRecord calf = calf(wanted.calf(), herd);
            return "Card written: "
                    + writeCard(calf, herd, settings.data().resolve("cards"), CardPaper.FOUR_BY_SIX_INCH);
        }
        return otherwise;
    }

    /** Writes the card of a calf into a folder, under a clear name. */
    Path writeCard(CalfRecord calf, Herd herd, Path folder, CardPaper paper) {
        String name = names.of(calf, herd).replace(' ', '-');
        String size = paper == CardPaper.A6 ? "-A6" : "";
        return writeCardTo(calf, herd, folder.resolve("card-" + name + size + ".pdf"), paper);
    }

    /** Writes the card of a calf to a file. */
    Path writeCardTo(CalfRecord calf, Herd herd, Path file, CardPaper paper) {
        Instant now = settings.clock().instant();
        CalfCard card = CardContents.of(calf, herd, now, messages, settings.zone(), "");
        PrintedFile.write(file, new PdfCardWriter().write(card, paper, now), "The card");
        return file;
    }

    /** The due list as lines: what, for which calf, when. */
    List<String> due(Herd herd, Instant now) {
        return DueList.open(herd, now).stream()
                .filter(item -> item.state().isOpen())
                .map(item -> line(item, herd, now))
                .toList();
    }

    private String line(DueItem item, Herd herd, Instant now) {
        return String.format(
                Locale.ROOT,
                "  %-22s %-28s %s",
                names.of(calf(item.calf(), herd), herd),
                duePhrases.what(item),
                duePhrases.when(item, now));
    }

    private static CalfRecord calf(CalfId id, Herd herd) {
        return herd.calf(id).orElseThrow(() -> new AssertionError("no calf " + id + " in the herd"));
    }
}
