import { basisName } from '../../core/corals/basis-words.ts';
import type { CoralEntry } from '../../core/corals/entry.ts';
import type { NamedCoral } from '../../core/corals/named.ts';
import { flowWords } from '../../core/corals/rules/flow.ts';
import { cm } from '../../core/corals/say.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { tellingName } from './asked-kind.ts';

/** Free room round a loose plate, cm: common practice. */
const ROOM_CM = 15;

/** A free-living coral put on rock or glued: down to open sand. */
export function looseAnswer(named: NamedCoral): Answer {
  const [entry] = named.entries;
  const attached = named.entries.filter((one) => !isLoose(one));
  const { light } = entry;
  return answer({
    headline: `No: a loose ${named.name} belongs on open sand, never glued or wedged on rock. Free it and set it down.`,
    read: [
      `${named.name} as ${entry.names.common[0]} (${entry.scientific.accepted}), one that lies loose`,
      ...(attached.length === 0
        ? []
        : [
            `${attached.map(({ names }) => names.common[0]).join(' or ')} is another coral and grows on rock: look for a stalk or a broken base`,
          ]),
    ],
    facts: [
      { label: 'ground', value: `${entry.ground.value} (${basisName(entry.ground.basis)})` },
      { label: 'flow', value: `${flowWords(entry)} (${basisName(entry.flow.basis)})` },
      {
        label: 'light',
        value: `${light.lowPpfd} to ${light.highPpfd} PAR, beginning near ${light.startPpfd} (${basisName(light.basis)})`,
      },
    ],
    steps: [
      'Free it without pulling on the flesh: cut the glue from the rock, and leave what sticks to its skeleton.',
      `Lay it on clean open sand with gentle flow and ${cm(ROOM_CM)} free on all sides: it moves by inflating.`,
      'If the underside is torn: leave it there on clean sand, and watch that the wound does not spread.',
      'A crab that flips it: turn it back gently, foot down, and move the crab rather than the coral.',
      'If it dies back, keep the skeleton as long as nothing rots: it can bud small ones.',
    ],
    dangers: ['Rock cuts the soft underside when it swells.'],
    cautions: ['The light it wants is the least certain of these numbers.'],
    sources: ['practice', 'memory'],
    next: [action(say('coral.placeInMyTank'), 'coral add', { coral: tellingName(entry) }, ['at', 'size'])],
  });
}
/** Lies free on sand. */
export function isLoose({ form, ground }: CoralEntry): boolean {
  return form.kinds.includes('free-living') && ground.value === 'sand';
}
