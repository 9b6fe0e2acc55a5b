import { framesOf, type Frame } from './frame.ts';
import type { Reading } from './reading.ts';
import { saidAs, type Said } from './said.ts';
import type { SlotName, Slots } from './slots.ts';
import { ofNames, partNames } from './parts.ts';

/** A number whose part hangs in the balance, with the two it may play; `at` counts the numbers of the message. */
export interface Unsure {
  readonly at: number;
  readonly text: string;
  readonly choices: readonly [Choice, Choice];
}

export type Choice = NonNullable<Said['perhaps']>;

/** Up to this a number without a unit that may play no part is a count: "two softies". Own choice. */
const COUNTS = 20;

/** The number of a message that has to be asked about first: one where what an answer rests on hangs on its part. */
export function unsureIn(frame: Frame, uses: readonly SlotName[]): Unsure | undefined {
  const { said } = frame.reading;
  for (const [at, one] of said.entries()) {
    const { part, of, text, perhaps } = one;
    if (perhaps === undefined || isCount(one)) continue;
    const frames = framesOf(withChoice(frame.reading, at, perhaps));
    const other = frames.find(({ kind }) => kind === frame.kind);
    if (other !== undefined && differ(frame.slots, other.slots, uses))
      return { at, text, choices: [{ part, of }, perhaps] };
  }
  return undefined;
}

function isCount({ part, perhaps, number: { kinds, value } }: Said): boolean {
  const isBare = kinds.length === 0 && Number.isInteger(value) && value <= COUNTS;
  return isBare && (part === 'none' || perhaps?.part === 'none');
}

/** The reading with one number's part put right. */
function withChoice(reading: Reading, at: number, { part, of }: Choice): Reading {
  const said = reading.said.map((one, n) => (n === at ? saidAs(part, of, one.number, 1) : one));
  return { ...reading, said };
}

/** A choice as a word of a button, and back: "2:system:nothing". */
export function choiceText(at: number, { part, of }: Choice): string {
  return `${at}:${part}:${of}`;
}

/** The reading with what buttons said of its numbers; what is no choice changes nothing. */
export function withChoices(reading: Reading, chosen: string): Reading {
  return chosen.split(' ').reduce<Reading>(
    (before, text) => {
      const [at, partText, ofText] = text.split(':');
      const part = partNames.find((name) => name === partText);
      const of = ofNames.find((name) => name === ofText);
      return part === undefined || of === undefined ? before : withChoice(before, Number(at), { part, of });
    },
    { ...reading, chosen },
  );
}

function differ(one: Slots, other: Slots, uses: readonly SlotName[]): boolean {
  return uses.some((name) => JSON.stringify(one[name]) !== JSON.stringify(other[name]));
}
