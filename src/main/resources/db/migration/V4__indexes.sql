-- Ways into a big record. SQLite keeps all of them itself out of the table of facts: each can be dropped and made
-- again, and none says anything that the facts do not.
--
-- What is searched for is written the same way in EventParts, or SQLite does not see that an index fits. A number is
-- compared without white space around it and zeros in front, as strawbed.calf.Numbers does.

CREATE INDEX event_by_calf ON event (calf);

CREATE INDEX event_by_day ON event (substr(recorded_at, 1, 10));

CREATE INDEX event_by_withdrawn ON event (json_extract(json, '$.event')) WHERE type = 'EventWithdrawn';

CREATE INDEX event_by_number ON event (ltrim(trim(json_extract(json, '$.number'), char(9, 10, 11, 12, 13, 28, 29, 30, 31, 32, 5760, 8192, 8193, 8194, 8195, 8196, 8197, 8198, 8200, 8201, 8202, 8232, 8233, 8287, 12288)), '0'))
WHERE type IN ('CalfOpened', 'CalfNumbered', 'EarTagFitted');

CREATE INDEX event_by_dam ON event (ltrim(trim(json_extract(json, '$.dam'), char(9, 10, 11, 12, 13, 28, 29, 30, 31, 32, 5760, 8192, 8193, 8194, 8195, 8196, 8197, 8198, 8200, 8201, 8202, 8232, 8233, 8287, 12288)), '0'))
WHERE type IN ('CalfOpened', 'DamNoted');

CREATE INDEX event_by_twin ON event (ltrim(trim(json_extract(json, '$.of'), char(9, 10, 11, 12, 13, 28, 29, 30, 31, 32, 5760, 8192, 8193, 8194, 8195, 8196, 8197, 8198, 8200, 8201, 8202, 8232, 8233, 8287, 12288)), '0'))
WHERE type = 'TwinNoted';

CREATE INDEX event_by_batch ON event (json_extract(json, '$.batch'))
WHERE type IN ('ColostrumSourceNoted', 'ColostrumStored');

CREATE INDEX event_of_barn ON event (type, substr(occurred_at, 1, 10)) WHERE calf IS NULL;
