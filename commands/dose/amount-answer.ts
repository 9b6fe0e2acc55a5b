import { handling, hazard } from '../../core/care/hazards.ts';
import type { Compound } from '../../core/dosing/compound.ts';
import { amountG, riseFrom } from '../../core/dosing/dose.ts';
import { WEIGHABLE_G } from '../../core/dosing/solution.ts';
import { fixed, fromUnit, significant } from '../../core/quantity/format.ts';
import {
  decimalsOf,
  portions,
  type Portions,
  portionWords,
  weighable,
  weighed,
  weighingStep,
} from '../../core/quantity/portion.ts';
import type { SourceCode } from '../../core/sources.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { answer, type Answer, type Fact, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { opened, withSalinity, type Opening } from '../short/remark-first.ts';
import { doseCautions, doseDangers, doseSteps } from './advice.ts';
import { type AskedCompound, type askedPurity, type AskedWater, inOwnUnit } from './asked.ts';
import { type Change } from './change.ts';
import { tooLittle } from './no-dose.ts';
import type { AskedPace } from './pace.ts';
import { alsoAdds, instead, phFact } from './side-effects.ts';
import { amountWorking, paceLine } from './working.ts';
import { shortLimits } from '../short/limits.ts';
import type { AskedSalinity } from './salinity.ts';
import { spoonFact, spoonWords } from './spoons.ts';
import { say } from '../../core/wording/say.ts';

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
  /** Spoons were asked for. */
  readonly inSpoons: boolean;
}

/** The grams, the days and the rest; where the form is open, the mass that is safe for every form. */
export function amountAnswer(asked: AskedDose): Answer {
  const { id, change, compound, water, purity, pace, salinity } = asked;
  const amounts = compound.forms.map((form) => ({
    form,
    grams: amountG(form, id, change.rise, water.volumeL, purity.share),
  }));
  const { form, grams } = amounts.reduce((least, next) => (next.grams < least.grams ? next : least));
  const { kind, unit } = parameter(id);
  const mostG = amountG(form, id, fromUnit(kind, pace.most, unit), water.volumeL, purity.share);
  const plan = portions(grams, mostG, weighingStep);
  if (plan === undefined) return tooLittle(id, change);
  const perDay = riseFrom(form, id, plan.each, water.volumeL, purity.share);
  const forms =
    amounts.length > 1
      ? amounts.map((one): Fact => ({
          label: `If ${one.form.name}`,
          value: one.form === form ? inGrams(plan)(plan.total) : weighable(one.grams),
        }))
      : [];
  const [moved = '', ...units] = change.read;
  const [where = '', ...net] = water.read;
  const given = answer({
    headline: '',
    read: [moved, where, compound.read, purity.read, ...units, ...salinity.read, ...net],
    facts: [...forms, ...sideFacts(asked, form, plan.total, perDay)],
    steps: [...(salinity.remark === undefined ? [] : [SALINITY_FIRST]), ...doseSteps(form, id, plan)],
    working: [
      ...amountWorking(form, id, change, water.volumeL, purity.share),
      paceLine(id, change, plan.days, perDay, pace.words),
    ],
    dangers: [...handling(form.hazard).dangers, ...doseDangers(form, id)],
    cautions: [...formCaution(asked, amounts), ...doseCautions(form, id), ...handling(form.hazard).cautions],
    sources: sourcesOf(id, form),
    next: [
      action(say('dose.whatOneDayS'), 'dose effect', effectInput(form, plan, asked)),
      ...(plan.days > 1 && water.text !== undefined ? [eachDay(saltName(compound, form), plan)] : []),
    ],
  });
  return opened(withSalinity(salinity.remark, openings(asked, plan, form)), given);
}

const SALINITY_FIRST =
  'Put salinity right first (/salinity adjust) and test again then: it moves the other readings with it.';

/** A reminder for each day's portion, short enough for a button. */
function eachDay(salt: string, plan: Portions): NextAction {
  const show = inGrams(plan);
  const last = show(plan.last) === show(plan.each) ? '' : ` (last day ${show(plan.last)})`;
  const text = `${show(plan.each)} of ${salt}${last}`;
  const input = { text, when: 'daily 9am', times: String(plan.days) };
  return action(say('dose.remindMeEachDay'), 'remind task', input);
}

