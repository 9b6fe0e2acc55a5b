import { compoundsFor, findCompound, formsOf } from '../dosing/compound.ts';
import type { ParameterId } from '../water/parameter.ts';
import { namesBack } from './taken-back.ts';
import type { Scanned } from './tokens.ts';

/** Words that tell the forms and salts of one element apart, each as it stands in a chemical name. */
const FORMS = [
  'anhydrous',
  'monohydrate',
  'dihydrate',
  'hexahydrate',
  'heptahydrate',
  'decahydrate',
] as const;
const ACIDS: Readonly<Record<string, string>> = {
  chloride: 'chloride',
  sulfate: 'sulfate',
  sulphate: 'sulfate',
  iodide: 'iodide',
  bromide: 'bromide',
};

/**
 * The salts a message names, in order. A form said apart from the name belongs to it ("calcium chloride ... dihydrate"),
 * and "the chloride" of a parameter that has only one is that one. Of "not soda ash, it is baking soda" only the second is.
 */
export function saltsSaid({ names, tokens }: Scanned, of: ParameterId | undefined): readonly string[] {
  const said = [...new Set(names.flatMap((name) => (name.class === 'salt' ? [name.id] : [])))];
  const back = namesBack(tokens);
  const meant = said.filter((id) => !back.has(id));
  const named = meant.length > 0 ? meant : said;
  const words = new Set(tokens.map(({ word }) => word));
  const forms = FORMS.filter((form) => words.has(form));
  if (named.length > 0) return named.map((word) => formed(word, forms));
  const acids = Object.entries(ACIDS).flatMap(([word, acid]) => (words.has(word) ? [acid] : []));
  if (of === undefined || (forms.length === 0 && acids.length === 0)) return [];
  const fitting = compoundsFor(of).filter(
    ({ name }) => acids.every((acid) => name.includes(acid)) && forms.every((form) => name.endsWith(form)),
  );
  const [only, more] = fitting;
  if (only === undefined) return [];
  if (more === undefined) return [only.name];
  // "the chloride" of calcium: which of its forms is asked back.
  const [acid] = acids;
  const shared = acid === undefined ? '' : `${of} ${acid}`;
  return findCompound(shared) === undefined ? [] : [shared];
}

/** The form of a salt that a message names by itself: of "tub says dihydrate" that of the salt told before. */
export function formOf(salt: string, { names, tokens }: Scanned): string | undefined {
  if (names.some((name) => name.class === 'salt')) return undefined;
  const form = FORMS.find((each) => tokens.some(({ word }) => word === each));
  if (form === undefined) return undefined;
  const bare = salt.split(' ').filter((word) => !FORMS.some((each) => each === word));
  const whole = formsOf(`${bare.join(' ')} ${form}`)[0] ?? formsOf(bare.join(' '))[0];
  return whole?.name.endsWith(form) === true ? whole.name : undefined;
}

function formed(word: string, forms: readonly string[]): string {
  const all = formsOf(word);
  const fitting = all.filter(({ name }) => forms.some((form) => name.endsWith(form)));
  const [only, more] = fitting;
  if (all.length > 1 && only !== undefined && more === undefined) return only.name;
  const [apart] = only === undefined ? forms.flatMap((form) => formsOf(`${all[0]?.name ?? ''} ${form}`)) : [];
  return apart?.name ?? word;
}
