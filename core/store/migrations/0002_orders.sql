-- What customers want: orders with their lines. A line keeps the price that the customer was told, amount by
-- amount, since the shop's price rules change. Moments are milliseconds from 1970-01-01 UTC.
CREATE TABLE customer (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL CHECK (name <> ''),
    phone TEXT NOT NULL,
    UNIQUE (name, phone)
) STRICT
-- next
CREATE TABLE sales_order (
    id INTEGER PRIMARY KEY,
    code TEXT NOT NULL UNIQUE,
    state INTEGER NOT NULL CHECK (state BETWEEN 0 AND 5),
    customer INTEGER REFERENCES customer (id),
    person INTEGER NOT NULL REFERENCES person (id),
    made_ms INTEGER NOT NULL,
    due_ms INTEGER,
    note TEXT NOT NULL
) STRICT
-- next
CREATE INDEX order_by_state ON sales_order (state, made_ms)
-- next
-- The unit stands in the line too, so that ribs can't be ordered of a toothed belt.
CREATE TABLE order_line (
    id INTEGER PRIMARY KEY,
    sales_order INTEGER NOT NULL REFERENCES sales_order (id),
    position INTEGER NOT NULL,
    belt INTEGER NOT NULL,
    unit INTEGER NOT NULL,
    extent INTEGER NOT NULL CHECK (extent > 0),
    quantity INTEGER NOT NULL CHECK (quantity > 0),
    said TEXT NOT NULL,
    price_width INTEGER NOT NULL,
    price_cutting INTEGER NOT NULL,
    price_discount INTEGER NOT NULL,
    price_minimum INTEGER NOT NULL,
    price_net INTEGER NOT NULL,
    price_tax INTEGER NOT NULL,
    price_total INTEGER NOT NULL,
    cut INTEGER NOT NULL CHECK (cut >= 0),
    cancelled INTEGER NOT NULL CHECK (cancelled >= 0),
    CHECK (cut + cancelled <= quantity),
    FOREIGN KEY (belt, unit) REFERENCES belt (id, unit)
) STRICT
-- next
CREATE INDEX line_by_order ON order_line (sales_order, position)
-- next
CREATE INDEX line_by_belt ON order_line (belt)
