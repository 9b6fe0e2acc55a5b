import {
  type Compound,
  compoundNote,
  compounds,
  compoundsFor,
  findCompound,
} from '../../core/dosing/compound.ts';
import { Problem } from '../../core/problem.ts';
import { significant, toUnit, volume, volumeAsWritten } from '../../core/quantity/format.ts';
import { readQuantity, type Quantity } from '../../core/quantity/read.ts';
import { findParameter, parameter, type ParameterId, parameterIds } from '../../core/water/parameter.ts';
import { say } from '../../core/wording/say.ts';

/** The parameters some compound is dosed for. */
const dosable = parameterIds.filter((id) => compoundsFor(id).length > 0);

/** The parameter named by the option `of`. @throws Problem with the ones that can be dosed. */
export function askedParameter(text: string): ParameterId {
  const id = findParameter(text);
  if (id !== undefined && dosable.includes(id)) return id;
  const labels = dosable.map((known) => parameter(known).label);
  const message =
    id === undefined
      ? say('dose.notSomethingToDose', { text })
      : say('dose.nothingMoves', { label: parameter(id).label });
  throw new Problem(message, { field: 'of', given: text, limit: labels.join(', ') });
}

/** The compound of the option `with`: every form it may be, the words to print, and how it was read. */
export interface AskedCompound {
  readonly forms: readonly [Compound, ...Compound[]];
  /** "calcium chloride" where the form is open, else the full name. */
  readonly label: string;
  readonly read: string;
}

/** @throws Problem with complete choices when it is missing, unknown, or does not raise `id`. */
export function askedCompound(text: string | undefined, id?: ParameterId, field = 'with'): AskedCompound {
  const offered = id === undefined ? compounds : compoundsFor(id);
  const choices = offered.map(({ name }) => name);
  if (text === undefined) {
    throw new Problem(say('dose.whichCompoundDoYou'), { field, choices });
  }
  const found = findCompound(text);
  if (found === undefined) {
    throw new Problem(say('dose.iDoNotKnow', { text }), {
      field,
      given: text,
      ...(id === undefined ? { limit: choices.join(', ') } : { choices }),
    });
  }
  const [first, ...rest] = 'name' in found ? [found] : found;
  if (first === undefined) throw new Error('findCompound gave an empty list');
  if (id !== undefined && !first.raises.includes(id)) {
    throw new Problem(say('dose.notDosed', { name: first.name, label: parameter(id).label }), {
      field,
      given: text,
      choices,
    });
  }
  return described(text, [first, ...rest]);
}

/** The one form of a salt whose grams depend on it. @throws Problem that asks which, where the name has several. */
export function oneForm({ forms, label }: AskedCompound, given: string, field = 'with'): Compound {
  const [form] = forms;
  if (forms.length === 1) return form;
  const choices = forms.map(({ name }) => name);
  throw new Problem(say('dose.whichForm', { label }), { field, given, choices });
}

function described(text: string, forms: AskedCompound['forms']): AskedCompound {
  const [first] = forms;
  if (forms.length > 1) {
    const all = forms.map(({ name, formula }) => `${name} (${formula})`).join(', ');
    return {
      forms,
      label: text.trim().toLowerCase(),
      read: `${text.trim()}: the form is not said; it may be ${all}`,
    };
  }
  const note = compoundNote(text, first);
  return {
    forms,
    label: first.name,
    read: `${first.name}, ${first.formula}${note === undefined ? '' : `, ${note}`}`,
  };
}

/** The water a dose goes into; 100 L where no volume was given. */
export interface AskedWater {
  readonly volumeL: number;
  /** As an option takes it; undefined where none was given. */
  readonly text: string | undefined;
  /** "in 283.9 L" or "per 100 L". */
  readonly where: string;
  readonly read: readonly string[];
}

/** @throws Problem when the text is no volume. */
export function askedWater(text: string | undefined): AskedWater {
  if (text === undefined) {
    const read = ['no volume given, so this is per 100 L: times your net litres, divided by 100', NET];
    return { volumeL: 100, text: undefined, where: 'per 100 L', read };
  }
  const found = readQuantity('volume', text, { field: 'volume' });
  const written = volumeAsWritten(found.value, found.written, found.unit);
  const read = [`${written}, taken as net water`, ...found.notes, NET];
  const askedAgain = `${significant(found.written, 6)} ${found.unit}`;
  return { volumeL: found.value, text: askedAgain, where: `in ${volume(found.value)}`, read };
}

const NET =
  'net water is what is really in the system, without rock and sand; a tank holds less than its printed size';

/** Purity as a share of 1 and how it was read; pure where not given. */
export function askedPurity(text: string | undefined): { readonly share: number; readonly read: string } {
  if (text === undefined) return { share: 1, read: 'a pure, dry salt' };
  const { value } = readQuantity('share', text, { field: 'purity' });
  if (value < 1)
    throw new Problem(say('dose.purityBetween1100'), {
      field: 'purity',
      given: text,
      limit: say('dose.limitPurity'),
    });
  return { share: value / 100, read: `${significant(value, 4)} % pure` };
}

/** Canonical value in the parameter's own unit. */
export function inOwnUnit(id: ParameterId, value: number): number {
  const { kind, unit } = parameter(id);
  return toUnit(kind, value, unit);
}

/** "1.2 dKH", "70 mg/L": a canonical value in the parameter's own unit. */
export function shown(id: ParameterId, value: number): string {
  return `${significant(inOwnUnit(id, value), 3)} ${parameter(id).unit}`;
}

/** "7.2 dKH", or "2.5 meq/L (7.01 dKH)" where it was written in another unit. */
export function asWritten(id: ParameterId, found: Quantity): string {
  const own = shown(id, found.value);
  return found.unit === parameter(id).unit || found.unit === ''
    ? own
    : `${significant(found.written, 4)} ${found.unit} (${own})`;
}
