import { describe, expect, it } from 'vitest';
import { toPng } from '../../bot/png.ts';
import type { Drawn } from '../../bot/discord/message/drawn.ts';
import { render } from '../../bot/discord/message/render.ts';
import { ask } from '../ask.ts';
import { runWithDefaults } from '../../commands/defaults.ts';
import { findCommand } from '../../commands/index.ts';
import { primerCommand } from '../../commands/primer.ts';
import { primerIds } from '../../core/care/primers/primer.ts';
import { sources } from '../../core/sources.ts';
import { checkMessage } from '../discord/standin/check-message.ts';
import { displayedText } from '../discord/standin/component.ts';
import { spot, type Issue } from '../discord/standin/spot.ts';
import { textOf } from './text.ts';

const context = { nowMs: 0 };

function issuesOf(what: Drawn): readonly Issue[] {
  const issues: Issue[] = [];
  const { body, files } = render(what);
  const parts = files.map(({ name }, id) => ({
    field: `files[${id}]`,
    name,
    contentType: '',
    data: new Uint8Array(1),
  }));
  checkMessage(spot(issues), { ...body }, { way: 'reply', files: parts });
  return issues;
}

describe.each(primerIds.map((id) => ({ id })))('/primer card:$id', ({ id }) => {
  const card = primerCommand.run({ card: id }, context);

  it('fits a message with and without its picture, nothing left out', async () => {
    expect(issuesOf(card)).toEqual([]);
    const png = card.pictures?.[0] === undefined ? undefined : await toPng(card.pictures?.[0].svg);
    const drawn = png === undefined ? card : { ...card, png };
    expect(issuesOf(drawn)).toEqual([]);
    const text = displayedText(render(drawn).body.components).join('\n');
    expect(text).not.toMatch(/and \d+ more/);
    for (const code of card.sources)
      expect(text.replaceAll('\\', '')).toContain(sources[code].title.slice(0, 20));
  });

  it('leads only to cards and commands that answer', () => {
    expect(card.next.length).toBeGreaterThan(1);
    for (const { command, input } of card.next) {
      const target = findCommand(command.split(' '));
      if (target === undefined) throw new Error(`no command ${command}`);
      expect(runWithDefaults(target, input, context).headline).toMatch(/[a-z]/);
    }
  });

  it('puts every link on a button', () => {
    expect(displayedText(render(card).body.components).join('')).not.toContain('**Next**');
  });
});

it('lists every card without a name', () => {
  const { table, next } = primerCommand.run({}, context);
  expect(table?.rows).toEqual(primerIds.map((id) => [id]));
  expect(next.length).toBeGreaterThan(3);
  expect(issuesOf(primerCommand.run({}, context))).toEqual([]);
});

describe('plain words', () => {
  const table: readonly [string, string][] = [
    ['what is alkalinity', 'alkalinity and calcium'],
    ["what's alk?", 'alkalinity and calcium'],
    ['explain PAR', 'PAR'],
    ['explain par please', 'PAR'],
    ['how should i acclimate', 'acclimation'],
    ['what is limewater', 'limewater'],
    ['whats kalk', 'limewater'],
    ['what is kalkwasser?', 'limewater'],
    ['what is palytoxin', 'palytoxin'],
    ['tell me about quarantine', 'dips and quarantine'],
    ['how do I use a refractometer', 'salinity'],
    ['how to mix salt', 'mixing salt water'],
    ['how do I go about choosing corals', 'first corals'],
    ['explain nitrate', 'nutrients'],
    ['how does top off work', 'top-off'],
    ['hi, what is meq', 'units'],
    ['how do water changes work', 'water changes'],
    ['why does flow matter', 'flow'],
    ['what is magnesium for', 'magnesium'],
  ];
  it.each(table)('%s -> %s', (text, id) => {
    expect(ask(text, context).headline).toBe(primerCommand.run({ card: id }, context).headline);
  });

  /** A particular question has the card of its own, by its title, with what of the subject it asks. */
  const particular: readonly [string, string, RegExp][] = [
    ['how long does cycling take', 'How long does it take?', /4 to 6 weeks[^]*none for two days/],
    [
      'how do I acclimate a new coral',
      'New corals: what in which order',
      /^Float the closed bag 15 to 20 minutes/,
    ],
    [
      'what is a drip loop',
      'Mains: RCD, plugs, drip loops',
      /Drip loop: the cable hangs lower than its socket, so that drops fall off before the plug/,
    ],
    [
      'what does aquacultured mean',
      'Maricultured, aquacultured: meaning',
      /Aquacultured: cut and grown in tanks/,
    ],
    [
      'what should i prepare before a vacation',
      'Going away: what to prepare',
      /Change nothing new in the last two weeks[^]*Write one page/,
    ],
    [
      'how do i go about moving house with a reef',
      'Moving house: order of the day',
      /glass empty, in one day\. Out: water, corals, rock, fish, sand\.[^]*Power off before hands go in/,
    ],
  ];
  it.each(particular)('%s -> %s', (text, about, fact) => {
    const given = ask(text, context);
    expect(given.headline).toBe(primerCommand.run({ about }, context).headline);
    expect(textOf(given)).toMatch(fact);
  });

  /** Known miss: unsure between two cards, offers both. */
  const unsure = ['how do i prepare the tank for a vacation', 'Going away: what to prepare'] as const;
  it.fails.each([unsure])('%s -> %s', (text, about) =>
    expect(ask(text, context).headline).toBe(primerCommand.run({ about }, context).headline),
  );
  it.each([unsure])('%s: offers %s', (text, about) =>
    expect(ask(text, context).next[0]).toMatchObject({ command: 'primer', input: { about } }),
  );

  /** Known misses: the whole subject is asked about, and particular questions of it are offered. */
  const misread: readonly [string, string][] = [
    ['how does the cycle work', 'cycle'],
    ['how do i dip a coral', 'dips and quarantine'],
  ];
  it.fails.each(misread)('%s -> %s', (text, id) => {
    expect(ask(text, context).headline).toBe(primerCommand.run({ card: id }, context).headline);
  });

  /** A question with numbers, or about something particular, is not a question about the card. */
  it.each([
    'what is 8 dkh in meq',
    'how much baking soda to raise kh by 2 in 40 gallons',
    'how do i raise alk 7.2 to 8.4 in 75 gal with soda ash',
    'my alk is 6.5 whats up',
    'what PAR for 200 par at 8 hours',
    'nitrate 80, 55g, 20% a week, how many to 10',
    'I love water changes',
    'alkalinity dropped again',
    'metallic taste after fragging zoas',
  ])('is no card: %s', (text) => {
    const { headline } = ask(text, context);
    for (const id of primerIds) expect(headline).not.toBe(primerCommand.run({ card: id }, context).headline);
  });
});
