import { printed } from '../../core/log/value.ts';
import { parameter } from '../../core/water/parameter.ts';
import type { Keep, LoggedValue, Tank } from '../keep.ts';
import type { Watch } from '../watch.ts';

/** "Nitrate 24 mg/L is over 20 mg/L, the border you set" for each value beyond a border that is watched. */
export function watchedWords(keep: Keep, tank: Tank, values: readonly LoggedValue[]): readonly string[] {
  const watches = keep.watches(tank.id);
  if (watches.length === 0) return [];
  return values.flatMap(({ parameter: id, value }) => {
    const watch = watches.find((each) => each.parameter === id);
    const border = watch === undefined ? undefined : crossed(watch, value, tank);
    if (border === undefined) return [];
    const label = parameter(id).label.replace(/^[a-z](?!H)/, (letter) => letter.toUpperCase());
    return [`${label} ${printed(id, value, tank.units)} is ${border}, the border you set`];
  });
}

/** "over 20 mg/L or under 2 mg/L": the borders of a watch. */
export function borderWords({ parameter: id, over, under }: Watch, { units }: Tank): string {
  return [
    ...(over === undefined ? [] : [`over ${printed(id, over, units)}`]),
    ...(under === undefined ? [] : [`under ${printed(id, under, units)}`]),
  ].join(' or ');
}

function crossed(watch: Watch, value: number, tank: Tank): string | undefined {
  const { parameter: id, over, under } = watch;
  if (over !== undefined && value > over) return borderWords({ parameter: id, over }, tank);
  if (under !== undefined && value < under) return borderWords({ parameter: id, under }, tank);
  return undefined;
}
