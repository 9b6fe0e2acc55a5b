import { describe, expect, it } from 'vitest';
import type { Answer } from '../../commands/answer.ts';
import { localAnswer } from '../../commands/local-answer.ts';
import { shortForm } from '../../commands/short.ts';
import { realAnswers } from './inputs.ts';

const answers = realAnswers().map(({ answer }) => answer);

describe.each(['de', 'pt-BR'])('real answers for %s', (locale) => {
  it('differ in the mark of decimals and the writing of days, and in nothing else', () => {
    for (const given of answers) {
      const plain = dayless(given);
      const shown = dayless(localAnswer(given, locale));
      expect(shown.length, plain).toBe(plain.length);
      const changed = [...plain].flatMap((sign, at) =>
        sign === shown[at] ? [] : [sign + (shown[at] ?? '')],
      );
      expect(new Set([...changed, '.,']), plain).toEqual(new Set(['.,']));
    }
  });

  it('keep sources, buttons and the command they stand for', () => {
    for (const given of answers) {
      const { sources, echo, next } = localAnswer(given, locale);
      expect({ sources, echo }).toEqual({ sources: given.sources, echo: given.echo });
      expect(next.map(({ label, ...what }) => [label === '', what])).toEqual(
        given.next.map(({ label, ...what }) => [label === '', what]),
      );
    }
  });

  it('have no decimal point left before a unit in their short form', () => {
    const left = answers.flatMap((given) => {
      const { headline, facts, steps } = shortForm(localAnswer(given, locale));
      const text = [headline, ...facts.map(({ value }) => value), ...steps].join('\n');
      return text.match(/(?<![\w:.])(?!1\.0[0-4]\d)\d+\.\d+ (?:dKH|meq|mg|g|L|gal|%|ppt|°|cm|in)\b/g) ?? [];
    });
    expect(left).toEqual([]);
  });
});

/** What an answer says, without the lines that may tell a day. */
function dayless({ headline, steps, read }: Answer): string {
  return [headline, ...steps, ...read].filter((line) => !/\d{4}/.test(line)).join('\n');
}
