/**
 * Where corals stand. The inside of the glass and the way the water goes belong to the tank; a coral and a light reading
 * hang on the pair (tank, person) and go with it. Their ids stand on buttons and are never used twice.
 */
export const schema3 = `
ALTER TABLE tank ADD COLUMN length_cm REAL CHECK (length_cm > 0);
ALTER TABLE tank ADD COLUMN width_cm REAL CHECK (width_cm > 0);
ALTER TABLE tank ADD COLUMN height_cm REAL CHECK (height_cm > 0);
ALTER TABLE tank ADD COLUMN flow TEXT;

CREATE TABLE coral (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  person INTEGER NOT NULL,
  tank INTEGER NOT NULL,
  kind TEXT NOT NULL,
  label TEXT,
  x_cm REAL NOT NULL CHECK (x_cm >= 0),
  y_cm REAL NOT NULL CHECK (y_cm >= 0),
  z_cm REAL NOT NULL CHECK (z_cm >= 0),
  rough INTEGER NOT NULL CHECK (rough IN (0, 1)),
  diameter_cm REAL NOT NULL CHECK (diameter_cm > 0),
  origin TEXT NOT NULL,
  since TEXT,
  FOREIGN KEY (tank, person) REFERENCES tank (id, person) ON DELETE CASCADE
) STRICT;
CREATE INDEX coral_tank ON coral (tank);

CREATE TABLE light_point (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  person INTEGER NOT NULL,
  tank INTEGER NOT NULL,
  x_cm REAL NOT NULL CHECK (x_cm >= 0),
  y_cm REAL NOT NULL CHECK (y_cm >= 0),
  z_cm REAL NOT NULL CHECK (z_cm >= 0),
  ppfd REAL NOT NULL CHECK (ppfd >= 0),
  at_ms INTEGER NOT NULL,
  FOREIGN KEY (tank, person) REFERENCES tank (id, person) ON DELETE CASCADE
) STRICT;
CREATE INDEX light_point_tank ON light_point (tank, at_ms);
`;
