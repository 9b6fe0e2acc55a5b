/** The languages a message is told apart in; English first, the one that is read. */
export const tongues = [
  'english',
  'danish',
  'dutch',
  'french',
  'german',
  'italian',
  'polish',
  'portuguese',
  'spanish',
] as const;

export type Tongue = (typeof tongues)[number];

/** A language that is recognised and not read. */
export type ForeignTongue = Exclude<Tongue, 'english'>;

/** A message that is not read: in one of those languages, or in `other`, letters that are not Latin. */
export type Unread = ForeignTongue | 'other';

/** Sentences of each language, as they are written. */
export type TongueSentences = Readonly<Record<Tongue, readonly string[]>>;
