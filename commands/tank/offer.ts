import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import type { TankKind } from '../../core/water/targets.ts';

/** What a message says of a tank, as text for `/tank new`. */
export interface SaidTank {
  readonly volume?: string | undefined;
  readonly size?: string | undefined;
  readonly sump?: string | undefined;
  readonly kind?: TankKind | undefined;
}

/** The name offered where none is said; it can be changed before it is kept. */
const NAME = 'Reef';

/**
 * Offers to keep a tank that was told of, or to put a kept one right; writes nothing. `kept` is the name of the tank in
 * use.
 */
export function offerTank(said: SaidTank, kept: string | undefined): Answer {
  const { volume, size, kind } = said;
  // A net volume counts the sump in.
  const sump = volume === undefined ? said.sump : undefined;
  const input = { ...(volume === undefined ? { size } : { volume }), sump, kind };
  const parts = [volume ?? size, sump === undefined ? undefined : `sump ${sump}`, kind];
  return answer({
    headline:
      volume === undefined && size === undefined
        ? 'How big is it: net water, or the three sides of the glass? Nothing is kept yet.'
        : `Shall I keep this tank: ${parts.filter((one) => one !== undefined).join(', ')}? Nothing is kept yet.`,
    facts: kept === undefined ? [] : [{ label: 'In use now', value: kept }],
    steps:
      volume === undefined
        ? []
        : [
            'Say the water really in the whole system: the glass less rock and sand, with the sump. Doses go by it.',
          ],
    next: [
      action('Keep it', 'tank new', { ...input, name: NAME }, ['name']),
      ...(kept === undefined
        ? []
        : [action(`Change ${kept} instead`, 'tank edit', { ...input, tank: kept })]),
      action('My tanks', 'tank list', {}),
    ],
    sources: ['practice'],
  });
}
