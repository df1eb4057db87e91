package strawbed.app;

import picocli.CommandLine.Command;

@Command(name = "listen")
final class ListenCommand implements Runnable {
    @Override
    public void run() {}
}
