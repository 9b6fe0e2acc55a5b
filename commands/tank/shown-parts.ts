import { cm } from '../../core/corals/say.ts';
import { roughWords } from '../../core/corals/spot-words.ts';
import { printed } from '../../core/log/value.ts';
import { parameter } from '../../core/water/parameter.ts';
import type { Fact, Table } from '../answer.ts';
import { nameOf } from '../coral/asked-placed.ts';
import { spotShort } from '../coral/spot-said.ts';
import type { TankProfile } from '../keep.ts';
import { spanWords } from '../log/words.ts';
import type { Glass, Placing } from '../placed.ts';
import type { ShownTank } from '../shown.ts';
import { targetsOf } from './print.ts';

/** The last reading of each parameter beside its target. */
export function readingTable(profile: TankProfile, latest: ShownTank['latest'], nowMs: number): Table {
  const last = new Map(
    latest.map(({ parameter: id, value, atMs }) => [
      parameter(id).label,
      [printed(id, value, profile.units), `${spanWords(Math.max(0, nowMs - atMs))} ago`],
    ]),
  );
  const targets = targetsOf(profile).map(({ label, range, own }) => ({
    label,
    range,
    whose: own ? 'own' : 'usual',
  }));
  const others = [...last.keys()]
    .filter((label) => !targets.some((target) => target.label === label))
    .map((label) => ({ label, range: 'none', whose: '' }));
  return {
    head: ['reading', 'last', 'when', 'target', 'whose'],
    rows: [...targets, ...others].map(({ label, range, whose }) => {
      const [value = 'not logged', when = ''] = last.get(label) ?? [];
      return [label, value, when, range, whose];
    }),
  };
}

/** Corals listed one by one; the readings below them matter more than the rest. */
const MOST_LISTED = 20;

/** The corals, one a line: what, where and how wide. */
export function coralFacts(corals: readonly Placing[], { box }: Glass): readonly Fact[] {
  if (corals.length === 0) return [{ label: 'corals', value: 'none placed here' }];
  const more = corals.length - MOST_LISTED;
  const listed = corals.slice(0, MOST_LISTED).map((one) => {
    const where = one.rough && box !== undefined ? roughWords(one.spot, box) : spotShort(one.spot);
    return { label: `coral ${one.id}`, value: `${nameOf(one)}, ${where}, ${cm(one.diameterCm)} wide` };
  });
  return more <= 0 ? listed : [...listed, { label: 'more corals', value: String(more) }];
}
