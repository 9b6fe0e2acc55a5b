/**
 * What members told in threads and posts, for three days: one row a person and place, with what was asked last.
 * A row goes with its person. `told` is the case as JSON; one that no longer fits is removed when it is read.
 */
export const schema6 = `
CREATE TABLE told (
  person INTEGER NOT NULL REFERENCES person (id) ON DELETE CASCADE,
  place TEXT NOT NULL,
  at_ms INTEGER NOT NULL,
  told TEXT NOT NULL CHECK (json_valid(told)),
  asked TEXT,
  PRIMARY KEY (person, place)
) STRICT, WITHOUT ROWID;
CREATE INDEX told_at ON told (at_ms);
`;
