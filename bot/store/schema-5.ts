/** Borders of readings that a member is told of when a reading is logged beyond them. A row goes with its tank. */
export const schema5 = `
CREATE TABLE watch (
  person INTEGER NOT NULL,
  tank INTEGER NOT NULL,
  parameter INTEGER NOT NULL,
  over REAL,
  under REAL,
  PRIMARY KEY (tank, parameter),
  CHECK (over IS NOT NULL OR under IS NOT NULL),
  FOREIGN KEY (tank, person) REFERENCES tank (id, person) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;
`;
