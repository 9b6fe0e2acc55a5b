import type { Answer } from '../../answer.ts';

interface Done {
  readonly name: string;
  readonly given: Answer;
}

/** What each of the powders gives that it may be, where none was named; its dangers are those of all of them. */
export function byPowder(done: readonly [Done, ...(readonly Done[])]): Answer {
  const [{ given: first }] = done;
  return {
    ...first,
    headline: 'It depends on the powder.',
    facts: [...done.map(({ name, given }) => ({ label: name, value: given.headline })), ...first.facts],
    isList: true,
    dangers: [...new Set(done.flatMap(({ given }) => given.dangers))],
  };
}
