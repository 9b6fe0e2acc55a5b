import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Call } from '../../../../bot/discord/asked/call.ts';
import type { Rendered } from '../../../../bot/discord/message/container.ts';
import type { Drawn } from '../../../../bot/discord/message/drawn.ts';
import { holdsNothing } from '../../../../bot/discord/message/holder.ts';
import type { Holder } from '../../../../bot/discord/message/holder.ts';
import { accents } from '../../../../bot/discord/message/palette.ts';
import { render, renderLong, renderPage } from '../../../../bot/discord/message/render.ts';
import { answer } from '../../../../commands/answer.ts';
import type { Answer } from '../../../../commands/answer.ts';
import { sources } from '../../../../core/sources.ts';
import type { SourceCode } from '../../../../core/sources.ts';
import { checkMessage } from '../../../discord/standin/check-message.ts';
import { displayedText, everyComponent } from '../../../discord/standin/component.ts';
import { spot } from '../../../discord/standin/spot.ts';
import type { Issue } from '../../../discord/standin/spot.ts';
import { pretended } from '../../../action.ts';

function textsOf(what: Drawn, hold?: Holder): readonly string[] {
  return displayedText(render(what, hold).body.components);
}

/** Holds in a list: the n-th under "h<n>". */
function holds(): Holder & { readonly calls: readonly Call[] } {
  const calls: Call[] = [];
  let count = 0;
  const next = (): string => `h${(count += 1)}`;
  return {
    calls,
    answer: next,
    call: (call) => {
      const { command, input } = call;
      calls.push({ ...call, command, input });
      return next();
    },
  };
}

function buttonsOf(rendered: Rendered | undefined): readonly (readonly [string, string])[] {
  return everyComponent(rendered?.body.components)
    .filter((each) => each['custom_id'] !== undefined)
    .map((each) => [String(each['custom_id']), String(each['label'])] as const);
}

function issuesOf(what: Drawn, { body, files } = render(what)): readonly Issue[] {
  const issues: Issue[] = [];
  const parts = files.map(({ name }, id) => ({
    field: `files[${id}]`,
    name,
    contentType: '',
    data: new Uint8Array(1),
  }));
  checkMessage(spot(issues), { ...body }, { way: 'reply', files: parts });
  return issues;
}

const lines = (count: number, text: string): string[] =>
  Array.from({ length: count }, (_, at) => `${text} ${at + 1}`);

