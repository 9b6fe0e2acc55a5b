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
import { onlyEntry } from '../../../core/corals/named.ts';
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
    label: 'About a coral',
    needs: [{ oneOf: ['corals'], ask: 'Which coral is it?' }],
    uses: ['corals'],
    answer: (frame, context) => compared(frame, context) ?? pageOf(frame, context) ?? noPageOf(frame),
  },
  {
    kind: 'looks',
    label: 'What a coral is called, and which is it',
    needs: [{ oneOf: ['corals'], ask: 'Which names do you hesitate between, or what was it sold as?' }],
    uses: ['corals'],
    answer: (frame) => {
      const named = coralsOf(frame);
      return named.length === 0 ? noPageOf(frame) : namesAnswer(named);
    },
  },
  {
    kind: 'origin',
    label: 'Wild, sea-farmed or tank-grown',
    uses: ['corals'],
    answer: () => cardAnswer(primer('where corals come from')),
  },
  {
    kind: 'day-night',
    label: 'What a coral does by day and night',
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
  const [one] = coralsOf(frame);
  if (one === undefined) return undefined;
  const facet = facets.find(({ classes }) => met(frame.reading.scanned, ...classes));
  if (facet !== undefined) return linesFirst(one, facet.lines, context);
  const entry = onlyEntry(one);
  return call(aboutCoralCommand, { coral: entry === undefined ? one.name : tellingName(entry) }, context);
}

/** Two or three side by side, where each name means one. */
function compared(frame: Frame, context: OwnContext): Answer | undefined {
  const [a, b, c] = coralsOf(frame);
  if (a === undefined || b === undefined) return undefined;
  return call(compareCoralsCommand, { a: a.name, b: b.name, c: c?.name }, context);
}
