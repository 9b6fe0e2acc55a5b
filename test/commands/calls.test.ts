import { describe, expect, it } from 'vitest';
import { actionOf } from '../../commands/action-of.ts';
import { answer, type Answer, type NextAction } from '../../commands/answer.ts';
import { call } from '../../commands/called.ts';
import { action } from '../../commands/calls.ts';
import { convertCommand } from '../../commands/convert.ts';
import { answerOf } from '../../commands/defaults.ts';
import { amountCommand } from '../../commands/dose/amount.ts';
import { commands, findCommand } from '../../commands/index.ts';
import { luxCommand } from '../../commands/light/lux.ts';

const context = { nowMs: 0 };

describe('a button', () => {
  it('says a command and options there are; a wrong one of either does not compile', () => {
    const good = action('Dose', 'dose amount', { of: 'calcium', goal: '420', now: undefined }, ['volume']);
    expect(good).toEqual({
      label: 'Dose',
      command: 'dose amount',
      input: { of: 'calcium', goal: '420' },
      ask: ['volume'],
    });
    const wrong: readonly NextAction[] = [
      // @ts-expect-error there is no such command
      action('Dose', 'dose amounts', { of: 'calcium' }),
      // @ts-expect-error there is no such option
      action('Dose', 'dose amount', { off: 'calcium' }),
      // @ts-expect-error nor beside one there is
      action('Dose', 'dose amount', { of: 'calcium', target: '420' }),
      // @ts-expect-error a command without options takes none
      action('Mine', 'tank list', { tank: 'Hallway' }),
      // @ts-expect-error only its own options can be asked for
      action('Dose', 'dose amount', { of: 'calcium' }, ['reading']),
      // @ts-expect-error a value is text
      action('Dose', 'dose amount', { of: 'calcium', goal: 420 }),
      // @ts-expect-error the same holds where it is written down as an object
      { label: 'Dose', command: 'dose amount', input: { off: 'calcium' } },
    ];
    expect(wrong).toHaveLength(7);
  });

  it.each(commands.map((command) => command.path.join(' ')))('can run /%s', (name) => {
    const command = findCommand(name.split(' '));
    expect(command && actionOf(command, { label: 'x', input: {} })?.command).toBe(name);
  });

  it('of a command known only when it runs has none but its options', () => {
    expect(actionOf(convertCommand, { label: 'x', input: { amount: '8 dKH' }, ask: ['of'] })).toEqual({
      label: 'x',
      command: 'convert',
      input: { amount: '8 dKH' },
      ask: ['of'],
    });
    expect(actionOf(convertCommand, { label: 'x', input: { amounts: '8 dKH' } })).toBeUndefined();
    expect(actionOf(convertCommand, { label: 'x', input: {}, ask: ['volume'] })).toBeUndefined();
  });
});

describe('a command called by another', () => {
  it('takes options it has, with values they take; else it does not compile', () => {
    const good = call(amountCommand, { of: 'calcium', now: '380', goal: '420', volume: undefined }, context);
    expect(good.echo).toBe('/dose amount of:calcium now:380 goal:420');
    const wrong: readonly (() => Answer)[] = [
      // @ts-expect-error there is no such option
      () => call(amountCommand, { of: 'calcium', goal: '420', target: '420' }, context),
      // @ts-expect-error an option is missing
      () => call(amountCommand, { of: 'calcium' }, context),
      // @ts-expect-error a command is no name
      () => call('dose amount', { of: 'calcium', goal: '420' }, context),
      // @ts-expect-error there is no such lamp
      () => answerOf(luxCommand, { reading: '9000 lux', lamp: 'candle' }, context),
    ];
    expect(wrong[0]).toThrow('There is no option called target.');
    expect(wrong).toHaveLength(4);
  });

  it('asks what can mean two things with a button for each, only where the command has that option', () => {
    const asked = call(convertCommand, { amount: '180 ppm' }, context);
    for (const { command } of asked.next) expect(command).toBe('convert');
    expect(answer({ headline: 'x', next: asked.next }).next).toEqual(asked.next);
  });
});
