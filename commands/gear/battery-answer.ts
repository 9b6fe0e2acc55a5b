import { ampHours, runHours, wattHours, type Battery } from '../../core/gear/battery.ts';
import { significant } from '../../core/quantity/format.ts';
import type { Answer } from '../answer.ts';
import { sumFirst } from './sum-first.ts';

/** The card on backup with the battery that so many watts need for so many hours first; each load of several by itself. */
export function batteryAnswer(card: Answer, watts: readonly number[], hours: number): Answer {
  const all = sum(watts);
  const each =
    watts.length < 2
      ? []
      : watts.map((one) => ({ label: `${significant(one)} W alone`, value: needs(one, hours) }));
  return sumFirst(card, `${loads(watts)} for ${significant(hours)} h: ${needs(all, hours)}.`, each);
}

/** The card with how long a battery of so many Wh on its label runs the load, and whether that is as long as is wanted. */
export function runTimeAnswer(
  card: Answer,
  label: string,
  labelWh: number,
  { watts, hours }: { readonly watts: readonly number[]; readonly hours: number | undefined },
): Answer {
  const run = (battery: Battery): number => runHours(labelWh, sum(watts), battery);
  const [lithium, lead] = [run('lithium'), run('lead')];
  const wanted =
    hours === undefined
      ? ''
      : lead >= hours
        ? ` ${significant(hours)} h is met.`
        : lithium < hours
          ? ` Too little for ${significant(hours)} h.`
          : ` ${significant(hours)} h only in lithium.`;
  return sumFirst(
    card,
    `${label} runs ${loads(watts)} for about ${significant(lead, 2)} h in lead, ${significant(lithium, 2)} h in lithium, when it is healthy.${wanted}`,
    hours === undefined ? [] : [{ label: `${significant(hours)} h of it`, value: needs(sum(watts), hours) }],
  );
}

function needs(watts: number, hours: number): string {
  const wh = wattHours(watts, hours);
  const ah = (battery: Battery): string => significant(Math.ceil(ampHours(wh, battery)), 3);
  return `about ${significant(wh)} Wh, at 12 V ${ah('lead')} Ah of lead or ${ah('lithium')} Ah of lithium`;
}

function loads(watts: readonly number[]): string {
  return `${watts.map((one) => significant(one)).join(' + ')} W`;
}

function sum(watts: readonly number[]): number {
  return watts.reduce((total, one) => total + one, 0);
}
