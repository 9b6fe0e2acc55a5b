import { inputOf } from '../../action.ts';
import { describe, expect, it } from 'vitest';
import { ask } from '../../ask.ts';
import { findCommand } from '../../../commands/index.ts';
import { urgentCommand } from '../../../commands/urgent.ts';
import { hurtAnswer } from '../../../commands/urgent/hurt.ts';
import { NO_TREATMENT } from '../../../core/care/hurt/card.ts';
import { hurtCard, hurtIds } from '../../../core/care/hurt/cards.ts';
import { FOR_EVERY_HURT, HURT_QUESTION } from '../../../core/care/hurt/question.ts';
import { hurriedHurts } from '../../cases/alarms-2.ts';
import { hurtAlarms } from '../../cases/alarms.ts';
import { hurts, unclearHurts } from '../../cases/hurts.ts';
import { CUT, rendered } from '../coral/rendered.ts';

const urgent = (input: Record<string, string>) => urgentCommand.run(input, { nowMs: 0 });
const told = (question: string) => ask(question, { nowMs: 0 });

describe.each(hurtIds)('/urgent what:person hurt hurt:%s', (hurt) => {
  it('is shown whole on Discord: the act, every step, that no treatment is given', () => {
    const given = urgent({ what: 'person hurt', hurt });
    const { issues, text } = rendered(given);
    expect(issues).toEqual([]);
    expect(text).not.toMatch(CUT);
    expect(given.headline).toBe(hurtCard(hurt).first);
    expect(given.steps).toEqual(hurtCard(hurt).steps);
    expect(given.cautions.at(-1)).toBe(NO_TREATMENT);
    expect(urgent({ hurt })).toEqual(given);
  });

  it.each(hurts[hurt])('comes first for: %s', (sentence) =>
    expect(told(sentence).headline).toBe(hurtCard(hurt).first),
  );
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

  it.each(unclearHurts)('is asked for: %s', (sentence) =>
    expect(told(sentence).headline).toBe(HURT_QUESTION),
  );

  it.each([...hurtAlarms, ...hurriedHurts])('some card of a hurt, or the question: %s', (sentence) =>
    expect([HURT_QUESTION, ...hurtIds.map((id) => hurtCard(id).first)]).toContain(told(sentence).headline),
  );

  it('a hurt is answered whatever else was typed', () => {
    const { headline, steps } = hurtAnswer('bite');
    expect(urgent({ what: 'overheating', hurt: 'bite', volume: 'lots' })).toMatchObject({ headline, steps });
  });
});
