package strawbed.app;

import picocli.CommandLine.Command;

@Command(name = "card")
final class CardCommand implements Runnable {
    @Override
    public void run() {}
}
