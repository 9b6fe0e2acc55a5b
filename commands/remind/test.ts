import { z } from 'zod';
import { findParameter, parameter, type ParameterId } from '../../core/water/parameter.ts';
import type { Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { askedMeasured } from '../log/asked-measured.ts';
import { textOption } from '../options.ts';
import { zoneOption } from '../zone.ts';
import { askedPlace, placeOptions } from './asked-place.ts';
import { askedText, askedWhen } from './asked-plan.ts';
import { inSaidZone } from './said-zone.ts';
import { setReminder, tankOf } from './set.ts';
import { tankOption, whenOption } from './task.ts';

export const testCommand = defineCommand({
  path: ['remind', 'test'],
  summary: 'Remind me to test: one reading or several, with a form for the result',
  example: '/remind test of:alkalinity when:every other saturday 9am',
  private: true,
  options: z.strictObject({
    of: textOption('What to test: alkalinity; or several: alk, ca, mg', { suggest: 'parameter' }),
    when: whenOption,
    tank: tankOption,
    zone: zoneOption(),
    ...placeOptions,
  }),
  run: (input, context): Answer => {
    const tank = tankOf(context, input.tank);
    const parameters = askedParameters(input.of);
    const place = askedPlace(input, context);
    const { text: when, zone, ...asked } = inSaidZone(input.when, input.zone, context, tank);
    const repeat = askedWhen(when, { nowMs: context.nowMs, zone });
    const text = askedText(testText(parameters), 'of');
    return setReminder({ text, parameters, tank, zone, repeat, place }, context, asked);
  },
});

/** "alk, ca and mg" or "alk ca mg". @throws Problem for a word that names nothing that can be logged. */
export function askedParameters(given: string): readonly ParameterId[] {
  if (findParameter(given) !== undefined) return [askedMeasured(given)];
  const parts = given.split(/\s*(?:,|;|\/|\+|&|\band\b)\s*/i).filter((part) => part !== '');
  const words = parts.flatMap((part) => (findParameter(part) === undefined ? part.split(/\s+/) : [part]));
  return [...new Set(words.map(askedMeasured))];
}

/** "test alkalinity, calcium and magnesium". */
export function testText(parameters: readonly ParameterId[]): string {
  const labels = parameters.map((id) => parameter(id).label);
  const all = labels.length < 2 ? labels.join('') : `${labels.slice(0, -1).join(', ')} and ${labels.at(-1)}`;
  return `test ${all}`;
}
