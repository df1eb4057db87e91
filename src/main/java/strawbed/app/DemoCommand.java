package strawbed.app;

import picocli.CommandLine.Command;

@Command(name = "demo")
final class DemoCommand implements Runnable {
    @Override
    public void run() {}
}
