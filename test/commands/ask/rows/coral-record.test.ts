import { describe, expect, it } from 'vitest';
import { coralRecordRows } from '../../../../commands/ask/rows/coral-record.ts';
import { NOW_MS, twoPersons, type Person } from '../../coral/person.ts';
import { rowAnswer } from './asked.ts';

function withTorch(): Person {
  const [me] = twoPersons();
  me.say('/coral add coral:torch at:left, back, low size:3 heads');
  return me;
}

function told({ keep }: Person, text: string): string | undefined {
  const given = rowAnswer(coralRecordRows, 'coral-record', text, { nowMs: NOW_MS, keep });
  return given && [given.headline, ...given.facts.map(({ label, value }) => `${label}: ${value}`)].join(' ');
}

function kept({ keep }: Person): readonly string[] {
  const tank = keep.tankInUse();
  return tank === undefined ? [] : keep.corals(tank.id).map(({ coralId }) => coralId);
}

describe('what happens to my corals', () => {
  it('is kept where place and size were said', () => {
    const me = withTorch();
    expect(told(me, 'added a duncan today, 3 heads, left front on the sand')).toMatch(/is coral 2 of Pantry/);
    expect(kept(me)).toHaveLength(2);
  });

  it.each([
    ['i put in a hammer at the back left', /Nothing is kept yet\. Still to say: on the sand, .*heads/],
    ['got a new acan today, on the left', /Nothing is kept yet\. Still to say: front or back/],
  ])('asks for the rest before it keeps: %s', (text, pattern) => {
    const me = withTorch();
    expect(told(me, text)).toMatch(pattern);
    expect(kept(me)).toEqual(['torch-coral']);
  });

  it.each(['my torch died, take it off the list', 'sold the torch', 'lost my torch last night'])(
    'removes nothing unasked: %s',
    (text) => {
      const me = withTorch();
      expect(told(me, text)).toMatch(/^Remove 1: Torch coral from Pantry\? Nothing is removed yet/);
      expect(kept(me)).toEqual(['torch-coral']);
    },
  );

  it.each(['sold 2 heads of the torch', 'gave a friend a frag of my torch'])('keeps the rest: %s', (text) => {
    const me = withTorch();
    expect(told(me, text)).toMatch(/^A part of your torch is gone.*Nothing is changed yet/);
    expect(kept(me)).toEqual(['torch-coral']);
  });

  it('moves to a spot that is whole, else asks', () => {
    const me = withTorch();
    expect(told(me, 'moved the torch to the right, front, on the sand')).toMatch(/is moved/);
    expect(told(me, 'moved my torch')).toMatch(/Nothing is changed yet/);
  });

  it('shows the list', () => expect(told(withTorch(), 'show me my corals')).toMatch(/^Pantry has one coral/));

  it.each([
    ['put a lobo in today, left corner', 'coral add', ['at', 'size']],
    ['moved the hammer to the back left yesterday', 'coral move', ['at']],
    ['sold the duncan', 'coral remove', undefined],
  ] as const)('where others read it says how: %s', (text, command, ask) => {
    const given = rowAnswer(coralRecordRows, 'coral-record', text);
    expect(given?.steps[0]).toContain(`/${command}`);
    expect(given?.steps[0]).toContain('direct message');
    expect(given?.next[0]).toMatchObject({ command, ...(ask === undefined ? {} : { ask }) });
  });

  it('where others read it shows no list, and says where it does', () =>
    expect(
      rowAnswer(coralRecordRows, 'coral-record', 'show me my corals')?.next.map(({ command }) => command),
    ).toContain('coral list'));
});
