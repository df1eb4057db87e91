-- Whether a sound is named by any fact, without reading them all: at each start the folder of sounds is held against the
-- record. And some indexes of V4 once more, with the day or the calf in them, so that what is asked of ten years is found
-- without looking at the facts. As all indexes, they can be dropped and made again.

CREATE INDEX event_by_sound ON event (sound) WHERE sound IS NOT NULL;

CREATE INDEX open_statement_by_sound ON open_statement (sound);

DROP INDEX event_by_calf;

CREATE INDEX event_by_calf ON event (calf, substr(recorded_at, 1, 10));

DROP INDEX event_by_number;

CREATE INDEX event_by_number ON event (ltrim(trim(json_extract(json, '$.number'), char(9, 10, 11, 12, 13, 28, 29, 30, 31, 32, 5760, 8192, 8193, 8194, 8195, 8196, 8197, 8198, 8200, 8201, 8202, 8232, 8233, 8287, 12288)), '0'), calf)
WHERE type IN ('CalfOpened', 'CalfNumbered', 'EarTagFitted');

DROP INDEX event_by_dam;

CREATE INDEX event_by_dam ON event (ltrim(trim(json_extract(json, '$.dam'), char(9, 10, 11, 12, 13, 28, 29, 30, 31, 32, 5760, 8192, 8193, 8194, 8195, 8196, 8197, 8198, 8200, 8201, 8202, 8232, 8233, 8287, 12288)), '0'), calf)
WHERE type IN ('CalfOpened', 'DamNoted');
