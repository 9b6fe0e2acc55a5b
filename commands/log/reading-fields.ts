import type { ChosenUnits } from '../../core/quantity/chosen-units.ts';
import { Problem } from '../../core/problem.ts';
import { readLine } from '../../core/words/line.ts';
import { say } from '../../core/wording/say.ts';
import type { OwnContext } from '../command.ts';
import type { Keep } from '../keep.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';

/** One value of a form for readings. */
export interface ReadingField {
  readonly parameter: ParameterId;
  /** "Alkalinity, dKH": the unit a bare number is read in. */
  readonly label: string;
  readonly unit: string;
}

/** Discord's forms hold so many. */
const MOST_FIELDS = 5;
/** Asked for where nothing is logged yet: what stony corals use, and what feeds algae; common practice, no source. */
const USUAL: readonly ParameterId[] = ['alkalinity', 'calcium', 'magnesium', 'nitrate', 'phosphate'];
/** How far back it counts what somebody tests, entries of the log. */
const LOOK_BACK = 60;

/** The values a form asks for: those of the reminder it is about, else what the member logs most, filled up with the usual. */
export function readingFields(
  { keep }: Pick<OwnContext, 'keep'>,
  input: Readonly<Record<string, string>>,
): readonly ReadingField[] {
  const due = ofReminder(keep, input['reminder']);
  const asked = [...new Set([...mostLogged(keep), ...USUAL])];
  return fieldsFor(keep, (due.length > 0 ? due : asked).slice(0, MOST_FIELDS));
}

/** The fields of these parameters, in this order. */
export function fieldsFor(
  keep: Keep | undefined,
  parameters: readonly ParameterId[],
): readonly ReadingField[] {
  const units = keep?.tankInUse()?.units;
  return parameters.map((id) => {
    const unit = (id === 'alkalinity' ? units?.alkalinity : undefined) ?? parameter(id).unit;
    const { label } = parameter(id);
    return { parameter: id, label: `${label.charAt(0).toUpperCase()}${label.slice(1)}, ${unit}`, unit };
  });
}

function ofReminder(keep: Keep | undefined, id: string | undefined): readonly ParameterId[] {
  return keep?.reminders().find((one) => String(one.id) === id)?.parameters ?? [];
}

function mostLogged(keep: Keep | undefined): readonly ParameterId[] {
  const tank = keep?.tankInUse();
  if (keep === undefined || tank === undefined) return [];
  const counts = new Map<ParameterId, number>();
  for (const { parameter: id } of keep.readings(tank.id, { most: LOOK_BACK }))
    counts.set(id, (counts.get(id) ?? 0) + 1);
  return [...counts].sort(([, a], [, b]) => b - a).map(([id]) => id);
}

const BETWEEN = '; ';

/** What was written into the fields as one line that the log reads: "alkalinity 8.1 dKH; calcium 420 mg/L". */
export function lineOfFields(fields: readonly ReadingField[], written: (id: ParameterId) => string): string {
  return fields
    .map((field) => partOf(field, written))
    .filter((part) => part !== '')
    .join(BETWEEN);
}

function partOf({ parameter: id, unit }: ReadingField, written: (id: ParameterId) => string): string {
  const value = written(id).trim();
  if (value === '') return '';
  return `${parameter(id).label} ${value}${/^[<~]?\s*[\d.,]+$/.test(value) ? ` ${unit}` : ''}`;
}

/** What is wrong with the first field that holds no reading of its own parameter; it names that field alone. */
export function firstUnread(
  fields: readonly ReadingField[],
  keep: Keep,
  written: (id: ParameterId) => string,
): Problem | undefined {
  const units = keep.tankInUse()?.units;
  const faults = fields.map((field) =>
    faultOf(field, partOf(field, written), written(field.parameter), units),
  );
  return faults.find((fault) => fault !== undefined);
}

function faultOf(
  { parameter: id, label }: ReadingField,
  part: string,
  given: string,
  units: ChosenUnits | undefined,
): Problem | undefined {
  if (part === '') return undefined;
  try {
    const { values, unread } = readLine(part, label, units);
    const [only] = values;
    if (values.length === 1 && only?.parameter === id && unread.length === 0) return undefined;
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    const { message, limit, hint } = error;
    return new Problem(message, { field: label, given, limit, hint });
  }
  return new Problem(say('log.fieldNotRead'), { field: label, given, hint: say('log.hintOneNumber') });
}

/** What such a line holds for a field, to be written again. */
export function writtenFor({ parameter: id, unit }: ReadingField, line: string): string | undefined {
  const start = `${parameter(id).label} `;
  const part = line.split(BETWEEN).find((each) => each.startsWith(start));
  return part?.slice(start.length).replace(new RegExp(`^([<~]?\\s*[\\d.,]+) ${escaped(unit)}$`), '$1');
}

function escaped(text: string): string {
  return text.replaceAll(/[.*+?^${}()|[\]\\/]/g, String.raw`\$&`);
}
