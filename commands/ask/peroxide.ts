import { H2O2_G_PER_ML, MOST_PERCENT } from '../../core/dosing/peroxide.ts';
import { fixed, significant, volumeAsWritten } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { is } from '../../core/words/mention.ts';
import { tankVolume } from '../../core/words/tank-volume.ts';
import { answer } from '../answer.ts';
import { says, type Intent } from './intent.ts';

/** mL of 3 % peroxide per US gallon in the rule members pass on ("1:10"): forum use, no source. */
const RULE_ML_PER_US_GALLON = 0.1;
const US_GALLON_L = readQuantity('volume', '1 US gal', { field: 'volume' }).value;

/** "1:10 peroxide, what is that for my tank": works the passed-on rule out and says why to be wary of it. */
export const peroxideIntent: Intent = (heard) => {
  const named = says(heard, 'peroxide', 'h2o2');
  const implied = says(heard, '1:10') && says(heard, String.raw`3\s?%?`, 'bryopsis');
  if (!named && !implied) return undefined;
  const strong = heard.mentions.find((m) => is(m, 'share') && m.value > MOST_PERCENT);
  if (strong !== undefined) {
    return warned(
      `I work nothing out for ${strong.text} peroxide: solutions above 3 % burn skin and eyes, and a slip kills a tank.`,
      [],
      [],
    );
  }
  const tank = tankVolume(heard);
  if (tank === undefined)
    return warned(
      'I need the net water volume to work that rule out, and would still rather you did not dose the tank.',
      [],
      [],
    );
  const volume = readQuantity('volume', tank.text, { field: 'volume' });
  const dose = (volume.value / US_GALLON_L) * RULE_ML_PER_US_GALLON;
  const mgL = (dose * H2O2_G_PER_ML * 1000) / volume.value;
  return warned(
    `The rule comes to ${fixed(dose, 1)} mL of 3 % peroxide per dose in ${volumeAsWritten(volume.value, volume.written, volume.unit)}. It is forum use without evidence: I work it out, I do not recommend it.`,
    [...volume.notes, 'read 1:10 as 1 mL per 10 US gallons, of the 3 % solution sold for first aid'],
    [
      `${fixed(volume.value / US_GALLON_L, 1)} US gal x ${RULE_ML_PER_US_GALLON} mL = ${fixed(dose, 1)} mL; ${significant(dose * H2O2_G_PER_ML * 1000, 2)} mg H2O2, ${significant(mgL, 2)} mg/L`,
    ],
  );
};

function warned(
  headline: string,
  read: readonly string[],
  working: readonly string[],
): ReturnType<Intent> & object {
  return answer({
    headline,
    read,
    steps: [
      'Safer: take the rock out, pumps aside and lights off, treat the patch by hand outside the tank, rinse it in tank water, put it back.',
      'If you try the tank at all, begin with far less, watch shrimps and soft-bodied animals, and keep surface flow high.',
      'Ask first what kind of algae it is: results differ by kind, and a photo helps.',
    ],
    working,
    cautions: [
      'Peroxide harms some shrimps, macroalgae and sensitive corals. It is not harmless.',
      'Never use a stronger solution by the same millilitres: stronger peroxide burns skin and eyes and is an oxidiser.',
      'Eye cover and gloves; follow the product label.',
    ],
    sources: ['practice', 'memory', 'ghs'],
  });
}
