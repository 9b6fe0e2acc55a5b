import { handlingCautions, hazard } from '../../core/care/hazards.ts';
import type { Compound } from '../../core/dosing/compound.ts';
import { amountG, riseFrom } from '../../core/dosing/dose.ts';
import { splitByPace, type Split } from '../../core/dosing/pace.ts';
import { WEIGHABLE_G } from '../../core/dosing/solution.ts';
import { mass, significant } from '../../core/quantity/format.ts';
import type { SourceCode } from '../../core/sources.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { answer, type Answer, type Fact, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { doseCautions, doseSteps } from './advice.ts';
import { type AskedCompound, type askedPurity, type AskedWater, inOwnUnit, shown } from './asked.ts';
import { type Change } from './change.ts';
import type { AskedPace } from './pace.ts';
import { alsoAdds, instead, phFact } from './side-effects.ts';
import { amountWorking, paceLine } from './working.ts';
import { withRemark } from '../../core/water/salinity-remark.ts';
import type { AskedSalinity } from './salinity.ts';

/** Everything a dose is worked out from, read and checked. */
export interface AskedDose {
  readonly id: ParameterId;
  readonly change: Change;
  readonly compound: AskedCompound;
  readonly water: AskedWater;
  readonly purity: ReturnType<typeof askedPurity>;
  readonly pace: AskedPace;
  readonly salinity: AskedSalinity;
  /** That the goal is outside the usual range; empty where it is inside. */
  readonly first: string;
}

/** The grams, the days and the rest; where the form is open, the mass that is safe for every form. */
export function amountAnswer(asked: AskedDose): Answer {
  const { id, change, compound, water, purity, pace, salinity } = asked;
  const amounts = compound.forms.map((form) => ({
    form,
    grams: amountG(form, id, change.rise, water.volumeL, purity.share),
  }));
  const { form, grams } = amounts.reduce((least, next) => (next.grams < least.grams ? next : least));
  const split = splitByPace(inOwnUnit(id, change.rise), pace.most);
  const portionG = grams / split.days;
  const forms =
    amounts.length > 1
      ? amounts.map((one): Fact => ({ label: `If ${one.form.name}`, value: mass(one.grams) }))
      : [];
  return answer({
    headline: withRemark(salinity.remark, asked.first + headline(asked, grams, split, form)),
    read: [...change.read, compound.read, purity.read, ...water.read, ...salinity.read],
    facts: [
      { label: 'In all', value: `${mass(grams)}${water.given ? '' : ' per 100 L'}` },
      ...(split.days > 1
        ? [
            {
              label: 'Each day',
              value: `${mass(portionG)} (${shown(id, change.rise / split.days)}) for ${split.days} days`,
            },
          ]
        : []),
      ...forms,
      ...sideFacts(asked, form, grams, split),
    ],
    steps: [
      ...(salinity.remark === undefined ? [] : [SALINITY_FIRST]),
      ...doseSteps(form, id, portionG, split.days),
    ],
    working: [
      ...amountWorking(form, id, change, water.volumeL, purity.share),
      paceLine(id, change, split, pace.words),
    ],
    cautions: [...formCaution(asked, amounts), ...doseCautions(form, id), ...handlingCautions(form.hazard)],
    sources: sourcesOf(id, form),
    next: [
      action('What one day’s portion does', 'dose effect', effectInput(form, portionG, asked)),
      ...(split.days > 1 && water.given ? [eachDay(saltName(compound, form), portionG, split.days)] : []),
    ],
  });
}

const SALINITY_FIRST =
  'Put salinity right first (/salinity adjust) and test again then: it moves the other readings with it.';

/** A reminder for each day's portion, short enough for a button. */
function eachDay(salt: string, portionG: number, days: number): NextAction {
  const text = `${mass(portionG)} of ${salt}`;
  const input = { text, when: 'daily 9am', times: String(days) };
  return action('Remind me of each day’s portion, the first at 9am', 'remind task', input);
}

/** The day's portion as the options of `/dose effect`. */
function effectInput(
  form: Compound,
  portionG: number,
  { water, purity }: AskedDose,
): Readonly<Record<string, string>> {
  return {
    with: form.name,
    amount: `${significant(portionG, 4)} g`,
    ...(water.given ? { volume: `${significant(water.volumeL, 6)} L` } : {}),
    ...(purity.share === 1 ? {} : { purity: `${significant(purity.share * 100, 4)} %` }),
  };
}

function headline(
  { id, change, compound, water, purity }: AskedDose,
  grams: number,
  split: Split,
  form: Compound,
): string {
  const label = saltName(compound, form);
  const per = water.given ? '' : ' per 100 L';
  const days =
    split.days === 1
      ? ', within one day'
      : ` in all, ${mass(grams / split.days)} a day for ${split.days} days`;
  const effect = `${parameter(id).label} ${change.words}${water.given ? ` ${water.where}` : ''}`;
  const open =
    compound.forms.length > 1
      ? ` That is safe for every form: it is the ${form.name} figure, and a hydrate needs more after a retest.`
      : '';
  const small = grams / split.days < WEIGHABLE_G ? ' Too little to weigh: use a stock solution.' : '';
  const grade = purity.share === 1 ? '' : ` (${purity.read})`;
  return `${mass(grams)} of ${label}${grade}${per}${days}: ${effect}.${open}${small}`;
}

/** Where the form is open, the salt without it. */
function saltName({ forms, label }: AskedCompound, form: Compound): string {
  return forms.length > 1 ? label : form.name;
}

function sideFacts(
  { id, change, compound, water, purity }: AskedDose,
  form: Compound,
  grams: number,
  split: Split,
): Fact[] {
  const adds = alsoAdds(form, id, grams, water.volumeL, purity.share);
  const others = instead(compound.forms, id, change.rise, water.volumeL);
  const ph = id === 'alkalinity' ? phFact(form, change.now, change.rise / split.days) : undefined;
  return [adds, ph, others].filter((fact) => fact !== undefined);
}

/** What a wrong guess of the form would do: the heaviest mass, if the powder is the strongest form. */
function formCaution(
  { id, change, water, purity }: AskedDose,
  amounts: readonly { form: Compound; grams: number }[],
): readonly string[] {
  const [strongest, next] = [...amounts].sort((a, b) => a.grams - b.grams);
  if (strongest === undefined || next === undefined) return [];
  const wrong = riseFrom(strongest.form, id, next.grams, water.volumeL, purity.share);
  const { unit } = parameter(id);
  return [
    `Do not guess the form: the mass for ${next.form.name} would give +${significant(inOwnUnit(id, wrong), 2)} instead of +${significant(inOwnUnit(id, change.rise), 2)} ${unit} if the bag is ${strongest.form.name}. Look on the label, or retest after the safe mass and top up.`,
  ];
}

function sourcesOf(id: ParameterId, form: Compound): readonly SourceCode[] {
  const alkalinity: readonly SourceCode[] = id === 'alkalinity' ? ['dkh', 'dsc07', 'lueker00'] : [];
  const memory = parameter(id).basis.filter((code) => code === 'memory');
  return ['iupac21', ...alkalinity, 'practice', hazard(form.hazard).basis, ...memory];
}
