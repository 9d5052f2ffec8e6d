-- What is to be cut: tickets with their mountings, and with them what the pieces have promised. A mounting
-- keeps what it reserves (trim, belts and their kerf) as one figure, so that the free width of 20,000 pieces
-- is read at once.
CREATE TABLE ticket (
    id INTEGER PRIMARY KEY,
    code TEXT NOT NULL UNIQUE,
    sales_order INTEGER NOT NULL REFERENCES sales_order (id),
    state INTEGER NOT NULL CHECK (state BETWEEN 0 AND 2),
    made_ms INTEGER NOT NULL
) STRICT
-- next
CREATE INDEX ticket_by_state ON ticket (state, made_ms)
-- next
CREATE INDEX ticket_by_order ON ticket (sales_order)
-- next
CREATE TABLE mounting (
    id INTEGER PRIMARY KEY,
    ticket INTEGER NOT NULL REFERENCES ticket (id),
    position INTEGER NOT NULL,
    piece INTEGER NOT NULL REFERENCES piece (id),
    state INTEGER NOT NULL CHECK (state BETWEEN 0 AND 2),
    trim INTEGER NOT NULL CHECK (trim >= 0),
    kerf INTEGER NOT NULL CHECK (kerf >= 0),
    left_over INTEGER NOT NULL CHECK (left_over >= 0),
    rest_kept INTEGER NOT NULL CHECK (rest_kept IN (0, 1)),
    reserved INTEGER NOT NULL CHECK (reserved > 0),
    movement INTEGER REFERENCES movement (id),
    CHECK (state <> 1 OR movement IS NOT NULL)
) STRICT
-- next
CREATE INDEX mounting_by_ticket ON mounting (ticket, position)
-- next
CREATE INDEX mounting_planned ON mounting (piece) WHERE state = 0
-- next
-- No line: for the shelf.
CREATE TABLE mounting_cut (
    mounting INTEGER NOT NULL REFERENCES mounting (id),
    position INTEGER NOT NULL,
    line INTEGER REFERENCES order_line (id) ON DELETE SET NULL,
    extent INTEGER NOT NULL CHECK (extent > 0),
    belts INTEGER NOT NULL CHECK (belts > 0),
    PRIMARY KEY (mounting, position)
) STRICT, WITHOUT ROWID
-- next
CREATE INDEX mounting_cut_by_line ON mounting_cut (line) WHERE line IS NOT NULL
-- next
CREATE TABLE taken_ready (
    ticket INTEGER NOT NULL REFERENCES ticket (id),
    piece INTEGER NOT NULL REFERENCES piece (id),
    line INTEGER NOT NULL REFERENCES order_line (id) ON DELETE CASCADE,
    PRIMARY KEY (ticket, piece)
) STRICT, WITHOUT ROWID
-- next
CREATE INDEX taken_ready_by_piece ON taken_ready (piece)
-- next
CREATE INDEX taken_ready_by_line ON taken_ready (line)
