import type { CoralEntry } from '../../core/corals/entry.ts';
import { findCorals, type Found } from '../../core/corals/find.ts';
import { fittingOf } from '../../core/corals/say.ts';
import { Problem } from '../../core/problem.ts';
import { say } from '../../core/wording/say.ts';

/** A coral of the guide, and what is to be said of the name it was asked by. */
export interface AskedKind {
  readonly entry: CoralEntry;
  readonly read: readonly string[];
}

/** Genera told where a misspelt name can mean several. */
const MOST_GENERA = 3;

/** The coral of a name. @throws Problem with those it can mean as choices; none is guessed. */
export function askedKind(given: string, field = 'coral'): AskedKind {
  const found = findCorals(given);
  if (found.kind === 'one') {
    const { entry, readAs, nameNote } = found;
    return {
      entry,
      read: [
        `${readAs === undefined ? '' : `"${given}" read as `}${fullName(entry)}`,
        ...(nameNote === undefined ? [] : [nameNote]),
      ],
    };
  }
  if (found.kind === 'several') {
    throw new Problem(say('coral.whichOfThisName', { name: found.readAs ?? given }), {
      field,
      given,
      choices: found.entries.map(tellingName),
    });
  }
  if (found.kind === 'no page') {
    throw new Problem(noPageWords(found), {
      field,
      given,
      hint: say('coral.nearestRelative'),
      choices: found.near.map(tellingName),
    });
  }
  throw new Problem(say('coral.unknownCoral'), {
    field,
    given,
    hint: say('coral.hintAnyName'),
    choices: found.near.map(tellingName),
  });
}

/** "Torch coral (Euphyllia glabrescens)"; "Favites" where keepers call it by its accepted name. */
export function fullName({ names, scientific }: CoralEntry): string {
  const [name] = names.common;
  return name === scientific.accepted ? name : `${name} (${scientific.accepted})`;
}

/** "Torch coral (...), or Wall hammer coral (...)"; the common names alone where they are too long for so many letters. */
export function fullNames(entries: readonly CoralEntry[], letters: number): string {
  const full = entries.map(fullName).join(', or ');
  if (full.length <= letters) return full;
  return fittingOf(
    entries.map(({ names }, at) => `${at === 0 ? '' : 'or '}${names.common[0]}`),
    letters,
  );
}

/** The first of its names that leads to this coral alone. */
export function tellingName(entry: CoralEntry): string {
  const { names, scientific } = entry;
  const all = [...names.common, scientific.accepted, ...names.hobby, ...scientific.species];
  return (
    all.find((name) => {
      const found = findCorals(name);
      return found.kind === 'one' && found.entry === entry;
    }) ?? names.common[0]
  );
}

/** "Coelastrea is a real genus I have no page on." */
export function noPageWords({ genera, misspelt }: Extract<Found, { kind: 'no page' }>): string {
  const names = genera
    .slice(0, MOST_GENERA)
    .map(({ name, now }) => (now === undefined ? name : say('coral.nowNamed', { name, now })))
    .reduce((one, other) => say('coral.oneOrOther', { one, other }));
  const count = Math.min(genera.length, MOST_GENERA);
  return misspelt ? say('coral.misspeltNoPage', { names, count }) : say('coral.realNoPage', { names, count });
}