describe('render', () => {
  const whole = answer({
    headline: 'Dose 6.4 g.',
    echo: '/dose amount of:alkalinity',
    read: ['75 US gal'],
    unused: ['a red fish'],
    facts: [{ label: 'alkalinity', value: '7.2 dKH', verdict: 'low' }],
    steps: ['Weigh it.', 'Test again.'],
    working: ['283.9 L * 0.4 = 6.4 g'],
    dangers: ['Wear goggles.'],
    cautions: ['Use the net water.'],
    sources: ['practice'],
  });

  it('lays the short form out: what to do first, what it rests on last', () => {
    expect(textsOf(whole, holds())).toEqual([
      '### Dose 6.4 g.',
      '- alkalinity: 7.2 dKH (low)',
      '1. Weigh it.\n2. Test again.',
      '**Take care**\n- Wear goggles.',
      ['-# Read: 75 US gal; not used: a red fish', '-# Rests on: common practice'].join('\n'),
    ]);
  });

  it('lays the long form out: everything, results above what was read', () => {
    const texts = displayedText(renderLong(whole).body.components);
    expect(texts).toEqual([
      '### Dose 6.4 g.',
      '- alkalinity: 7.2 dKH (low)',
      '**Do this**\n1. Weigh it.\n2. Test again.',
      '**Take care**\n- Wear goggles.',
      '**Mind as well**\n- Use the net water.',
      '**What I read**\n- 75 US gal',
      '**Not used**\n- a red fish',
      '**The same as a command**\n-# /dose amount of:alkalinity',
      String.raw`**How it adds up**` + '\n' + String.raw`-# 283.9 L \* 0.4 = 6.4 g`,
      `**Sources**\n-# ${sources.practice.title}`,
    ]);
    expect(textsOf(whole, holdsNothing), 'where nothing can be held, nothing is left out').toEqual(texts);
  });

  it.each([
    ['urgent', '-# Urgent'],
    ['question', '-# One question'],
    ['plain', undefined],
  ] as const)('tells by a colour and a word that it is %s', (tone, word) => {
    const { body } = render(answer({ headline: 'x', tone }));
    expect(body.components[0]?.accent_color).toBe(accents[tone]);
    expect(displayedText(body.components)[1]).toBe(word);
  });

  it('never leaves out a danger, a notice or a note', () => {
    const dangers = lines(3, 'It burns eyes');
    const notes = [{ label: 'posted by', value: 'a helper', personId: '1100000000000000012' }];
    const what = { ...answer({ headline: 'x', dangers, notices: ['Your sitter is gone.'] }), notes };
    const text = textsOf(what, holds()).join('\n');
    for (const danger of dangers) expect(text).toContain(danger);
    expect(text).toContain('Your sitter is gone.');
    expect(text).toContain('-# posted by: a helper <@1100000000000000012>');
  });

  it('is one container with the flag of Components V2 and no mentions', () => {
    const rendered = render(answer({ headline: 'x' }));
    expect(rendered.body.components).toHaveLength(1);
    expect(rendered.body.flags).toBe(1 << 15);
    expect(rendered.body.allowed_mentions.parse).toEqual([]);
  });

  it('puts at most four next actions on buttons, each once, those too long for a custom id under a held one', () => {
    const long = { label: 'Long', command: 'dose amount' as const, input: { of: 'x'.repeat(100) } };
    const short = { label: 'Short', command: 'dose amount' as const, input: { of: 'calcium' } };
    const others = lines(4, 'mg').map((of) => ({
      label: of,
      command: 'dose amount' as const,
      input: { of },
    }));
    const hold = holds();
    expect(buttonsOf(render(answer({ headline: 'x', next: [short, short, long, ...others] }), hold))).toEqual(
      [
        ['run:dose amount?of=calcium', 'Short'],
        ['held:h2', 'Long'],
        ['run:dose amount?of=mg 1', 'mg 1'],
        ['why:h1', 'Working and sources'],
      ],
    );
    expect(hold.calls).toEqual([long]);
    const few = answer({ headline: 'x', next: [short, long] });
    expect(buttonsOf(render(few, holds())).map(([id]) => id)).toEqual([
      'run:dose amount?of=calcium',
      'held:h1',
    ]);
  });

  it('offers the long form where that holds more, and nothing where it does not', () => {
    const plain = answer({ headline: 'x', read: ['75 US gal'], steps: ['Test.'], dangers: ['It burns.'] });
    const more: readonly Partial<Answer>[] = [
      { working: ['1 + 1 = 2'] },
      { cautions: ['Mind.'] },
      { sources: ['practice'] },
      { echo: '/help' },
      { read: lines(9, 'a long assumption about the water') },
      { steps: lines(4, 'Test.') },
      { facts: lines(4, 'x').map((label) => ({ label, value: '1' })) },
      { table: { head: ['day', 'x'.repeat(30)], rows: [['1', '2']] } },
    ];
    expect(buttonsOf(render(plain, holds()))).toEqual([]);
    for (const each of more) {
      const ids = buttonsOf(render({ ...plain, ...each }, holds())).map(([id]) => id);
      expect(ids, JSON.stringify(each)).toEqual(['why:h1']);
    }
  });

  it('shows a list a page at a time', () => {
    const facts = lines(19, 'item').map((label) => ({ label, value: '1' }));
    const list = answer({ headline: 'All.', facts, isList: true, working: ['w'] });
    const first = render(list, holds());
    expect(buttonsOf(first).at(-1)).toEqual(['more:h1:2', 'More (2 of 3)']);
    const rest = [2, 3].map((page) => renderPage(list, 'h1', page, holds()));
    expect(buttonsOf(rest[0]).at(-1)).toEqual(['more:h1:3', 'More (3 of 3)']);
    expect(buttonsOf(rest[1])).toEqual([['why:h1', 'Working and sources']]);
    const pages = [first, ...rest].map((each) => displayedText(each?.body.components).join('\n'));
    expect(pages.map((text) => text.match(/- item \d+: 1/g)?.length)).toEqual([8, 8, 3]);
    for (const { label } of facts) expect(pages.join('\n')).toContain(`- ${label}: 1`);
  });

  it('takes a headline of 4,000 characters', () => {
    expect(issuesOf(answer({ headline: '*'.repeat(4000), steps: ['Test again.'] }))).toEqual([]);
    expect(textsOf(answer({ headline: '*'.repeat(4000), steps: ['Test again.'] })).at(-1)).toContain(
      'Test again.',
    );
  });

  it('counts the steps it leaves out, keeps every caution, and keeps steps before working', () => {
    const what = answer({
      headline: 'Sixty days.',
      steps: lines(60, 'Dissolve 6.4 g in fresh water and pour it where the flow is strong, day'),
      working: lines(40, '283.9 L * 0.4 meq/L * 53 mg/meq = 6.4 g for day'),
      cautions: lines(12, 'Keep it away from eyes and children'),
      read: lines(30, 'Something read'),
    });
    const texts = textsOf(what);
    const steps = texts.find((text) => text.startsWith('**Do this**')) ?? '';
    const shown = steps.split('\n').filter((line) => /^\d+\. /.test(line)).length;
    expect(issuesOf(what)).toEqual([]);
    expect(shown).toBeGreaterThan(30);
    expect(steps).toContain(`and ${60 - shown} more`);
    for (const caution of what.cautions) expect(texts.join('\n')).toContain(caution);
    expect(texts.find((text) => text.startsWith('**How it adds up**'))).toContain('and 40 more');
  });

  it('adds instants and names to facts after the escaped text, whatever is shortened', () => {
    const instant = { atMs: 1_767_430_800_999, zone: 'UTC' };
    const facts = [
      { label: 'next', value: '*on* Saturday 2026-01-03 09:00', verdict: 'late', instant },
      { label: 'sitter', value: '@everyone', personId: '1100000000000000012' },
      { label: 'forged', value: 'x', personId: '1>', channelId: 'here', roleId: '' },
      { label: 'never', value: 'y', instant: { atMs: Number.NaN, zone: 'UTC' } },
      { label: 'long', value: 'z'.repeat(3000), personId: '1100000000000000012' },
    ];
    const [, text = ''] = textsOf(answer({ headline: 'x', facts }));
    const [next, sitter, forged, never, long = ''] = text.split('\n');
    expect(next).toBe(String.raw`- next: \*on\* <t:1767430800:f> (late)`);
    expect(sitter).toBe('- sitter: @\u200beveryone <@1100000000000000012>');
    expect(forged).toBe('- forged: x');
    expect(never).toBe('- never: y');
    expect(long).toMatch(/zz… <@1100000000000000012>$/);
    const many = Array.from({ length: 60 }, () => facts[4] ?? { label: '', value: '' });
    const what = answer({ headline: 'x', facts: many, cautions: lines(4, 'y'.repeat(300)) });
    const shown = textsOf(what).find((each) => each.includes('<@')) ?? '';
    expect(issuesOf(what)).toEqual([]);
    for (const line of shown.split('\n')) {
      expect(line).toMatch(/<@1100000000000000012>$|^-# and \d+ more$/);
    }
  });

  it('shortens an alt text to what Discord takes', () => {
    const picture = { name: 'trend', svg: '<svg/>', alt: 'rising '.repeat(400) };
    const drawn = { ...answer({ headline: 'x', pictures: [picture] }), pngs: [new Uint8Array(1)] };
    expect(issuesOf(drawn)).toEqual([]);
    expect(render(drawn).body.attachments?.[0]?.description).toHaveLength(1024);
  });

  it('shortens cautions rather than drop one', () => {
    const what = answer({ headline: 'x', cautions: lines(60, 'y'.repeat(300)), steps: ['z'] });
    const cautions = textsOf(what).find((text) => text.startsWith('**Mind as well**')) ?? '';
    expect(issuesOf(what)).toEqual([]);
    expect(cautions.split('\n')).toHaveLength(61);
  });

  it('stays inside the limits for any answer', () => {
    const text = fc.string({ unit: 'binary', minLength: 1, maxLength: 400 });
    const many = fc.array(text, { maxLength: 70 });
    const input = fc.dictionary(fc.constantFrom('of', 'now', 'with'), text);
    const next = fc
      .record({
        label: fc.string({ minLength: 1, maxLength: 200 }),
        command: text,
        input,
        ask: fc.array(fc.constantFrom('of', 'now'), { maxLength: 7 }),
      })
      .map(pretended);
    const any = fc.record({
      headline: fc.string({ minLength: 1, maxLength: 5000 }),
      read: many,
      facts: fc.array(
        fc.record(
          {
            label: text,
            value: text,
            verdict: text,
            instant: fc.record({ atMs: fc.integer({ min: -9e15, max: 9e15 }), zone: fc.constant('UTC') }),
            personId: fc.stringMatching(/^\d{17,20}$/),
          },
          { requiredKeys: ['label', 'value'] },
        ),
        { maxLength: 70 },
      ),
      steps: many,
      working: many,
      cautions: fc.array(text, { maxLength: 70 }),
      dangers: fc.array(text, { maxLength: 70 }),
      unused: many,
      isList: fc.boolean(),
      tone: fc.constantFrom(...(['urgent', 'question', 'plain'] as const)),
      sources: fc.constant(Object.keys(sources) as SourceCode[]),
      next: fc.array(next, { maxLength: 15 }),
      table: fc.record({ head: many, rows: fc.array(fc.array(text, { maxLength: 6 }), { maxLength: 70 }) }),
      pictures: fc.array(
        fc.record({ name: text, svg: text, alt: fc.string({ unit: 'binary', maxLength: 1500 }) }),
        { maxLength: 3 },
      ),
      file: fc.record({ name: text, text }),
    });
    fc.assert(
      fc.property(any, (what) => {
        expect(issuesOf(what)).toEqual([]);
        for (const each of [what, { ...what, pngs: what.pictures.map(() => new Uint8Array(1)) }]) {
          expect(issuesOf(each, render(each, holds()))).toEqual([]);
          expect(issuesOf(each, renderPage(each, 'h0', 2, holds()))).toEqual([]);
          expect(issuesOf(each, renderLong(each, holds()))).toEqual([]);
        }
      }),
      { numRuns: 60 },
    );
  });
});
