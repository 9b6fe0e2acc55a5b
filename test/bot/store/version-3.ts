import { version2 } from './version-2.ts';

/** A file as the third version wrote it, with one member: never edited, so that every later bot can open it. */
export const version3 = `
${version2}
PRAGMA user_version = 3;
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
UPDATE tank SET length_cm = 118, width_cm = 47.6, height_cm = 46, flow = 'left to right' WHERE id = 9;
INSERT INTO coral VALUES (7, 5, 9, 'torch-coral', 'the old one', 20.5, 10, 0, 0, 12.5, 'unknown', '2025-01-03');
INSERT INTO light_point VALUES (2, 5, 9, 20.5, 10, 0, 120, 1700000400000);
`;
