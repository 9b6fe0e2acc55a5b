import { z } from 'zod';
import { par } from '../../core/light/band.ts';
import { dimmerSetting, isFarFromReading } from '../../core/light/dimmer.ts';
import { rampPlan, USUAL_RAISE_PERCENT } from '../../core/light/ramp.ts';
import { Problem } from '../../core/problem.ts';
import { fixed } from '../../core/quantity/format.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { quantityOption } from '../options.ts';
import {
  bandFact,
  readPar,
  readSetting,
  TOO_MUCH_ACTION,
  TOO_MUCH_IS_COMMONER,
  TOO_MUCH_SIGNS,
} from './words.ts';
import { say } from '../../core/wording/say.ts';

const MAINS_DANGER = 'Lamp and water: hang the lamp safely, dry hands, and unplug it before you move it.';

export const dimCommand = defineCommand({
  path: ['light', 'dim'],
  summary: 'The lamp setting for the light you want, from one measured reading',
  example: '/light dim reading:120 PAR at:50 % goal:150 PAR',
  options: z.strictObject({
    reading: quantityOption('light', 'PAR measured at the coral, e.g. 120 PAR'),
    at: quantityOption('share', 'The lamp setting it was measured at, e.g. 50 %'),
    goal: quantityOption('light', 'PAR you want at the same spot'),
  }),
  run: (input): Answer => {
    const reading = readPar(input.reading, 'reading');
    const at = readSetting(input.at, 'at');
    const goal = readPar(input.goal, 'goal');
    const found = dimmerSetting({ ppfd: reading.value, settingPercent: at.value }, goal.value);
    const full = `full power gives about ${par(found.ppfdAtFull)}`;
    const shared = {
      read: [
        `${par(reading.value)} measured with the lamp at ${fixed(at.value, 1)} %; ${par(goal.value)} wanted at the same spot`,
        'all channels change together, so the colour stays the same',
        ...[reading, at, goal].flatMap((part) => part.notes),
      ],
      sources: ['practice'] as const,
    };
    if (!found.reached) {
      return answer({
        ...shared,
        headline: `The lamp cannot do that here: ${full}, and you want ${par(goal.value)}.`,
        facts: [
          bandFact('now', reading.value),
          bandFact('wanted', goal.value),
          bandFact('at 100 %', found.ppfdAtFull),
        ],
        steps: [
          'Check that the coral really wants that much: its entry in the guide comes first.',
          'If it does, move the coral up in steps, hang the lamp lower, or add a lamp; measure after each.',
        ],
        working: [
          `${fixed(reading.value, 1)} PAR x 100 % / ${fixed(at.value, 1)} % = ${par(found.ppfdAtFull)} at full power`,
        ],
        dangers: [MAINS_DANGER],
        cautions: [TOO_MUCH_IS_COMMONER],
      });
    }
    const settingPercent = settable(found.settingPercent, goal.value);
    const isUp = goal.value >= reading.value;
    const stays = isUp && settingPercent <= at.value;
    const setting = `${fixed(stays ? at.value : settingPercent, 1)} %`;
    const raised = isUp && !stays;
    const weeks = raised ? rampPlan(at.value, settingPercent).weeks : 0;
    const cautions = ['Lamps are not linear in their setting, so this is approximate until you measure it.'];
    if (isFarFromReading(found.settingPercent, at.value)) {
      cautions.push(
        'The two settings are far apart, which makes this a first try only: measure half-way too.',
      );
    }
    if (raised) cautions.push(TOO_MUCH_IS_COMMONER);
    return answer({
      ...shared,
      headline: stays
        ? `Leave the lamp at ${setting}: ${par(goal.value)} is as near as it can be set.`
        : `Set the lamp to about ${setting} for ${par(goal.value)}, then measure again.${weeks > 1 ? ` Go there in ${weeks} weekly steps, not at once.` : ''}`,
      facts: [
        bandFact('now', reading.value),
        bandFact('wanted', goal.value),
        { label: 'full power', value: `about ${par(found.ppfdAtFull)}` },
      ],
      steps: [
        ...(stays
          ? []
          : [
              weeks > 1
                ? `Raise by at most ${USUAL_RAISE_PERCENT} % a week up to ${setting}.`
                : `Set ${setting} now.`,
            ]),
        'Measure again at the same spot with the pumps as they run, and correct from that reading.',
        ...(raised ? [TOO_MUCH_SIGNS, TOO_MUCH_ACTION] : []),
      ],
      working: [
        `${fixed(at.value, 1)} % x ${fixed(goal.value, 1)} PAR / ${fixed(reading.value, 1)} PAR = ${fixed(found.settingPercent, 1)} %, rounded down`,
      ],
      dangers: [MAINS_DANGER],
      cautions,
      next:
        weeks > 1
          ? [action(say('light.weekByWeek'), 'light ramp', { now: `${fixed(at.value, 1)} %`, goal: setting })]
          : [],
    });
  },
});

/** A setting as a lamp takes it, per cent: whole, below 10 to a tenth, rounded down. */
function settable(settingPercent: number, goalPpfd: number): number {
  const scale = settingPercent < 10 ? 10 : 1;
  const floored = Math.floor(settingPercent * scale + 1e-9) / scale;
  if (floored >= 1) return floored;
  throw new Problem(say('light.lampWouldHaveRun'), {
    field: 'goal',
    given: par(goalPpfd),
    limit: say('light.setting1100'),
    hint: say('light.hangLampHigherOr'),
  });
}
