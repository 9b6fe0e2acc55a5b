import type { CoralEntry } from '../../../core/corals/entry.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { met, type Met } from '../../../core/language/met.ts';
import { primer } from '../../../core/care/primers/cards.ts';
import type { Answer, Fact } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { hardinessLine, lawLine, roomLine, stingLine } from '../../coral/about-lines.ts';
import { aboutCoralCommand } from '../../coral/about.ts';
import { tellingName } from '../../coral/asked-kind.ts';
import { compareCoralsCommand } from '../../coral/compare.ts';
import { peopleLines } from '../../coral/facet-first.ts';
import { namesAnswer } from '../../coral/names-answer.ts';
import { cardAnswer } from '../../primer/card-answer.ts';
import { subjectCard } from '../../../core/care/subjects/cards.ts';
import { onlyEntry, type NamedCoral } from '../../../core/corals/named.ts';
import { standThere } from '../../../core/language/stands-there.ts';
import { subjectAnswer } from '../../primer/subject-answer.ts';
import { symptomAction } from '../../triage/menu.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { coralsOf, linesFirst, noPageOf } from './coral-said.ts';

/** What a question can be after, the particular first. */
const facets: readonly {
  readonly classes: readonly Met[];
  readonly lines: (entry: CoralEntry) => readonly Fact[];
}[] = [
  { classes: ['manner.toxic', 'hardware.gloves'], lines: peopleLines },
  { classes: ['manner.lawful'], lines: (entry) => [lawLine(entry)] },
  { classes: ['lives.stings', 'lives.fights'], lines: (entry) => [stingLine(entry), roomLine(entry)] },
  {
    classes: ['manner.ease', 'manner.beginner', 'deeds.buys', 'manner.askOk'],
    lines: (entry) => [hardinessLine(entry)],
  },
];

export const coralAboutRows: readonly Row[] = [
  {
    kind: 'coral-about',
    label: 'ask.kindCoralAbout',
    needs: [{ oneOf: ['corals'], ask: 'coral.whichCoral', when: (frame) => !isAnemone(frame) }],
    uses: ['corals'],
    answer: (frame, context) =>
      compared(frame, context) ?? pageOf(frame, context) ?? noPageOf(frame) ?? anemoneOf(frame),
  },
  {
    kind: 'looks',
    label: 'ask.kindLooks',
    needs: [{ oneOf: ['corals'], ask: 'ask.whichNames' }],
    uses: ['corals'],
    answer: (frame) => {
      const named = coralsOf(frame);
      return named.length === 0 ? noPageOf(frame) : namesAnswer(named);
    },
  },
  {
    kind: 'origin',
    label: 'ask.kindOrigin',
    uses: ['corals'],
    answer: () => cardAnswer(primer('where corals come from')),
  },
  {
    kind: 'day-night',
    label: 'ask.kindDayNight',
    uses: ['corals'],
    answer: (frame, context) => {
      const [one] = coralsOf(frame);
      return one !== undefined &&
        met(frame.reading.scanned, 'body.coralPart', 'lives.stings', 'lives.stretches')
        ? linesFirst(one, (entry) => [stingLine(entry)], context)
        : undefined;
    },
  },
];

function pageOf(frame: Frame, context: OwnContext): Answer | undefined {
  const [one] = askedOf(frame);
  if (one === undefined) return undefined;
  const facet = facets.find(({ classes }) => met(frame.reading.scanned, ...classes));
  if (facet !== undefined) return linesFirst(one, facet.lines, context);
  const entry = onlyEntry(one);
  return call(aboutCoralCommand, { coral: entry === undefined ? one.name : tellingName(entry) }, context);
}

/** Beside one that is asked about those that stand there already are no more than neighbours. */
function askedOf(frame: Frame): readonly NamedCoral[] {
  const named = coralsOf(frame);
  const there = new Set(standThere(frame.reading.scanned).map(({ id }) => id));
  const asked = named.filter(({ name }) => !there.has(name));
  return asked.length === 0 || met(frame.reading.scanned, 'deeds.compares') ? named : asked;
}

function isAnemone({ reading: { scanned } }: Frame): boolean {
  return met(scanned, 'animals.anemone');
}

/** An anemone of no name: what is normal of it where somebody worries, else what it wants. */
function anemoneOf(frame: Frame): Answer | undefined {
  if (!isAnemone(frame)) return undefined;
  const isWorry = met(frame.reading.scanned, ...WORRIES);
  const card = isWorry ? subjectCard('day-night', 'anemone shrinks') : subjectCard('coral-about', 'anemone');
  if (card === undefined) return undefined;
  const given = subjectAnswer(card);
  return { ...given, next: [...given.next, symptomAction('anemone off', {})] };
}

const WORRIES = ['manner.actsNow', 'manner.askOk', 'lives.closes', 'lives.shrinks', 'looks.weird'] as const;

/** Two or three side by side, where each name means one. */
function compared(frame: Frame, context: OwnContext): Answer | undefined {
  const [a, b, c] = askedOf(frame);
  if (a === undefined || b === undefined) return undefined;
  return call(compareCoralsCommand, { a: a.name, b: b.name, c: c?.name }, context);
}
