-- An inspection that was booked by mistake is taken back: it stays in the book as that, with who did it. And a piece
-- is found by more words (days, body, orders), so the index is filled anew: it is where a belt has no words.
ALTER TABLE inspection ADD COLUMN taken_back_ms INTEGER
-- next
ALTER TABLE inspection ADD COLUMN taken_back_by INTEGER REFERENCES person (id)
-- next
CREATE INDEX mounting_of_piece ON mounting (piece)
-- next
UPDATE belt SET words = ''
