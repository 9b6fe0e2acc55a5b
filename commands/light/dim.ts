import { z } from 'zod';
import { dimmerSetting, isFarFromReading } from '../../core/light/dimmer.ts';
import { rampPlan, USUAL_RAISE_PERCENT } from '../../core/light/ramp.ts';
import { Problem } from '../../core/problem.ts';
import { fixed } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { quantityOption } from '../options.ts';
import { bandFact, par, readPar, TOO_MUCH_ACTION, TOO_MUCH_IS_COMMONER, TOO_MUCH_SIGNS } from './words.ts';

const MAINS_CAUTION = 'Lamp and water: hang the lamp safely, dry hands, and unplug it before you move it.';

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
    const at = readQuantity('share', input.at, { field: 'at' });
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
        cautions: [TOO_MUCH_IS_COMMONER, MAINS_CAUTION],
      });
    }
    const setting = settingText(found.settingPercent, goal.value);
    const brighter = goal.value > reading.value * (1 + USUAL_RAISE_PERCENT / 100);
    const steps = brighter ? rampPlan(reading.value, goal.value).weeks : 0;
    const slow = brighter ? ` Go there in ${steps} weekly steps, not at once.` : '';
    const raised = goal.value > reading.value;
    const cautions = ['Lamps are not linear in their setting, so this is approximate until you measure it.'];
    if (isFarFromReading(found.settingPercent, at.value)) {
      cautions.push(
        'The two settings are far apart, which makes this a first try only: measure half-way too.',
      );
    }
    if (raised) cautions.push(TOO_MUCH_IS_COMMONER);
    return answer({
      ...shared,
      headline: `Set the lamp to about ${setting} for ${par(goal.value)}, then measure again.${slow}`,
      facts: [
        bandFact('now', reading.value),
        bandFact('wanted', goal.value),
        { label: 'setting', value: `about ${setting}` },
        { label: 'full power', value: `about ${par(found.ppfdAtFull)}` },
      ],
      steps: [
        brighter ? `Raise about ${USUAL_RAISE_PERCENT} % a week up to ${setting}.` : `Set ${setting} now.`,
        'Measure again at the same spot with the pumps as they run, and correct from that reading.',
        ...(raised ? [TOO_MUCH_SIGNS, TOO_MUCH_ACTION] : []),
      ],
      working: [
        `${fixed(at.value, 1)} % x ${fixed(goal.value, 1)} PAR / ${fixed(reading.value, 1)} PAR = ${fixed(found.settingPercent, 1)} %, rounded down`,
      ],
      cautions: [...cautions, MAINS_CAUTION],
      next: brighter
        ? [action('week by week', 'light ramp', { now: par(reading.value), goal: par(goal.value) })]
        : [],
    });
  },
});

/** A setting as a lamp takes it, rounded down: "62 %", "7.5 %". */
function settingText(settingPercent: number, goalPpfd: number): string {
  const digits = settingPercent < 10 ? 1 : 0;
  const scale = 10 ** digits;
  const floored = Math.floor(settingPercent * scale + 1e-9) / scale;
  if (floored >= 1) return `${floored} %`;
  throw new Problem('The lamp would have to run below 1 %, which few lamps can.', {
    field: 'goal',
    given: par(goalPpfd),
    limit: 'a setting of 1 to 100 %',
    hint: 'Hang the lamp higher or shade the spot, then measure again.',
  });
}
