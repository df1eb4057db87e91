package strawbed.print;

import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.print.PrintService;
import javax.print.PrintServiceLookup;
import javax.print.attribute.standard.PrinterState;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The printers of javax.print; on a system with CUPS its program lpstat tells which of them are paused. */
public final class SystemPrinters implements Printers {
    static {
        // Else Java goes by a list some minutes old (OpenJDK), and hands pages to printers that are gone.
        System.setProperty("sun.java2d.print.polling", "false");
    }

    @Override
    public List<Known> all() {
        PrintService[] services = PrintServiceLookup.lookupPrintServices(null, null);
        CupsQueues queues = CupsQueues.now();
        return Arrays.stream(services)
                .map(service ->
                        new Known(service.getName(), trouble(service, queues).map(PrintFault::sentence)))
                .sorted(Comparator.comparing(Known::name))
                .toList();
    }

    @Override
    public void handOver(Path pdf, String printer, String title) {
        PrintService[] services = PrintServiceLookup.lookupPrintServices(null, null);
        PrintService service = Arrays.stream(services)
                .filter(one -> one.getName().equals(printer))
                .findFirst()
                .orElseThrow(() -> gone(printer, services));
        trouble(service, CupsQueues.now()).ifPresent(trouble -> {
            throw new PrintException(trouble, null);
        });
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            PrinterJob job = PrinterJob.getPrinterJob();
            job.setPrintService(service);
            job.setJobName(title);
            job.setPageable(TrueSize.pages(document));
            job.print();
        } catch (PrinterException e) {
            throw refused(printer, e);
        } catch (IOException e) {
            throw new PrintException(
                    PrintFault.of(
                            PrintFault.Kind.PAGE_LOST,
                            "The page " + pdf + " cannot be read: " + e.getMessage()
                                    + ". Make it anew, and drop this job with \"strawbed printer drop\"."),
                    e);
        }
    }

    private static PrintException gone(String printer, PrintService[] services) {
        String sentence = services.length == 0
                ? "This computer knows no printer now, so also not " + printer
                        + ". Start its print service, or set the printer up anew in the system's settings."
                : "The printer " + printer + " is gone; there are: "
                        + Arrays.stream(services)
                                .map(PrintService::getName)
                                .sorted()
                                .collect(Collectors.joining(", "))
                        + ". Set it up again, or choose another with \"strawbed printer use\".";
        return new PrintException(PrintFault.of(PrintFault.Kind.PRINTER_GONE, sentence), null);
    }

    private static Optional<PrintFault> trouble(PrintService service, CupsQueues queues) {
        String name = service.getName();
        if (queues.closed().contains(name)) {
            return Optional.of(PrintFault.of(
                    PrintFault.Kind.CLOSED,
                    "The printer " + name
                            + " takes no jobs. Let it accept them in the system's printer settings (CUPS:"
                            + " cupsaccept)."));
        }
        // CUPS gives none (Java 17), others may.
        boolean isStopped = service.getAttribute(PrinterState.class) == PrinterState.STOPPED;
        if (isStopped || queues.paused().containsKey(name)) {
            String why = queues.paused().getOrDefault(name, "");
            return Optional.of(new PrintFault(
                    PrintFault.Kind.PAUSED,
                    why,
                    "The printer " + name + " is paused" + (why.isEmpty() ? "" : " (" + why + ")")
                            + ". Look at it, then resume it in the system's printer settings (CUPS: cupsenable)."));
        }
        return Optional.empty();
    }

    static PrintException refused(String printer, PrinterException e) {
        Throwable told = e.getMessage() == null && e.getCause() != null ? e.getCause() : e;
        String why = told.getMessage() == null ? told.toString() : told.getMessage();
        if (e.getCause() instanceof IOException cause
                && String.valueOf(cause.getMessage()).contains("lpr\"")) {
            return new PrintException(
                    PrintFault.of(
                            PrintFault.Kind.NO_PROGRAM,
                            "The printer " + printer
                                    + " cannot be reached, as the program lpr does not start, by which Java hands"
                                    + " pages over. Install it: the Debian package is cups-bsd."),
                    e);
        }
        return new PrintException(
                new PrintFault(
                        PrintFault.Kind.REFUSED,
                        why.strip(),
                        "The printer " + printer + " did not take the page: " + why.strip()
                                + ". Look whether it is on and connected."),
                e);
    }
}
