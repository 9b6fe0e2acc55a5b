import { corals } from '../../../core/corals/coral-list.ts';
import type { NamedCoral } from '../../../core/corals/named.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import type { Answer } from '../../answer.ts';
import { roomLine, stingLine } from '../../coral/about-lines.ts';
import { gapOf, type Gap } from '../../coral/gap.ts';
import { pairAnswer } from '../../coral/pair-answer.ts';
import { pairsAnswer } from '../../coral/pairs-answer.ts';
import { shadeAnswer } from '../../coral/shade-answer.ts';
import { softBesideStony } from '../../coral/soft-beside-stony.ts';
import { zoanthidAnswer } from '../../coral/zoanthid-answer.ts';
import type { Row } from '../row.ts';
import { anyWithoutPage, coralsOf, groupsOf, linesFirst } from './coral-said.ts';

export const coralPairRows: readonly Row[] = [
  {
    kind: 'pair',
    label: 'ask.kindPair',
    needs: [{ oneOf: ['corals'], ask: 'ask.whichTwoCorals', when: (frame) => !isSoftBesideStony(frame) }],
    uses: ['corals', 'lengths', 'counts'],
    answer: (frame, context) => {
      const unknown = anyWithoutPage(frame);
      if (unknown !== undefined) return unknown;
      const [one, second, third] = coralsOf(frame);
      if (one === undefined) return isSoftBesideStony(frame) ? softBesideStony() : undefined;
      if (second !== undefined && third !== undefined) return pairsAnswer(coralsOf(frame));
      const other = second ?? anyAnemone(frame, one) ?? (isTwice(frame) ? one : undefined);
      if (other !== undefined) return besideOf(frame, one, other);
      if (isSoftBesideStony(frame)) return softBesideStony();
      if (isZoanthid(one) && met(frame.reading.scanned, 'hardware.blade')) return zoanthidAnswer('beside');
      return linesFirst(one, (entry) => [stingLine(entry), roomLine(entry)], context);
    },
  },
];

function besideOf(frame: Frame, one: NamedCoral, other: NamedCoral): Answer {
  if (isZoanthid(one) && isZoanthid(other)) return zoanthidAnswer('beside');
  if (one !== other && met(frame.reading.scanned, 'places.shadesOthers')) return shadeAnswer(one, other);
  const { gap, unread } = gapIn(frame);
  const found = pairAnswer(one, other, gap);
  return { ...found, unused: [...found.unused, ...unread] };
}

/** The one length that was said; without its unit it is not used. */
function gapIn({ slots: { lengths = [], box } }: Frame): {
  readonly gap: Gap | undefined;
  readonly unread: readonly string[];
} {
  const [only, other] = lengths;
  if (only === undefined || other !== undefined || box !== undefined) return { gap: undefined, unread: [] };
  if (!Number.isNaN(Number(only)))
    return { gap: undefined, unread: [`${only} (not said whether cm or inches)`] };
  return { gap: gapOf(only), unread: [] };
}

/** "two torches", "torch next to another torch": one kind, twice. */
function isTwice({ slots: { counts = [] }, reading: { scanned } }: Frame): boolean {
  const named = scanned.names.filter((name) => name.class === 'coral');
  return named.length > 1 || counts.includes(2) || met(scanned, 'sums.bothOfThem');
}

/** A nem of no kind named is any that hosts. */
function anyAnemone({ reading: { scanned } }: Frame, { entries }: NamedCoral): NamedCoral | undefined {
  if (!met(scanned, 'animals.anemone') || entries[0].group === 'anemone') return undefined;
  const [first, ...more] = corals.filter(({ group }) => group === 'anemone');
  return first === undefined ? undefined : { name: 'anemone', entries: [first, ...more] };
}

function isZoanthid({ entries }: NamedCoral): boolean {
  return entries[0].group === 'zoanthid';
}

/** Groups rather than corals: "can I mix softies and sps". */
export function isSoftBesideStony(frame: Frame): boolean {
  const found = new Set([...groupsOf(frame), ...coralsOf(frame).map(({ entries }) => entries[0].group)]);
  return found.has('soft') && (found.has('small-polyp') || found.has('large-polyp'));
}
