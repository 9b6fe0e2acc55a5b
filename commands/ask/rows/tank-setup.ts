import type { Frame } from '../../../core/language/frame.ts';
import { met, type Met } from '../../../core/language/met.ts';
import type { TankKind } from '../../../core/water/targets.ts';
import { offerTank, tankAction, type SaidTank } from '../../tank/offer.ts';
import { showCommand } from '../../tank/show.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { boxWithUnit, whichUnit } from './box-unit.ts';

export const tankSetupRows: readonly Row[] = [
  {
    kind: 'tank-setup',
    label: 'ask.kindTankSetup',
    uses: ['volume', 'box', 'container', 'lengths', 'corals', 'moments', 'span'],
    answer: (frame, context) => {
      const { volume, box } = frame.slots;
      const kept = context.keep?.tankInUse()?.name;
      const isSize = volume !== undefined || box !== undefined;
      if (!isSize && kept !== undefined) return call(showCommand, {}, context);
      const size = boxWithUnit(frame);
      const said = tankSaid(frame);
      if (volume === undefined && box !== undefined && size === undefined)
        return whichUnit(box, (whole, label) => tankAction(label, { ...said, size: whole }));
      return offerTank({ ...said, size }, kept);
    },
  },
];

/** What a message says of its tank, beside the sides of the glass. */
export function tankSaid(frame: Frame): SaidTank {
  return { volume: frame.slots.volume, sump: sumpIn(frame), kind: kindIn(frame) };
}

/** Water of the sump, where it is said by itself and not counted in. */
function sumpIn({ reading: { said } }: Frame): string | undefined {
  return said.find(({ part, of }) => part === 'part' && of === 'sump')?.text;
}

/** Kinds of keeping by the corals that are named: two of them make a mixed tank. */
const KINDS: Readonly<Partial<Record<TankKind, readonly Met[]>>> = {
  soft: ['corals.softCoral', 'corals.pulsing', 'corals.starPolyp', 'corals.mushroom', 'corals.zoanthid'],
  'large-polyp': [
    'corals.branchLps',
    'corals.euphyllia',
    'corals.brain',
    'corals.fleshyLps',
    'corals.chalice',
    'corals.flowerpot',
  ],
  'small-polyp': ['corals.otherSps', 'corals.acropora', 'corals.montipora', 'corals.birdsnest'],
};

function kindIn({ reading: { scanned } }: Frame): TankKind | undefined {
  if (met(scanned, 'corals.mixedReef')) return 'mixed';
  if (met(scanned, 'fish.fishOnly')) return 'fish';
  const found = (Object.keys(KINDS) as TankKind[]).filter((kind) => met(scanned, ...(KINDS[kind] ?? [])));
  return found.length > 1 ? 'mixed' : found[0];
}
