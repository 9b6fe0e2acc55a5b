import { z } from 'zod';
import { Problem } from '../../core/problem.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { MOST_NAME_LETTERS, MOST_TANKS, type TankProfile } from '../keep.ts';
import { textOption } from '../options.ts';
import { askedDetails, askedName, noDetails } from './asked-profile.ts';
import { keepOf } from './asked-tank.ts';
import { askedVolume } from './asked-volume.ts';
import { glassFacts, keepGlass } from './glass.ts';
import { profileOptions } from './options.ts';
import { detailFacts, PRACTICE_TARGETS, targetReason, targetTable, waterFacts } from './facts.ts';
import { litres, waterWords } from './print.ts';
import { say } from '../../core/wording/say.ts';

export const newCommand = defineCommand({
  path: ['tank', 'new'],
  summary: 'Keep a tank of yours: its water, worked out or as given, and what you aim at',
  example:
    '/tank new name:Pantry size:120 x 50 x 50 cm measured:inside height:46 cm rock:24 kg sand:5 cm sump:60 L',
  private: true,
  options: z.strictObject({
    name: textOption('What you call it', { max: MOST_NAME_LETTERS }),
    ...profileOptions,
  }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const name = askedName(keep, input.name);
    const tanks = keep.tanks();
    if (tanks.length >= MOST_TANKS) {
      throw new Problem(say('tank.youHaveTanksHere', { MOSTTANKS: MOST_TANKS }), {
        field: 'name',
        given: name,
        hint: say('tank.removeOneYouNo'),
      });
    }
    const { details, read } = askedDetails(input, noDetails, context.nowMs);
    const inUse = keep.tankInUse();
    const unit = details.units.volume ?? inUse?.units.volume;
    const water = askedVolume(input, unit);
    const profile: TankProfile = {
      ...details,
      name,
      netVolumeL: water.netL.likely,
      displayVolumeL: water.displayL,
      volumeBasis: water.basis,
    };
    const tank = keep.addTank(profile);
    const glass = keepGlass(keep, tank.id, input);
    const used = keep.tankInUse()?.id === tank.id;
    return answer({
      headline: `${name} is kept: ${waterWords(profile)}.`,
      read: [...water.read, ...glass, ...read, targetReason(profile)],
      facts: [
        ...waterFacts(profile),
        ...water.facts,
        ...glassFacts(keep.glass(tank.id)),
        ...detailFacts(tank, context.nowMs),
      ],
      steps: [
        `Use ${litres(profile.netVolumeL, profile.units)} for every dose and water change, not the size of the glass.`,
        used
          ? 'It is the tank in use: where you leave out a volume, I take this one.'
          : `To work with it when you name no tank: /tank use tank:${name}`,
      ],
      table: targetTable(profile),
      working: water.working,
      cautions: [...water.cautions, PRACTICE_TARGETS],
      sources: water.sources,
      next: [
        action(say('tank.show', { name }), 'tank show', { tank: name }),
        ...(used ? [] : [action(say('tank.use', { name }), 'tank use', { tank: name })]),
      ],
    });
  },
});
