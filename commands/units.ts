import { z } from 'zod';
import { say } from '../core/wording/say.ts';
import { answer, type Answer } from './answer.ts';
import { action } from './calls.ts';
import { defineCommand, type OwnContext } from './command.ts';
import { unitFacts } from './unit-facts.ts';
import { unitOptions, withUnits } from './unit-options.ts';
import { unitsOf } from './units-of.ts';
import { keepOf } from './tank/asked-tank.ts';

export const unitsCommand = defineCommand({
  path: ['units'],
  summary: 'Your units: litres or gallons, cm or inches, °C or °F; a tank may have its own',
  example: '/units volume:US gallons length:inches temperature:fahrenheit',
  private: true,
  options: z.strictObject(unitOptions),
  run: (input, context): Answer => {
    const isSet = Object.values(input).some((value) => value !== undefined);
    if (isSet) {
      const keep = keepOf(context);
      keep.setUnits(withUnits(keep.units(), input));
    }
    return shown(context, isSet);
  },
});

function shown(context: OwnContext, isSet: boolean): Answer {
  const tank = context.keep?.tankInUse();
  const facts = unitFacts(unitsOf(context));
  const own = unitFacts(tank?.units ?? {});
  return answer({
    headline: say(isSet ? 'units.set' : 'units.yours'),
    facts,
    read: tank === undefined || own.length === 0 ? [] : [say('units.ofTank', { tank: tank.name })],
    steps: [say('units.typedFirst')],
    next: [
      action(say('units.metric'), 'units', {
        volume: 'litres',
        length: 'cm',
        temperature: 'celsius',
      }),
      action(say('units.american'), 'units', {
        volume: 'US gallons',
        length: 'inches',
        temperature: 'fahrenheit',
      }),
    ],
  });
}
