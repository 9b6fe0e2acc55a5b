import { findCompound } from '../../core/dosing/compound.ts';
import { netCommand } from '../dose/net.ts';
import { call } from './call.ts';
import { says, type Intent } from './intent.ts';

const HOLDS =
  /\b(?:my|the|a)\s+(\d+(?:[.,]\d+)?)\s*(gal|gallons?|g|l|litres?|liters?)?\s+(?:tank\s+)?(?:only\s+|really\s+|just\s+)*(?:holds|has)\s+(?:only\s+|like\s+|about\s+|maybe\s+|around\s+)*(\d+(?:[.,]\d+)?)\s*(gal|gallons?|g|l|litres?|liters?)?/;
const OF_ALKALINITY = ['alk', 'dkh', 'baking soda', 'soda ash', 'soda', String.raw`\d+ ?dkh`] as const;

/** "my 50 only really holds 38, does it matter?": what dosing for the glass instead of the water does. */
export const netVolumeIntent: Intent = (heard, context) => {
  const [found, outer, unitOut, inner, unitIn] = HOLDS.exec(heard.text) ?? [];
  if (found === undefined || outer === undefined || inner === undefined) return undefined;
  if (!(Number(outer.replace(',', '.')) > Number(inner.replace(',', '.')))) return undefined;
  const unit = unitOut ?? unitIn ?? '';
  const salt = findCompound(heard.compounds[0]?.name ?? '');
  const isAlkalinity = salt !== undefined && 'atoms' in salt && salt.raises.includes('alkalinity');
  const input = {
    glass: `${outer} ${unit}`.trim(),
    volume: `${inner} ${unit}`.trim(),
    with: isAlkalinity && says(heard, ...OF_ALKALINITY) ? salt.name : undefined,
    goal: heard.said.find(({ parameter }) => parameter === 'alkalinity')?.mention.text,
  };
  return call(netCommand, input, context);
};
