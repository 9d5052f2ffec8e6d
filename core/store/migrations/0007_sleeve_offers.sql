-- What makers offer: a sleeve of a belt in a width and at a price. Belts are compared by it before buying.
CREATE TABLE sleeve_offer (
    belt INTEGER NOT NULL REFERENCES belt (id),
    extent INTEGER NOT NULL CHECK (extent > 0),
    cost INTEGER NOT NULL CHECK (cost >= 0),
    delivery_days INTEGER NOT NULL CHECK (delivery_days >= 0),
    PRIMARY KEY (belt, extent)
) STRICT, WITHOUT ROWID
