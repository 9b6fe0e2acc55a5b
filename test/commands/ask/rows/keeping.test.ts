import { describe, expect, it, test } from 'vitest';
import { keepingRows } from '../../../../commands/ask/rows/keeping.ts';
import { talkRows } from '../../../../commands/ask/rows/talk.ts';
import { primer } from '../../../../core/care/primers/cards.ts';
import type { PrimerId } from '../../../../core/care/primers/primer.ts';
import type { Kind } from '../../../../core/language/kinds.ts';
import { rowAnswer } from './asked.ts';

const keep = (kind: Kind, text: string) => rowAnswer(keepingRows, kind, text);

describe('a tank that is cycling', () => {
  it.each([
    ['is my cycle done, amm 0, nitrite 0, nitrate 20', 'Perhaps: both read none once'],
    ['cycling since 9 days, ammonia 2, nitrite 0', 'Not stuck: on day 9 this is the usual course'],
    [
      '12 days in, ammonia 1, nitrite 5, no nitrate yet. are we stuck or is this how its meant to look? nothing alive in there',
      'Not stuck: on day 12',
    ],
    ['5 weeks of cycling, ammonia 1, nitrite 5', 'Slow: by day 35'],
    ['new tank, ammonia 1, nitrite 5', 'the middle of a cycle'],
    ['day 3 ammonia 2 nitrite 0, day 9 ammonia 3 nitrite 0', 'ammonia is not falling'],
    ['day 3 ammonia 4 nitrite 0, day 9 ammonia 1 nitrite 2, day 15 ammonia 0 nitrite 0.5', 'Nearly there'],
    ['what is the cycle', primer('cycle').headline],
  ])('%s: %s', (text, words) => {
    expect(keep('cycle', text)?.headline).toContain(words);
  });

  test('one test is said to tell nothing of rise or fall', () =>
    expect(keep('cycle', 'new tank, ammonia 1, nitrite 5')?.cautions[0]).toMatch(/^One test cannot tell/));

  test('every test is a line, and nitrate beside nitrite is not trusted', () => {
    const given = keep(
      'cycle',
      'new tank: ammonia 1 nitrite 5 nitrate 80, then ammonia 0 nitrite 2 nitrate 40',
    );
    expect(given?.table?.rows).toHaveLength(2);
    expect(given?.facts[0]?.value).toContain('do not trust it: nitrite makes nitrate kits read far too high');
  });

  test('ammonia with animals in is an emergency a tap away', () => {
    const given = keep('cycle', 'fish in cycle, ammonia 1, nitrite 0.5');
    expect(given?.next.map(({ label }) => label)).toContain('Animals are in already');
  });
});

const primers: readonly (readonly [Kind, string, PrimerId])[] = [
  ['first-stock', 'which coral first', 'first corals'],
  ['holiday', 'going away for two weeks, what about the tank', 'holiday'],
  ['moving', 'we move house in march with the 300 liter tank', 'moving house'],
  ['equipment', 'do i need a gfci for my tank', 'water and mains'],
  ['equipment', 'is a float switch enough for the ato', 'top-off'],
  ['test-kit', 'how do i use the alk test kit right', 'test kits'],
];

test.each(primers)('%s: %s', (kind, text, id) => {
  expect(keep(kind, text)?.headline).toBe(primer(id).headline);
});

test('what to add when', () => {
  expect(keep('first-stock', 'when can i add snails')?.headline).toContain('First the cycle');
});

test.each(['how often should i test alk', 'which tests do i need weekly'])('%s', (text) => {
  expect(keep('test-kit', text)?.headline).toContain('Not everything every day');
});

test('what no card on tests speaks of is left to the others', () => {
  expect(keep('test-kit', 'what does ammonia even smell like')).toBeUndefined();
});

test('gear nothing is known of is left to the others', () => {
  expect(keep('equipment', 'what size skimmer for 400 liters')).toBeUndefined();
});

describe('talk', () => {
  it.each([
    ['hello there', 'Hello!'],
    ['what can you do', 'Hello!'],
    ['Good day. Club new here. What you can?', 'Hello!'],
    ['hi im new here, what do you do?', 'Hello!'],
    ['new member, first day. what sort of questions do you answer', 'Hello!'],
    ['new here, can you help me to start a tank', 'Welcome!'],
    ['nobody died!! ty for staying up', 'You are welcome'],
    ['sorry for the sos last night, false alarm, thermometer battery was flat', 'Good to hear'],
    ['panic over, he was only asleep in the corner, night night', 'Good to hear'],
    [
      'they fed my fish while i was off and i expected soup. instead: crystal. just wanted to tell somebody',
      'All right',
    ],
    ['thanks a lot', 'You are welcome'],
    ['ok great', 'All right'],
    ['i am new here and want a tank', 'Welcome!'],
    ['hola, mi pez esta muriendo', 'only English'],
    ['https://example.org/x.jpg', 'no pictures and no links'],
  ])('%s: %s', (text, words) => {
    expect(rowAnswer(talkRows, 'greeting', text)?.headline).toContain(words);
  });

  test('off the subject, with people a tap away', () => {
    const given = rowAnswer(talkRows, 'off-topic', 'who won the game last night');
    expect(given?.headline).toContain('I know reef tanks and nothing else');
    expect(given?.next[0]?.label).toBe('A person is hurt or ill');
  });
});
