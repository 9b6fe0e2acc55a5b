import { z } from 'zod';
import { Problem } from '../../core/problem.ts';
import { answer, type Answer } from '../answer.ts';
import { boxOf } from '../coral/scene-of.ts';
import { defineCommand } from '../command.ts';
import { MOST_NAME_LETTERS, type Tank, type TankProfile } from '../keep.ts';
import { textOption } from '../options.ts';
import { askedDetails, askedName } from './asked-profile.ts';
import { askedTank, keepOf } from './asked-tank.ts';
import { askedVolume, saysVolume } from './asked-volume.ts';
import { detailFacts, PRACTICE_TARGETS, targetReason, targetTable, waterFacts } from './facts.ts';
import { glassFacts, keepGlass, refit } from './glass.ts';
import { profileOptions } from './options.ts';
import { litres, waterWords } from './print.ts';
import type { AskedVolume } from './volume-parts.ts';
import { say } from '../../core/wording/say.ts';

export const editCommand = defineCommand({
  path: ['tank', 'edit'],
  summary: 'Change what I keep of a tank; only what you give is changed',
  example: '/tank edit targets:alk 8-9, ca 420-440',
  private: true,
  options: z.strictObject({
    tank: textOption('Which of your tanks, if not the one in use', { suggest: 'tank' }).optional(),
    name: textOption('A new name', { max: MOST_NAME_LETTERS }).optional(),
    ...profileOptions,
  }),
  run: ({ tank: which, ...input }, context): Answer => {
    const keep = keepOf(context);
    const before = askedTank(keep, which);
    const given = Object.entries(input).filter(([, value]) => value !== undefined);
    if (given.length === 0) {
      throw new Problem(say('remind.whatShallIChange'), {
        field: 'name',
        limit: Object.keys(profileOptions).join(', '),
      });
    }
    const { details, read } = askedDetails(input, before, context.nowMs);
    const water = saysVolume(input) ? askedVolume(input, details.units.volume) : undefined;
    const profile: TankProfile = {
      ...details,
      ...waterOf(before, water),
      name: input.name === undefined ? before.name : askedName(keep, input.name, before.id),
    };
    const boxBefore = boxOf(keep, before);
    const tank = keep.editTank(before.id, profile);
    if (tank === undefined) throw new Problem(say('tank.tankNoLongerKept'), { field: 'tank', given: which });
    const glass = keepGlass(keep, tank.id, input);
    const fitting = refit(keep, tank, boxBefore);
    return answer({
      headline: `${tank.name} is changed (${given.map(([name]) => name).join(', ')}): ${waterWords(tank)}.`,
      read: [...(water?.read ?? []), ...glass, ...read, targetReason(tank)],
      facts: [
        ...waterFacts(tank),
        ...(water === undefined
          ? []
          : [{ label: 'net water before', value: litres(before.netVolumeL, tank.units) }]),
        ...(water?.facts ?? []),
        ...glassFacts(keep.glass(tank.id)),
        ...detailFacts(tank, context.nowMs),
      ],
      table: targetTable(tank),
      working: water?.working ?? [],
      cautions: [...(water?.cautions ?? []), ...largerThanGlass(tank, water), ...fitting, PRACTICE_TARGETS],
      sources: [...(water?.sources ?? []), 'practice'],
    });
  },
});

type Water = Pick<TankProfile, 'netVolumeL' | 'displayVolumeL' | 'volumeBasis'>;

/** A display once known stays known when only the water is given anew. */
function waterOf(before: Tank, water: AskedVolume | undefined): Water {
  if (water === undefined) {
    const { netVolumeL, displayVolumeL, volumeBasis } = before;
    return { netVolumeL, displayVolumeL, volumeBasis };
  }
  return {
    netVolumeL: water.netL.likely,
    displayVolumeL: water.displayL ?? before.displayVolumeL,
    volumeBasis: water.basis,
  };
}

function largerThanGlass(tank: Tank, water: AskedVolume | undefined): readonly string[] {
  const { netVolumeL, displayVolumeL, units } = tank;
  if (water === undefined || water.displayL !== undefined || displayVolumeL === undefined) return [];
  if (netVolumeL <= displayVolumeL) return [];
  return [
    `More water than the display holds (${litres(displayVolumeL, units)}): right only with a sump beside it.`,
  ];
}
