/** The units somebody chose for themselves, as JSON, and the locale of their Discord; null where neither is known. */
export const schema8 = `
ALTER TABLE person ADD COLUMN units TEXT CHECK (units IS NULL OR json_valid(units));
ALTER TABLE person ADD COLUMN locale TEXT;
`;
