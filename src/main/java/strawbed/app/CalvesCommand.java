package strawbed.app;

import picocli.CommandLine.Command;

@Command(name = "calves")
final class CalvesCommand implements Runnable {
    @Override
    public void run() {}
}
