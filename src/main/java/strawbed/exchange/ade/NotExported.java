package strawbed.exchange.ade;

import strawbed.event.RecordedEvent;

/** An event that is not in the exported document, with the reason. */
public record NotExported(RecordedEvent recorded, WhyNotExported why) {}
