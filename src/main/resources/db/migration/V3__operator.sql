-- Who worked when a fact was told, where somebody had said so. Facts from before have nobody.

ALTER TABLE event ADD COLUMN operator TEXT;
