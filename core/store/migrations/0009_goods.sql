-- What the rack needs to be kept true: places as a tree, what is expected and what came, whose code stands on
-- the maker's label, where each piece has been, who looked at an old one, and words to find a piece by.
-- level: 0 room, 1 bay, 2 shelf, 3 bin. A place with a belt is fixed for it, one without is free.
ALTER TABLE place ADD COLUMN parent INTEGER REFERENCES place (id)
-- next
ALTER TABLE place ADD COLUMN level INTEGER NOT NULL DEFAULT 3 CHECK (level BETWEEN 0 AND 3)
-- next
ALTER TABLE place ADD COLUMN belt INTEGER REFERENCES belt (id)
-- next
-- Within easy reach: where narrow remnants go first.
ALTER TABLE place ADD COLUMN front INTEGER NOT NULL DEFAULT 0 CHECK (front IN (0, 1))
-- next
CREATE INDEX piece_at_place ON piece (place) WHERE extent > 0
-- next
-- The code on a supplier's own label, tied to a belt (and to the width of its sleeves, if always the same).
CREATE TABLE supplier_code (
    code TEXT PRIMARY KEY CHECK (code <> ''),
    belt INTEGER NOT NULL REFERENCES belt (id),
    extent INTEGER CHECK (extent > 0),
    person INTEGER NOT NULL REFERENCES person (id),
    at_ms INTEGER NOT NULL
) STRICT
-- next
CREATE TABLE expected_delivery (
    id INTEGER PRIMARY KEY,
    supplier TEXT NOT NULL,
    reference TEXT NOT NULL,
    due_day INTEGER,
    made_ms INTEGER NOT NULL,
    person INTEGER NOT NULL REFERENCES person (id),
    closed INTEGER NOT NULL DEFAULT 0 CHECK (closed IN (0, 1))
) STRICT
-- next
CREATE TABLE expected_line (
    expected INTEGER NOT NULL REFERENCES expected_delivery (id),
    position INTEGER NOT NULL,
    belt INTEGER NOT NULL REFERENCES belt (id),
    extent INTEGER NOT NULL CHECK (extent > 0),
    sleeves INTEGER NOT NULL CHECK (sleeves > 0),
    cost_each INTEGER NOT NULL CHECK (cost_each >= 0),
    arrived INTEGER NOT NULL DEFAULT 0 CHECK (arrived >= 0),
    PRIMARY KEY (expected, position)
) STRICT, WITHOUT ROWID
-- next
-- Freight is in the cost of the pieces already: here it is kept to be told.
CREATE TABLE delivery (
    id INTEGER PRIMARY KEY,
    supplier TEXT NOT NULL,
    reference TEXT NOT NULL,
    at_ms INTEGER NOT NULL,
    person INTEGER NOT NULL REFERENCES person (id),
    freight INTEGER NOT NULL CHECK (freight >= 0),
    expected INTEGER REFERENCES expected_delivery (id)
) STRICT
-- next
-- labelled: what the maker's label says, where the tape said something else.
CREATE TABLE delivery_piece (
    piece INTEGER PRIMARY KEY REFERENCES piece (id),
    delivery INTEGER NOT NULL REFERENCES delivery (id),
    freight INTEGER NOT NULL CHECK (freight >= 0),
    labelled INTEGER CHECK (labelled > 0)
) STRICT
-- next
CREATE INDEX piece_of_delivery ON delivery_piece (delivery)
-- next
CREATE TABLE relocation (
    id INTEGER PRIMARY KEY,
    piece INTEGER NOT NULL REFERENCES piece (id),
    at_ms INTEGER NOT NULL,
    person INTEGER NOT NULL REFERENCES person (id),
    from_place INTEGER REFERENCES place (id),
    to_place INTEGER REFERENCES place (id)
) STRICT
-- next
CREATE INDEX relocation_by_piece ON relocation (piece)
-- next
-- An aged piece was looked at: sound and to be used until a later day, or not.
CREATE TABLE inspection (
    id INTEGER PRIMARY KEY,
    piece INTEGER NOT NULL REFERENCES piece (id),
    at_ms INTEGER NOT NULL,
    person INTEGER NOT NULL REFERENCES person (id),
    until_day INTEGER,
    note TEXT NOT NULL
) STRICT
-- next
CREATE INDEX inspection_by_piece ON inspection (piece)
-- next
-- What was thrown away, on the scales of the recycling bin.
CREATE TABLE scrap_weight (
    movement INTEGER PRIMARY KEY REFERENCES movement (id),
    grams INTEGER NOT NULL CHECK (grams > 0)
) STRICT
-- next
-- What a belt is called, in every spelling that is looked for; empty until the program has put it in.
ALTER TABLE belt ADD COLUMN words TEXT NOT NULL DEFAULT ''
-- next
-- The words of every piece on the rack, kept by the program (core/store/search). Full-text search is SQLite's own;
-- another database has its own index instead of this table, and the same words in it.
CREATE VIRTUAL TABLE rack_text USING fts5 (words, prefix = '1 2 3', tokenize = 'unicode61 remove_diacritics 2')
