-- Counting: what people saw on the rack, and how each difference was settled. What was seen and what was settled
-- stays as it was written; a settlement is only countered, by one that names it.
--
-- A place is kept by the name that it had then. A scan keeps the width that the book had at that very moment and
-- the last movement before it, so that sales go on while people count.
CREATE TABLE count_session (
    id INTEGER PRIMARY KEY,
    place TEXT NOT NULL,
    person INTEGER NOT NULL REFERENCES person (id),
    started_ms INTEGER NOT NULL,
    closed_ms INTEGER
) STRICT
-- next
-- One open count a place: two people count in two places.
CREATE UNIQUE INDEX count_open ON count_session (place) WHERE closed_ms IS NULL
-- next
-- What the book had at the place when the count began.
CREATE TABLE count_expected (
    count_session INTEGER NOT NULL REFERENCES count_session (id),
    piece INTEGER NOT NULL REFERENCES piece (id),
    PRIMARY KEY (count_session, piece)
) STRICT, WITHOUT ROWID
-- next
-- What nobody had seen when the count was closed.
CREATE TABLE count_missing (
    count_session INTEGER NOT NULL REFERENCES count_session (id),
    piece INTEGER NOT NULL REFERENCES piece (id),
    PRIMARY KEY (count_session, piece)
) STRICT, WITHOUT ROWID
-- next
CREATE INDEX count_missing_piece ON count_missing (piece)
-- next
-- method: 0 calliper, 1 tape, 2 by eye. No piece: a find that no label names; its book is 0.
CREATE TABLE count_scan (
    id INTEGER PRIMARY KEY,
    count_session INTEGER NOT NULL REFERENCES count_session (id),
    at_ms INTEGER NOT NULL,
    person INTEGER NOT NULL REFERENCES person (id),
    piece INTEGER REFERENCES piece (id),
    belt INTEGER NOT NULL REFERENCES belt (id),
    book INTEGER NOT NULL CHECK (book >= 0),
    measured INTEGER NOT NULL CHECK (measured >= 0),
    method INTEGER NOT NULL CHECK (method BETWEEN 0 AND 2),
    after_movement INTEGER REFERENCES movement (id),
    place_was TEXT NOT NULL,
    remark TEXT NOT NULL,
    CHECK (piece IS NOT NULL OR (book = 0 AND measured > 0))
) STRICT
-- next
CREATE INDEX count_scan_of_count ON count_scan (count_session)
-- next
CREATE INDEX count_scan_of_piece ON count_scan (piece) WHERE piece IS NOT NULL
-- next
CREATE INDEX count_scan_differs ON count_scan (id) WHERE piece IS NULL OR measured <> book
-- next
-- A settlement is of a scan, or of a piece that was missing in a count. `explanation` is the value of the enumeration
-- in counts.h; no movement: nothing had to be booked.
CREATE TABLE count_settlement (
    id INTEGER PRIMARY KEY,
    count_session INTEGER NOT NULL REFERENCES count_session (id),
    scan INTEGER REFERENCES count_scan (id),
    piece INTEGER REFERENCES piece (id),
    explanation INTEGER NOT NULL CHECK (explanation BETWEEN 0 AND 20),
    movement INTEGER REFERENCES movement (id),
    person INTEGER NOT NULL REFERENCES person (id),
    at_ms INTEGER NOT NULL,
    approved INTEGER REFERENCES person (id),
    undoes INTEGER UNIQUE REFERENCES count_settlement (id),
    CHECK (scan IS NOT NULL OR piece IS NOT NULL)
) STRICT
-- next
CREATE INDEX count_settlement_of_scan ON count_settlement (scan) WHERE scan IS NOT NULL
-- next
CREATE INDEX count_settlement_of_piece ON count_settlement (piece) WHERE piece IS NOT NULL
-- next
CREATE INDEX count_settlement_of_movement ON count_settlement (movement) WHERE movement IS NOT NULL
-- next
CREATE TRIGGER count_session_stays BEFORE UPDATE ON count_session
WHEN OLD.closed_ms IS NOT NULL OR NEW.closed_ms IS NULL OR OLD.place <> NEW.place OR OLD.person <> NEW.person
    OR OLD.started_ms <> NEW.started_ms
BEGIN
    SELECT RAISE(ABORT, 'a count is closed once and else never changed');
END
-- next
CREATE TRIGGER count_session_is_kept BEFORE DELETE ON count_session
BEGIN
    SELECT RAISE(ABORT, 'a count is never deleted');
END
-- next
CREATE TRIGGER count_scan_stays BEFORE UPDATE ON count_scan
BEGIN
    SELECT RAISE(ABORT, 'what was seen is never changed');
END
-- next
CREATE TRIGGER count_scan_is_kept BEFORE DELETE ON count_scan
BEGIN
    SELECT RAISE(ABORT, 'what was seen is never deleted');
END
-- next
CREATE TRIGGER count_settlement_stays BEFORE UPDATE ON count_settlement
BEGIN
    SELECT RAISE(ABORT, 'a settlement is never changed');
END
-- next
CREATE TRIGGER count_settlement_is_kept BEFORE DELETE ON count_settlement
BEGIN
    SELECT RAISE(ABORT, 'a settlement is never deleted');
END
