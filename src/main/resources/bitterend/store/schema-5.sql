-- How much of a reel is spoken for, whom for and until when; empty where nothing is.
ALTER TABLE movement ADD COLUMN held TEXT NOT NULL DEFAULT '';
