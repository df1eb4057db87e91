-- The record. All of it only grows: triggers refuse to change or remove a row.
-- Instants are ISO 8601 in UTC, durations ISO 8601, lists of words JSON arrays.

CREATE TABLE event (
    sequence    INTEGER PRIMARY KEY CHECK (sequence > 0),
    id          TEXT NOT NULL UNIQUE,
    recorded_at TEXT NOT NULL,
    occurred_at TEXT NOT NULL,
    zone        TEXT NOT NULL,
    calf        TEXT,
    type        TEXT NOT NULL,
    version     INTEGER NOT NULL CHECK (version > 0),
    json        TEXT NOT NULL CHECK (json_valid(json)),
    source      TEXT NOT NULL,
    words       TEXT CHECK (json_valid(words)),
    verdict     TEXT,
    grammar     TEXT,
    model       TEXT,
    sound       TEXT
) STRICT;

CREATE TABLE open_statement (
    sequence    INTEGER PRIMARY KEY CHECK (sequence > 0),
    id          TEXT NOT NULL UNIQUE,
    recorded_at TEXT NOT NULL,
    began_at    TEXT NOT NULL,
    length      TEXT NOT NULL,
    verdict     TEXT NOT NULL,
    words       TEXT NOT NULL CHECK (json_valid(words)),
    reading     TEXT,
    sound       TEXT NOT NULL
) STRICT;

CREATE TABLE statement_settled (
    statement   TEXT NOT NULL PRIMARY KEY REFERENCES open_statement (id),
    settled_at  TEXT NOT NULL,
    how         TEXT NOT NULL
) STRICT;

CREATE TRIGGER event_is_never_changed BEFORE UPDATE ON event
BEGIN
    SELECT RAISE(ABORT, 'the record only grows: an event is never changed');
END;

CREATE TRIGGER event_is_never_removed BEFORE DELETE ON event
BEGIN
    SELECT RAISE(ABORT, 'the record only grows: an event is never removed');
END;

CREATE TRIGGER open_statement_is_never_changed BEFORE UPDATE ON open_statement
BEGIN
    SELECT RAISE(ABORT, 'the record only grows: a statement is never changed');
END;

CREATE TRIGGER open_statement_is_never_removed BEFORE DELETE ON open_statement
BEGIN
    SELECT RAISE(ABORT, 'the record only grows: a statement is never removed');
END;

CREATE TRIGGER statement_settled_is_never_changed BEFORE UPDATE ON statement_settled
BEGIN
    SELECT RAISE(ABORT, 'the record only grows: how a statement ended is never changed');
END;

CREATE TRIGGER statement_settled_is_never_removed BEFORE DELETE ON statement_settled
BEGIN
    SELECT RAISE(ABORT, 'the record only grows: how a statement ended is never removed');
END;

-- INSERT OR REPLACE removes a row without asking the triggers above.

CREATE TRIGGER event_is_never_replaced BEFORE INSERT ON event
WHEN EXISTS (SELECT 1 FROM event WHERE sequence = NEW.sequence OR id = NEW.id)
BEGIN
    SELECT RAISE(ABORT, 'the record only grows: an event is never replaced');
END;

CREATE TRIGGER open_statement_is_never_replaced BEFORE INSERT ON open_statement
WHEN EXISTS (SELECT 1 FROM open_statement WHERE sequence = NEW.sequence OR id = NEW.id)
BEGIN
    SELECT RAISE(ABORT, 'the record only grows: a statement is never replaced');
END;

CREATE TRIGGER statement_settled_is_never_replaced BEFORE INSERT ON statement_settled
WHEN EXISTS (SELECT 1 FROM statement_settled WHERE statement = NEW.statement)
BEGIN
    SELECT RAISE(ABORT, 'the record only grows: how a statement ended is never replaced');
END;
