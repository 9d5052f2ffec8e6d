-- A remnant that is not worth its place is cut into ready belts: such a ticket is for the shelf, not for an order.
ALTER TABLE ticket ADD COLUMN for_order INTEGER REFERENCES sales_order (id)
-- next
UPDATE ticket SET for_order = sales_order
-- next
DROP INDEX ticket_by_order
-- next
ALTER TABLE ticket DROP COLUMN sales_order
-- next
ALTER TABLE ticket RENAME COLUMN for_order TO sales_order
-- next
CREATE INDEX ticket_by_order ON ticket (sales_order)
