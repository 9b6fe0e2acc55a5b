import type { Frame } from '../../../core/language/frame.ts';
import { met, type Met } from '../../../core/language/met.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { labelCommand } from '../../dose/label.ts';
import type { Labelled } from '../../dose/label-advice.ts';
import { noPeroxide } from '../../dose/no-peroxide.ts';
import { call } from '../../called.ts';

/** What is dosed by the label of a product, by the classes of its words; the particular before the general. */
const LABELLED: readonly (readonly [Labelled, readonly Met[]])[] = [
  ['carbon source', ['substances.carbonSource']],
  ['phosphate remover', ['substances.phosphateRemover', 'gear.carbonMedia']],
  ['amino acids', ['substances.aminoAcids']],
  ['iodine or traces', ['substances.iodine', 'substances.traces']],
];

function labelledIn({ slots, reading: { scanned } }: Frame): Labelled | undefined {
  if (slots.salt !== undefined || slots.wanted !== undefined || slots.change !== undefined) return undefined;
  return LABELLED.find(([, classes]) => met(scanned, ...classes))?.[0];
}

function isPeroxide({ reading: { scanned } }: Frame): boolean {
  return met(scanned, 'poisons.peroxide');
}

/** Whether what is to go in is no pure salt with a sum: then nothing else is asked first. */
export function hasLabel(frame: Frame): boolean {
  return isPeroxide(frame) || labelledIn(frame) !== undefined;
}

/** What acts by its strength, its maker or the bacteria of the tank; undefined for a salt. */
export function byLabel(frame: Frame, context: OwnContext): Answer | undefined {
  if (isPeroxide(frame)) return noPeroxide;
  const what = labelledIn(frame);
  if (what === undefined) return undefined;
  const { amount, container, volume } = frame.slots;
  const isLabel = amount !== undefined && container !== undefined;
  return call(labelCommand, { what, ...(isLabel ? { amount, per: container } : {}), volume }, context);
}