/** The day's portion as the options of `/dose effect`. */
function effectInput(
  form: Compound,
  { each, step }: Portions,
  { water, purity }: AskedDose,
): Readonly<Record<string, string>> {
  return {
    with: form.name,
    amount: `${fixed(each, decimalsOf(step))} g`,
    ...(water.text === undefined ? {} : { volume: water.text }),
    ...(purity.share === 1 ? {} : { purity: `${significant(purity.share * 100, 4)} %` }),
  };
}

/** Grams with the digits of a plan's step. */
function inGrams({ step }: Portions): (massG: number) => string {
  return (massG) => weighed(massG, step);
}

/** The dose, what it does, and what is to be known of it, in one line where it fits. */
function openings(
  { id, change, compound, water, purity, pace, salinity, first }: AskedDose,
  plan: Portions,
  form: Compound,
): readonly [Opening, ...Opening[]] {
  const show = inGrams(plan);
  const label = saltName(compound, form);
  const per = water.text !== undefined ? '' : ' per 100 L';
  const days = plan.days === 1 ? ', within one day' : ` in all, ${portionWords(plan, show)}`;
  const effect = `${parameter(id).label} ${change.words}${water.text !== undefined ? ` ${water.where}` : ''}`;
  const grade = purity.share === 1 ? '' : ` (${purity.read})`;
  const own = pace.isOwn === true ? `, at ${pace.words}` : '';
  const dose = `${show(plan.total)} of ${label}${grade}${per}${days}`;
  const whole = `${dose}: ${effect}${own}.`;
  const isOne = salinity.remark === undefined && whole.length <= shortLimits.headline;
  return [
    { label: 'Dose', value: isOne ? whole : `${dose}.` },
    ...(isOne
      ? []
      : [{ label: 'It takes', value: `${effect}${own}`, sentence: `It takes ${effect}${own}.` }]),
    ...(first === '' ? [] : [{ label: 'The goal', value: first.trim(), isBefore: true } as const]),
    ...(compound.forms.length > 1
      ? [{ label: 'The form', value: 'That is safe for every form of it.' }]
      : []),
    ...(plan.each < WEIGHABLE_G ? [{ label: 'Too little to weigh', value: 'Use a stock solution.' }] : []),
  ];
}

/** Where the form is open, the salt without it. */
function saltName({ forms, label }: AskedCompound, form: Compound): string {
  return forms.length > 1 ? label : form.name;
}

function sideFacts(
  { id, change, compound, water, purity, inSpoons }: AskedDose,
  form: Compound,
  grams: number,
  perDay: number,
): Fact[] {
  const adds = alsoAdds(form, id, grams, water.volumeL, purity.share);
  const others = instead(compound.forms, id, change.rise, water.volumeL);
  const ph = id === 'alkalinity' ? phFact(form, change.now, perDay) : undefined;
  const spoons = inSpoons ? [{ label: 'In spoons', value: spoonWords(compound, grams) }] : [];
  const level = inSpoons ? spoonFact(compound) : undefined;
  return [...spoons, ...[level, ph, adds, others].filter((fact) => fact !== undefined)];
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
    `The dose is the ${strongest.form.name} figure, and a hydrate needs more after a retest. Do not guess the form: the mass for ${next.form.name} would give +${significant(inOwnUnit(id, wrong), 2)} instead of +${significant(inOwnUnit(id, change.rise), 2)} ${unit} if the bag is ${strongest.form.name}. Look on the label, or retest after the safe mass and top up.`,
  ];
}

function sourcesOf(id: ParameterId, form: Compound): readonly SourceCode[] {
  const alkalinity: readonly SourceCode[] = id === 'alkalinity' ? ['dkh', 'dsc07', 'lueker00'] : [];
  const memory = parameter(id).basis.filter((code) => code === 'memory');
  return ['iupac21', ...alkalinity, 'practice', hazard(form.hazard).basis, ...memory];
}
