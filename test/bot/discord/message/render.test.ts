import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { render } from '../../../../bot/discord/message/render.ts';
import type { Drawn } from '../../../../bot/discord/message/render.ts';
import { answer } from '../../../../commands/answer.ts';
import type { Answer } from '../../../../commands/answer.ts';
import { sources } from '../../../../core/sources.ts';
import type { SourceCode } from '../../../../core/sources.ts';
import { checkMessage } from '../../../discord/standin/check-message.ts';
import { displayedText, everyComponent } from '../../../discord/standin/component.ts';
import { spot } from '../../../discord/standin/spot.ts';
import type { Issue } from '../../../discord/standin/spot.ts';
import { pretended } from '../../../action.ts';

function textsOf(what: Answer): readonly string[] {
  return displayedText(render(what).body.components);
}

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

const lines = (count: number, text: string): string[] =>
  Array.from({ length: count }, (_, at) => `${text} ${at + 1}`);

describe('render', () => {
  it('lays an answer out in the order of the layout words', () => {
    const texts = textsOf(
      answer({
        headline: 'Dose 6.4 g.',
        read: ['75 US gal'],
        facts: [{ label: 'alkalinity', value: '7.2 dKH', verdict: 'low' }],
        steps: ['Weigh it.', 'Test again.'],
        working: ['283.9 L * 0.4 = 6.4 g'],
        cautions: ['Wear gloves.'],
        sources: ['practice'],
      }),
    );
    expect(texts).toEqual([
      '### Dose 6.4 g.',
      '**What I read**\n- 75 US gal',
      '- alkalinity: 7.2 dKH (low)',
      '**Do this**\n1. Weigh it.\n2. Test again.',
      String.raw`**How it adds up**` + '\n' + String.raw`-# 283.9 L \* 0.4 = 6.4 g`,
      '**Take care**\n- Wear gloves.',
      `**Sources**\n-# ${sources.practice.title}`,
    ]);
  });

  it('is one container with the flag of Components V2 and no mentions', () => {
    const rendered = render(answer({ headline: 'x' }));
    expect(rendered.body.components).toHaveLength(1);
    expect(rendered.body.flags).toBe(1 << 15);
    expect(rendered.body.allowed_mentions.parse).toEqual([]);
  });

  it('puts next actions on buttons, and those too long for a custom id in text', () => {
    const long = { label: 'Long', command: 'dose amount' as const, input: { of: 'x'.repeat(100) } };
    const short = { label: 'Short', command: 'dose amount' as const, input: { of: 'calcium' } };
    const rendered = render(answer({ headline: 'x', next: [short, short, long] }));
    const ids = everyComponent(rendered.body.components).map((each) => each['custom_id']);
    expect(ids.filter(Boolean)).toEqual(['run:dose amount?of=calcium']);
    expect(displayedText(rendered.body.components).at(-1)).toContain(
      `Long: /dose amount of:${'x'.repeat(100)}`,
    );
    expect(displayedText(rendered.body.components).join('')).not.toContain('Short');
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
    const facts = [
      { label: 'next', value: '*Sat* 09:00', verdict: 'late', atMs: 1_767_430_800_999 },
      { label: 'sitter', value: '@everyone', personId: '1100000000000000012' },
      { label: 'forged', value: 'x', personId: '1>', channelId: 'here', roleId: '' },
      { label: 'never', value: 'y', atMs: Number.NaN },
      { label: 'long', value: 'z'.repeat(3000), atMs: -1000, personId: '1100000000000000012' },
    ];
    const [, text = ''] = textsOf(answer({ headline: 'x', facts }));
    const [next, sitter, forged, never, long = ''] = text.split('\n');
    expect(next).toBe(String.raw`- next: \*Sat\* 09:00 (late) <t:1767430800:F> (<t:1767430800:R>)`);
    expect(sitter).toBe('- sitter: @\u200beveryone <@1100000000000000012>');
    expect(forged).toBe('- forged: x');
    expect(never).toBe('- never: y');
    expect(long).toMatch(/zz… <t:-1:F> \(<t:-1:R>\) <@1100000000000000012>$/);
    const many = Array.from({ length: 60 }, () => facts[4] ?? { label: '', value: '' });
    const what = answer({ headline: 'x', facts: many, cautions: lines(4, 'y'.repeat(300)) });
    const shown = textsOf(what).find((each) => each.includes('<t:')) ?? '';
    expect(issuesOf(what)).toEqual([]);
    for (const line of shown.split('\n')) {
      expect(line).toMatch(/<@1100000000000000012>$|^-# and \d+ more$/);
    }
  });

  it('shortens an alt text to what Discord takes', () => {
    const picture = { name: 'trend', svg: '<svg/>', alt: 'rising '.repeat(400) };
    const drawn = { ...answer({ headline: 'x', picture }), png: new Uint8Array(1) };
    expect(issuesOf(drawn)).toEqual([]);
    expect(render(drawn).body.attachments?.[0]?.description).toHaveLength(1024);
  });

  it('shortens cautions rather than drop one', () => {
    const what = answer({ headline: 'x', cautions: lines(60, 'y'.repeat(300)), steps: ['z'] });
    const cautions = textsOf(what).find((text) => text.startsWith('**Take care**')) ?? '';
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
            atMs: fc.double(),
            personId: fc.stringMatching(/^\d{17,20}$/),
          },
          { requiredKeys: ['label', 'value'] },
        ),
        { maxLength: 70 },
      ),
      steps: many,
      working: many,
      cautions: fc.array(text, { maxLength: 70 }),
      sources: fc.constant(Object.keys(sources) as SourceCode[]),
      next: fc.array(next, { maxLength: 15 }),
      table: fc.record({ head: many, rows: fc.array(fc.array(text, { maxLength: 6 }), { maxLength: 70 }) }),
      picture: fc.record({ name: text, svg: text, alt: fc.string({ unit: 'binary', maxLength: 1500 }) }),
      file: fc.record({ name: text, text }),
    });
    fc.assert(
      fc.property(any, (what) => {
        expect(issuesOf(what)).toEqual([]);
        expect(issuesOf({ ...what, png: new Uint8Array(1) })).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
});
