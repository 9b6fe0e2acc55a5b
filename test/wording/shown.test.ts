import { describe, expect, it } from 'vitest';
import type { NextAction } from '../../commands/answer.ts';
import { commands } from '../../commands/index.ts';
import { nameOf } from '../../commands/named.ts';
import { optionsOf } from '../../commands/options.ts';
import { compounds } from '../../core/dosing/compound.ts';
import { parameter, parameterIds } from '../../core/water/parameter.ts';
import { Problem } from '../../core/problem.ts';
import { inLocale } from '../../core/wording/in-locale.ts';
import { answerTo, realInputs, type RealInput } from '../short/inputs.ts';
import { withOption } from '../with-option.ts';
import { bracketed, isSaid } from './bracketed.ts';

/** What an option is sent that it may refuse. */
const WRONG = [
  'zzz',
  '-5',
  '0',
  '1e9',
  '99999 gal',
  '5',
  '1.2.3',
  '1,350',
  'kh 8 ca 430',
  'x'.repeat(4001),
  '2026-02-30',
  '?',
];

const { answers, problems } = inLocale('en', runAll, bracketed);

describe('in a second language', () => {
  it('every word on a button is from the catalogue, but for names and values', () => {
    const left = answers
      .flatMap(({ next }) => next)
      .filter((one) => !isSaid(one.label) && !isValue(one) && !isOfCard(one));
    expect(shapes(left.map(({ label, command }) => `${command}: ${label}`))).toEqual([]);
    expect(answers.length).toBeGreaterThan(700);
  });

  it('every question back is', () => {
    const asked = answers
      .filter(({ tone, next }) => tone === 'question' && !next.some(isOfCard))
      .map(({ headline }) => headline);
    expect(shapes(asked.filter((headline) => !isSaid(headline)))).toEqual([]);
    expect(asked.length).toBeGreaterThan(20);
  });

  it('every error is, its hint, and the words of its limit', () => {
    const left = problems.flatMap(({ message, hint = '⟦⟧', limit = '1', field }) => [
      ...(isSaid(message) ? [] : [`${field}: ${message}`]),
      ...(isSaid(hint) || described.has(hint) ? [] : [`${field} hint: ${hint}`]),
      ...(isSaid(limit) || /\d/.test(limit) || isOfNames(limit) ? [] : [`${field} limit: ${limit}`]),
    ]);
    expect(shapes(left)).toEqual([]);
    expect(problems.length).toBeGreaterThan(300);
  });
});

/** Real inputs, and every option of every command with values it may refuse. */
function runAll() {
  const real = realInputs();
  const [member] = real;
  if (member === undefined) throw new Error('no inputs');
  const wrong = commands.flatMap((command) =>
    optionsOf(command.options).flatMap(({ name }) =>
      WRONG.map((value) => ({ ...member, typed: withOption(command.example, name, value) })),
    ),
  );
  const bare = commands.map((command) => ({ ...member, typed: `/${nameOf(command)}` }));
  const outcomes = [...real, ...bare, ...wrong].map(outcomeOf);
  return {
    answers: outcomes.flatMap((one) => (one instanceof Problem ? [] : [one])),
    problems: outcomes.flatMap((one) => (one instanceof Problem ? [one] : [])),
  };
}

function outcomeOf({ typed, asking }: RealInput) {
  try {
    return answerTo(typed, asking);
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
}

/** What a card of care asks and offers is the card's own text. */
function isOfCard({ command }: NextAction): boolean {
  return command === 'triage' || command === 'urgent';
}

/** What each option is, as the platforms register it. */
const described = new Set(
  commands.flatMap((command) => optionsOf(command.options).map(({ description }) => description)),
);

/** What /water moved can be told to rule out, as it is typed. */
const causes = ['dosing', 'changes', 'feeding', 'top-off', 'hour'];

/** Names of parameters, salts, options or choices, and nothing else. */
function isOfNames(limit: string): boolean {
  const names = new Set([
    ...parameterIds.map((id) => parameter(id).label),
    ...compounds.map(({ name }) => name),
    ...causes,
    ...commands.flatMap((command) =>
      optionsOf(command.options).flatMap(({ name, choices = [] }) => [name, ...choices]),
    ),
  ]);
  return limit.split(', ').every((name) => names.has(name));
}

/** A button whose words are what it sends, or a name. */
function isValue({ label, input }: NextAction): boolean {
  const sent = Object.values(input).map((value) => String(value).toLowerCase());
  return sent.includes(label.toLowerCase());
}

function shapes(texts: readonly string[]): readonly string[] {
  return [...new Set(texts.map((text) => text.replaceAll(/\d+/g, '9')))].toSorted();
}
