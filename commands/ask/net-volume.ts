import { findCompound, type Compound } from '../../core/dosing/compound.ts';
import { amountG } from '../../core/dosing/dose.ts';
import { fixed, mass, toUnit, volume } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { answer } from '../answer.ts';
import { says, type Intent } from './intent.ts';

const HOLDS =
  /\b(?:my|the|a)\s+(\d+(?:[.,]\d+)?)\s*(gal|gallons?|g|l|litres?|liters?)?\s+(?:tank\s+)?(?:only\s+|really\s+|just\s+)*(?:holds|has)\s+(?:only\s+|like\s+|about\s+|maybe\s+|around\s+)*(\d+(?:[.,]\d+)?)\s*(gal|gallons?|g|l|litres?|liters?)?/;

/** Units shown side by side when a tank is called by a number alone ("my 50"). */
const BOTH = ['US gal', 'L'] as const;

/** "my 50 only really holds 38, does it matter?": what dosing for the glass instead of the water does. */
export const netVolumeIntent: Intent = (heard) => {
  const found = HOLDS.exec(heard.text);
  if (found === null) return undefined;
  const [glass, net] = [found[1], found[3]].map((n) => Number((n ?? '').replace(',', '.')));
  if (glass === undefined || net === undefined || !(glass > net && net > 0)) return undefined;
  const over = glass / net;
  const compound = named(heard.compounds[0]?.name);
  const rise = heard.said.find(({ parameter }) => parameter === 'alkalinity')?.mention.text ?? '1 dKH';
  const said = found[2] ?? found[4];
  const units: readonly string[] = said === undefined ? BOTH : [said];
  const risen = toUnit('alkalinity', readQuantity('alkalinity', rise, { field: 'rise' }).value, 'dKH') * over;
  return answer({
    headline: `Yes, it matters: dosing for ${glass} in a tank that holds ${net} is ${over >= 2 ? `${fixed(over, 1)} times the dose` : `${fixed(100 * (over - 1), 0)} % too much`}, +${fixed(risen, 2)} dKH where ${rise} was meant. Use the net water.`,
    read: [
      `${net} as the water really in the system, ${glass} as the size of the glass`,
      ...(said === undefined
        ? ['no unit was said, so both are shown; the percentage is the same in any unit']
        : []),
    ],
    facts:
      compound === undefined ||
      !says(heard, 'alk', 'dkh', 'baking soda', 'soda ash', 'soda', String.raw`\d+ ?dkh`)
        ? []
        : units.map((unit) => doseLine(compound, rise, { glass, net }, unit)),
    steps: [
      `Dose for ${net}, everywhere: doses, water changes, additives of any kind.`,
      'To measure the net volume: count the litres when you next fill it, or dose a small known amount, retest, and work back from the rise.',
    ],
    working: [`${glass} / ${net} = ${fixed(over, 3)}`],
    cautions: [
      'Rock and sand take a different share in every tank: measure yours rather than taking off a fixed tenth.',
    ],
    sources: ['mixing', 'iupac21'],
  });
};

function named(word: string | undefined): Compound | undefined {
  const found = word === undefined ? undefined : findCompound(word);
  return found !== undefined && 'atoms' in found && found.raises.includes('alkalinity') ? found : undefined;
}

function doseLine(
  compound: Compound,
  rise: string,
  size: { glass: number; net: number },
  unit: string,
): { label: string; value: string } {
  const meqL = readQuantity('alkalinity', rise, { field: 'rise' }).value;
  const grams = (amount: number): string => {
    const litres = readQuantity('volume', `${amount} ${unit}`, { field: 'volume' }).value;
    return `${mass(amountG(compound, 'alkalinity', meqL, litres))} (${volume(litres)})`;
  };
  return {
    label: `${compound.name}, +${rise}, in ${unit}`,
    value: `${size.net}: ${grams(size.net)}; ${size.glass}: ${grams(size.glass)}`,
  };
}
