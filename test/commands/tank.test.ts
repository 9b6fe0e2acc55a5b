import { describe, expect, it } from 'vitest';
import { withDefaults } from '../../commands/defaults.ts';
import { optionsOf } from '../../commands/options.ts';
import { tankCommands } from '../../commands/tank.ts';
import { Problem } from '../../core/problem.ts';
import { hostileSample } from '../hostile.ts';
import { as, NOW_MS, twoMembers } from './tank/member.ts';
import { problemOf, textOf } from './text.ts';

const [newCommand] = tankCommands;

describe.each(tankCommands.map((command) => ({ name: command.path.join(' '), command })))(
  '/$name',
  ({ name, command }) => {
    it('says where nothing of the asker can be kept', () => {
      expect(problemOf(() => as(undefined)(command.example)).message).toMatch(/who is asking/);
    });

    it('is for the asker alone, but for the card', () => {
      expect(command.private).toBe(name !== 'tank share');
      const [keep] = twoMembers();
      as(keep)('/tank new name:Pantry volume:240 L');
      expect(withDefaults(command, {}, { nowMs: 0, keep }).hidden).toBe(name !== 'tank share');
    });

    it('answers its example once there is a tank, and asks for one before', () => {
      const [keep] = twoMembers();
      if (!['tank new', 'tank list', 'tank shown'].includes(name))
        expect(problemOf(() => as(keep)(command.example)).hint).toMatch(/\/tank new/);
      if (name !== 'tank new') as(keep)(newCommand?.example ?? '');
      const given = as(keep)(command.example);
      expect(given.headline).toMatch(/Pantry|one tank|They show you no tank/);
      expect(given.sources.length).toBeGreaterThan(0);
    });

    it('has options every platform can show', () => {
      const options = optionsOf(command.options);
      expect(options.length).toBeLessThanOrEqual(25);
      for (const { name: option, description } of options) {
        expect(option).toMatch(/^[a-z]{1,32}$/);
        expect(description.length).toBeLessThanOrEqual(100);
      }
    });
  },
);

describe('two members', () => {
  it('with tanks of one name do not meet', () => {
    const [ada, bea] = twoMembers();
    as(ada)('/tank new name:Pantry volume:240 L kind:fish');
    as(bea)('/tank new name:Pantry volume:100 L');
    as(bea)('/tank edit tank:pantry volume:110 L name:Pool');
    expect(as(ada)('/tank show tank:pantry').headline).toMatch(/^Pantry: 240 L/);
    expect(problemOf(() => as(ada)('/tank show tank:Pool')).choices).toEqual(['Pantry']);
    as(bea)('/tank remove tank:Pool sure:yes');
    expect(ada.tanks().map(({ name }) => name)).toEqual(['Pantry']);
    expect(bea.tanks()).toEqual([]);
  });
});

describe('hostile texts', () => {
  it('give an answer with sensible numbers or a Problem, in every text option of new and edit', () => {
    const [keep] = twoMembers();
    as(keep)('/tank new name:Home volume:200 L');
    const base = { name: 'Trial', size: '60 x 40 x 40 cm', measured: 'inside' };
    const bad: string[] = [];
    let answered = 0;
    const run = (path: string, input: Record<string, unknown>): void => {
      try {
        const command = tankCommands.find((c) => c.path.join(' ') === path);
        const given = command?.run(input, { nowMs: NOW_MS, keep });
        answered += 1;
        if (
          given !== undefined &&
          /(?<![a-z])(?:NaN|Infinity|undefined)(?![a-z])/.test(
            given.facts.map(({ value }) => value).join(' '),
          )
        )
          bad.push(JSON.stringify(input));
      } catch (error) {
        if (!(error instanceof Problem)) bad.push(`${JSON.stringify(input)} ${String(error)}`);
      }
      for (const tank of keep.tanks().slice(1)) keep.removeTank(tank.id);
    };
    const options = optionsOf(newCommand?.options ?? tankCommands[0]!.options).filter(
      ({ kind, choices }) => kind === 'string' && choices === undefined,
    );
    expect(options.length).toBe(13);
    for (const [index, text] of hostileSample(7).slice(0, 4000).entries()) {
      const { name = '' } = options[index % options.length] ?? {};
      run('tank new', { ...base, [name]: text });
      if (name !== 'name') run('tank edit', { tank: 'Home', [name]: text });
    }
    expect(bad).toEqual([]);
    expect(answered).toBeGreaterThan(50);
  }, 120_000);
});

describe('/tank share', () => {
  it('shows name, kind, water, age and targets, and nothing else', () => {
    const [keep] = twoMembers();
    const run = as(keep);
    run(
      '/tank new name:Pantry size:120 x 50 x 50 cm measured:inside rock:24 kg started:2025-01-03 instrument:refractometer hours:9 targets:alk 8-9',
    );
    const [tank] = keep.tanks();
    keep.addEntry(tank?.id ?? 0, {
      atMs: NOW_MS,
      values: [{ parameter: 'calcium', value: 413 }],
      note: 'secret',
    });
    const card = run('/tank share');
    const all = `${textOf(card)}\n${JSON.stringify(card.table)}`;
    expect(all).toMatch(/Pantry, mixed reef/);
    expect(all).toMatch(/1 year 4 months/);
    expect(all).toMatch(/8 to 9 dKH/);
    expect(all).not.toMatch(/413|secret|refractometer|24 kg|9 h|120 x 50/);
    expect(card.facts.map(({ label }) => label)).toEqual(['kind', 'net water', 'display', 'running']);
    expect(card.next).toEqual([]);
  });
});
