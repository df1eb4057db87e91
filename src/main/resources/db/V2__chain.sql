-- Chains each fact to the one before, so that a change made behind the program's back shows.
-- Run by ChainMigration, which also gives the facts of an older record their links; so not in the folder of scripts.
-- A table beside event and not columns in it: what is in event stays as it was written, its triggers never pause,
-- and an older reader of event still reads.

CREATE TABLE station (
    only_one    INTEGER PRIMARY KEY CHECK (only_one = 1),
    id          TEXT NOT NULL
) STRICT;

CREATE TABLE event_chain (
    sequence    INTEGER PRIMARY KEY REFERENCES event (sequence),
    station     TEXT NOT NULL,
    previous    TEXT CHECK (length(previous) = 64),
    hash        TEXT NOT NULL CHECK (length(hash) = 64)
) STRICT;

CREATE TRIGGER station_is_never_changed BEFORE UPDATE ON station
BEGIN
    SELECT RAISE(ABORT, 'the record only grows: its station is never changed');
END;

CREATE TRIGGER station_is_never_removed BEFORE DELETE ON station
BEGIN
    SELECT RAISE(ABORT, 'the record only grows: its station is never removed');
END;

CREATE TRIGGER station_is_never_replaced BEFORE INSERT ON station
WHEN EXISTS (SELECT 1 FROM station)
BEGIN
    SELECT RAISE(ABORT, 'the record only grows: its station is never replaced');
END;

CREATE TRIGGER event_chain_is_never_changed BEFORE UPDATE ON event_chain
BEGIN
    SELECT RAISE(ABORT, 'the record only grows: a link of the chain is never changed');
END;

CREATE TRIGGER event_chain_is_never_removed BEFORE DELETE ON event_chain
BEGIN
    SELECT RAISE(ABORT, 'the record only grows: a link of the chain is never removed');
END;

CREATE TRIGGER event_chain_is_never_replaced BEFORE INSERT ON event_chain
WHEN EXISTS (SELECT 1 FROM event_chain WHERE sequence = NEW.sequence)
BEGIN
    SELECT RAISE(ABORT, 'the record only grows: a link of the chain is never replaced');
END;
