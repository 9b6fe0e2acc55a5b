import type { NamedCoral } from '../../../core/corals/named.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import { primer } from '../../../core/care/primers/cards.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { groupLightAnswer } from '../../coral/group-light-answer.ts';
import { lightsAnswer } from '../../coral/lights-answer.ts';
import { parAnswer } from '../../coral/par-answer.ts';
import { bandAnswer } from '../../light/band-answer.ts';
import { luxCommand } from '../../light/lux.ts';
import { rangeCommand } from '../../light/range.ts';
import { cardAnswer } from '../../primer/card-answer.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { coralsOf, groupOf, luxOf, noPageOf, originOf, parsOf } from './coral-said.ts';
import { lampKind, lampStrength } from './lamp-said.ts';

const uses = ['corals', 'light', 'percents', 'lux'] as const;

export const coralLightRows: readonly Row[] = [
  {
    kind: 'coral-light',
    label: 'ask.kindCoralLight',
    needs: [{ oneOf: ['corals'], ask: 'coral.whichCoral', when: (frame) => groupOf(frame) === undefined }],
    uses,
    answer: (frame, context) => lightOf(frame, context) ?? cardAnswer(primer('PAR')),
  },
  {
    kind: 'par-ok',
    label: 'ask.kindParOk',
    needs: [{ oneOf: ['light', 'lux', 'percents'], ask: 'ask.parAtCoral' }],
    uses,
    answer: (frame, context) => {
      const [reading] = parsOf(frame);
      const answered = lightOf(frame, context);
      return answered ?? (reading === undefined ? undefined : bandAnswer(reading));
    },
  },
];

/** The light of the corals or the group that is named, against what was read. */
export function lightOf(frame: Frame, context: OwnContext): Answer | undefined {
  const { percents } = frame.slots;
  const lux = luxOf(frame);
  const [one, other] = coralsOf(frame);
  const readings = parsOf(frame);
  if (readings.length === 0 && lux !== undefined)
    return call(luxCommand, { reading: lux, lamp: lampKind(frame) }, context);
  if (one === undefined) {
    const group = groupOf(frame);
    return noPageOf(frame) ?? (group === undefined ? undefined : groupLightAnswer(group, readings[0]));
  }
  if (other !== undefined) return lightsAnswer(coralsOf(frame), readings);
  const origin = originOf(frame);
  const isTold = origin !== undefined || percents !== undefined || hasNoMeter(frame);
  if (isDark(one) || (isTold && readings.length < 2)) {
    const input = { coral: one.name, origin, reading: readings[0]?.text, setting: percents?.[0] };
    const lamp = percents !== undefined || hasNoMeter(frame) ? lampStrength(frame) : undefined;
    return call(rangeCommand, { ...input, lamp }, context);
  }
  return parAnswer(one, readings);
}

/** Lives by food, whatever it can mean. */
function isDark({ entries }: NamedCoral): boolean {
  return entries.every(({ photosynthetic }) => !photosynthetic);
}

function hasNoMeter({ reading: { scanned } }: Frame): boolean {
  return met(scanned, 'manner.negation') && met(scanned, 'hardware.lightMeter');
}
