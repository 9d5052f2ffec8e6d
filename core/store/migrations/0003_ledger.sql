-- The width ledger (docs/ledger.md): every movement is postings that sum to zero in width and in money.
-- Append-only: what was written stays; a mistake is undone by a counter-entry that names what it undoes.
CREATE TABLE movement (
    id INTEGER PRIMARY KEY,
    act INTEGER NOT NULL CHECK (act BETWEEN 0 AND 7),
    at_ms INTEGER NOT NULL,
    person INTEGER NOT NULL REFERENCES person (id),
    belt INTEGER NOT NULL REFERENCES belt (id),
    note TEXT NOT NULL,
    undoes INTEGER UNIQUE REFERENCES movement (id),
    CHECK ((act = 7) = (undoes IS NOT NULL))
) STRICT
-- next
CREATE INDEX movement_by_time ON movement (at_ms)
-- next
-- account: 0 bought, 1 found, 2 rack, 3 ready, 4 sold, 5 trim, 6 kerf, 7 end, 8 scrap, 9 difference
-- reason: 0 stub, 1 miscut, 2 damaged, 3 aged
CREATE TABLE posting (
    movement INTEGER NOT NULL REFERENCES movement (id),
    position INTEGER NOT NULL,
    account INTEGER NOT NULL CHECK (account BETWEEN 0 AND 9),
    piece INTEGER REFERENCES piece (id),
    line INTEGER REFERENCES order_line (id),
    amount INTEGER NOT NULL CHECK (amount BETWEEN -1000000000000 AND 1000000000000),
    cost INTEGER NOT NULL CHECK (cost BETWEEN -1000000000000 AND 1000000000000),
    reason INTEGER CHECK (reason BETWEEN 0 AND 3),
    PRIMARY KEY (movement, position),
    CHECK (piece IS NOT NULL OR account NOT IN (2, 3)),
    CHECK (line IS NOT NULL OR account <> 4),
    CHECK ((account = 8) = (reason IS NOT NULL))
) STRICT, WITHOUT ROWID
-- next
CREATE INDEX posting_by_piece ON posting (piece) WHERE piece IS NOT NULL
-- next
CREATE INDEX posting_by_line ON posting (line) WHERE line IS NOT NULL
-- next
CREATE TRIGGER movement_stays BEFORE UPDATE ON movement
BEGIN
    SELECT RAISE(ABORT, 'a movement is never changed');
END
-- next
CREATE TRIGGER movement_is_kept BEFORE DELETE ON movement
BEGIN
    SELECT RAISE(ABORT, 'a movement is never deleted');
END
-- next
CREATE TRIGGER posting_stays BEFORE UPDATE ON posting
BEGIN
    SELECT RAISE(ABORT, 'a posting is never changed');
END
-- next
CREATE TRIGGER posting_is_kept BEFORE DELETE ON posting
BEGIN
    SELECT RAISE(ABORT, 'a posting is never deleted');
END
