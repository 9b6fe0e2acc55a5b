import { describe, expect, it } from 'vitest';
import { readLine } from '../../bot/terminal/read.ts';
import { commands } from '../../commands/index.ts';
import { nameOf } from '../../commands/named.ts';
import { optionsOf } from '../../commands/options.ts';
import { suggest } from '../../commands/suggest.ts';
import { coralById } from '../../core/corals/coral-list.ts';
import { findCorals } from '../../core/corals/find.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import type { QuantityKind } from '../../core/quantity/unit.ts';
import { Problem } from '../../core/problem.ts';
import { answerTo, realInputs } from '../short/inputs.ts';
import { withOption } from '../with-option.ts';

const [member] = realInputs();
if (member === undefined) throw new Error('no member');
const { asking } = member;

const cases = commands.flatMap((command) =>
  optionsOf(command.options)
    .filter(({ suggest: list }) => list !== undefined)
    .map((option) => ({ name: `/${nameOf(command)} ${option.name}`, command, option })),
);

const TYPED = ['', 'a', 'al', 's', 'so', 'c', 't', 'europe'];

/** What the example gives, as text. */
function givenIn(example: string): Readonly<Record<string, string>> {
  const line = readLine(example, commands);
  const input = line.kind === 'command' ? line.input : {};
  return Object.fromEntries(Object.entries(input).map(([name, value]) => [name, String(value)]));
}

function isReadable(kind: QuantityKind | undefined, value: string): boolean {
  return kind !== undefined && Number.isFinite(readQuantity(kind, value, { field: 'value' }).value);
}

function coralOf(name: string) {
  const found = findCorals(name);
  return found.kind === 'one' ? found.entry : undefined;
}

function optionOf(name: string, of: string) {
  const found = commands.find((command) => nameOf(command) === name);
  const option = found && optionsOf(found.options).find((each) => each.name === of);
  if (option === undefined) throw new Error(`no ${name} ${of}`);
  return option;
}

describe('what is offered while somebody types', () => {
  it.each(cases)('$name is accepted', ({ command, option }) => {
    const { [option.name]: own, ...input } = givenIn(command.example);
    const number = /[\d.]+/.exec(own ?? '')?.[0];
    const typed = option.suggest === 'unit' ? ['', ...(number === undefined ? [] : [number])] : TYPED;
    const offered = new Set(
      typed.flatMap((text) => suggest(option, text, { keep: asking.keep, commands, locale: 'de', input })),
    );
    for (const value of offered) {
      try {
        answerTo(withOption(command.example, option.name, value), asking);
      } catch (error) {
        if (!(error instanceof Problem)) throw error;
        // A question back with what to choose from is no refusal.
        // How much of a kind is too much for one sum is for its own answer to say: here the unit is offered.
        const isUnit = option.suggest === 'unit' && isReadable(option.quantity, value);
        const isRefused = error.field === option.name && error.choices.length === 0 && !isUnit;
        expect(isRefused ? `${value}: ${error.message}` : '').toBe('');
      }
    }
  });

  it('begins with what is the member’s own', () => {
    const { keep } = asking;
    const tank = keep?.tankInUse();
    if (keep === undefined || tank === undefined) throw new Error('no tank');
    const [volume = ''] = suggest(optionOf('dose amount', 'volume'), '', { keep });
    expect(Number.parseFloat(volume)).toBeCloseTo(tank.netVolumeL, 0);
    const own = keep.corals(tank.id).map(({ coralId }) => coralById(coralId));
    expect(own.length).toBeGreaterThan(2);
    const first = suggest(optionOf('coral about', 'coral'), '', { keep }).slice(0, 2);
    for (const name of first) expect(own).toContain(coralOf(name));
    expect(suggest(optionOf('log trend', 'of'), 'sal', { keep })).toEqual(['salinity']);
    expect(suggest(optionOf('dose amount', 'of'), 'sal', { keep })).toEqual([]);
  });
});
