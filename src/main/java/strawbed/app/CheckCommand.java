package strawbed.app;

import picocli.CommandLine.Command;

@Command(name = "check")
final class CheckCommand implements Runnable {
    @Override
    public void run() {}
}
