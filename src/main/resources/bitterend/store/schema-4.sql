-- What was asked of the rope of a piece and how it is measured; measured is empty where it was not kept.
ALTER TABLE ordered ADD COLUMN certificate TEXT NOT NULL DEFAULT '';
ALTER TABLE ordered ADD COLUMN own_rope INTEGER NOT NULL DEFAULT 0 CHECK (own_rope IN (0, 1));
ALTER TABLE ordered ADD COLUMN measured TEXT NOT NULL DEFAULT '';
-- The length of a reel as it was typed; empty where it was worked out.
ALTER TABLE movement ADD COLUMN length_text TEXT NOT NULL DEFAULT '';
