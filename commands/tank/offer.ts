import { answer, type Answer, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { Problem } from '../../core/problem.ts';
import { volume as litres } from '../../core/quantity/format.ts';
import type { TankKind } from '../../core/water/targets.ts';
import { askedVolume } from './asked-volume.ts';
import { rangeFact } from './volume-parts.ts';
import { say } from '../../core/wording/say.ts';

/** What a message says of a tank, as text for `/tank new`. */
export interface SaidTank {
  readonly volume?: string | undefined;
  readonly size?: string | undefined;
  readonly sump?: string | undefined;
  readonly kind?: TankKind | undefined;
}

/** The name offered where none is said; it can be changed before it is kept. */
const NAME = 'Reef';

/** What such a glass holds with its sump, as if measured inside; undefined where that cannot be read. */
function waterOf(size: string, sump: string | undefined): ReturnType<typeof askedVolume> | undefined {
  try {
    return askedVolume({ size, measured: 'inside', sump }, undefined);
  } catch (error) {
    if (error instanceof Problem) return undefined;
    throw error;
  }
}

/**
 * Offers to keep a tank that was told of, or to put a kept one right; writes nothing. `kept` is the name of the tank in
 * use.
 */
export function offerTank(said: SaidTank, kept: string | undefined): Answer {
  const { volume, size, kind } = said;
  const input = inputOf(said);
  const { sump } = input;
  const parts = [volume ?? size, sump === undefined ? undefined : `sump ${sump}`, kind];
  const water = volume === undefined && size !== undefined ? waterOf(size, sump) : undefined;
  const holds =
    water === undefined ? '' : ` It holds about ${litres(water.netL.likely)}, less what rock and sand take.`;
  return answer({
    headline:
      volume === undefined && size === undefined
        ? 'How big is it: net water, or the three sides of the glass? Nothing is kept yet.'
        : `Shall I keep this tank: ${parts.filter((one) => one !== undefined).join(', ')}?${holds} Nothing is kept yet.`,
    facts: [
      ...(water === undefined ? [] : [rangeFact(water.netL), ...water.facts]),
      ...(kept === undefined ? [] : [{ label: 'In use now', value: kept }]),
    ],
    steps:
      volume === undefined
        ? []
        : [
            'Say the water really in the system: the glass less rock and sand, with the sump. Doses go by it.',
          ],
    next: [
      tankAction(say('tank.keepIt'), said),
      ...(kept === undefined
        ? []
        : [action(say('tank.changeInstead', { kept }), 'tank edit', { ...input, tank: kept })]),
      action(say('tank.myTanks'), 'tank list', {}),
    ],
    sources: ['practice'],
  });
}

/** A button that keeps it, under a name that is asked for. */
export function tankAction(label: string, said: SaidTank): NextAction {
  return action(label, 'tank new', { ...inputOf(said), name: NAME }, ['name']);
}

/** A net volume counts the sump in. */
function inputOf({ volume, size, sump, kind }: SaidTank) {
  return volume === undefined ? { size, sump, kind } : { volume, sump: undefined, kind };
}
