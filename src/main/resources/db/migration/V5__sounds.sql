-- Whether a sound is named by any fact, without reading them all: at each start the folder of sounds is held against the
-- record. As all indexes, it can be dropped and made again.

CREATE INDEX event_by_sound ON event (sound) WHERE sound IS NOT NULL;

CREATE INDEX open_statement_by_sound ON open_statement (sound);
