import { isDeepStrictEqual } from 'node:util';
import { inputOf } from '../../action.ts';
import { describe, expect, it } from 'vitest';
import { ask } from '../../ask.ts';
import { findCommand } from '../../../commands/index.ts';
import { urgentCommand } from '../../../commands/urgent.ts';
import { hurtAnswer, personAction } from '../../../commands/urgent/hurt.ts';
import { NO_TREATMENT } from '../../../core/care/hurt/card.ts';
import { hurtCard, hurtIds } from '../../../core/care/hurt/cards.ts';
import { FOR_EVERY_HURT, HURT_QUESTION } from '../../../core/care/hurt/question.ts';
import { textsOf } from '../../sentences.ts';
import { CUT, rendered } from '../coral/rendered.ts';
import { beyondShort } from '../short-limits.ts';

const urgent = (input: Record<string, string>) => urgentCommand.run(input, { nowMs: 0 });
const told = (question: string) => ask(question, { nowMs: 0 });

/** A card or the question of a hurt, or a group of them, or the button for people among what is offered first. */
function isPeopleFirst(known: ReadonlySet<string>, text: string): boolean {
  const { headline, next } = told(text);
  return (
    known.has(headline) ||
    headline.endsWith(' which is it?') ||
    isDeepStrictEqual(next[0]?.input, personAction().input) ||
    next.slice(0, 2).some(({ label }) => label === 'A person or pet is hurt')
  );
}

describe.each(hurtIds)('/urgent what:person hurt hurt:%s', (hurt) => {
  it('is shown whole on Discord: the act, every step, that no treatment is given', () => {
    const given = urgent({ what: 'person hurt', hurt });
    const { issues, text } = rendered(given);
    expect(issues).toEqual([]);
    expect(text).not.toMatch(CUT);
    expect(given.headline).toBe(hurtCard(hurt).first);
    expect(given.steps).toEqual(hurtCard(hurt).steps);
    expect(given.dangers).toEqual(hurtCard(hurt).never);
    expect(given.cautions).toEqual([NO_TREATMENT]);
    expect(given.tone).toBe('urgent');
    expect(beyondShort(given)).toEqual([]);
    expect(urgent({ hurt })).toEqual(given);
  });
});

describe('who is hurt, and how', () => {
  const question = urgent({ what: 'person hurt' });

  it('is one question with what holds for every hurt and a button for each', () => {
    expect(question.headline).toBe(HURT_QUESTION);
    expect(question.steps).toEqual(FOR_EVERY_HURT);
    expect(question.steps).toHaveLength(3);
    expect(rendered(question).issues).toEqual([]);
  });

  it('reaches every hurt within two buttons, ten a message', () => {
    const reached = new Set<unknown>();
    for (const shown of question.next) {
      const { command, input } = shown;
      expect(findCommand([command])).toBe(urgentCommand);
      const { next } = urgent(input);
      expect(next.length).toBeLessThanOrEqual(10);
      for (const action of [shown, ...next]) reached.add(inputOf(action)['hurt']);
    }
    expect(question.next.length).toBeLessThanOrEqual(10);
    expect(hurtIds.filter((id) => !reached.has(id))).toEqual([]);
  });

  it('some card of a hurt, or the question, comes to nearly every sentence that tells of one', () => {
    const texts = textsOf(({ kind, calm }) => kind === 'person-hurt' && calm !== true);
    const known = new Set<string>([HURT_QUESTION, ...hurtIds.map((id) => hurtCard(id).first)]);
    const missed = texts.filter((text) => !isPeopleFirst(known, text));
    expect(texts.length).toBeGreaterThan(400);
    // They are among the sentences the weights were made from: this shows the way from there to the card, not the reading.
    expect(missed.length / texts.length, missed.slice(0, 20).join('\n')).toBeLessThan(0.03);
  });

  it('a hurt is answered whatever else was typed', () => {
    const { headline, steps } = hurtAnswer('bite');
    expect(urgent({ what: 'overheating', hurt: 'bite', volume: 'lots' })).toMatchObject({ headline, steps });
  });
});
