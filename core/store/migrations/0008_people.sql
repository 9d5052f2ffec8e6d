-- Who acts can be asked for a number before a role is taken up, and people leave: their acts keep their name.
-- secret: '' or the salt and the derived key of the person's number, in hex, with a '.' between.
ALTER TABLE person ADD COLUMN secret TEXT NOT NULL DEFAULT ''
-- next
ALTER TABLE person ADD COLUMN gone INTEGER NOT NULL DEFAULT 0 CHECK (gone IN (0, 1))
-- next
-- Roles mean something from now on: somebody has to be an owner.
UPDATE person SET role = 2 WHERE id = (SELECT min(id) FROM person) AND NOT EXISTS (SELECT 1 FROM person WHERE role = 2)
