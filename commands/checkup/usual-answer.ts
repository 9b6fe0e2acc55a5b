import { followsSalinity, usualRange } from '../../core/water/assess.ts';
import { firstLabel, parameter, type ParameterId } from '../../core/water/parameter.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import type { Keep } from '../keep.ts';
import { aimWords, rangeNamesOf, rangesOf } from '../log/ranges.ts';

/** What is asked about where nobody says which. */
const MAIN = [
  'salinity',
  'temperature',
  'alkalinity',
  'calcium',
  'magnesium',
  'nitrate',
  'phosphate',
  'ph',
  'ammonia',
] as const satisfies readonly ParameterId[];

/** The same on other scales: 24 to 27 °C; S 35 at 25 °C (fm83, SG as in core/water). */
const BESIDE: Readonly<Partial<Record<ParameterId, string>>> = {
  temperature: '24 to 27 °C is 75 to 81 °F',
  salinity: '35 ppt is specific gravity 1.0264 at 25 °C, 53 mS/cm (/salinity convert for others)',
};
const POISON = 'Ammonia that a kit can see with animals in is a reason to act today (/urgent what:ammonia).';

/** Where reefs are usually kept, or the aim of the tank in use: of these, or of the main ones where none is named. */
export function usualAnswer(named: readonly ParameterId[], keep: Keep | undefined): Answer {
  const ids = named.length === 0 ? MAIN : named;
  const [first = 'salinity'] = ids;
  const tank = keep?.tankInUse();
  const words = (id: ParameterId): string =>
    tank === undefined
      ? aimWords(id, usualRange(id), 'usual', {})
      : aimWords(id, rangesOf(tank)(id), rangeNamesOf(tank)(id), tank.units);
  const one = ids.length === 1;
  return answer({
    headline: one
      ? `${firstLabel(first)} in a reef tank: ${words(first)}.`
      : 'Where reef tanks are usually kept; steady counts for more than the exact number.',
    facts: [
      ...(one ? [] : ids.map((id) => ({ label: parameter(id).label, value: words(id) }))),
      ...ids.flatMap((id) =>
        id in BESIDE ? [{ label: `${parameter(id).label} on other scales`, value: BESIDE[id] ?? '' }] : [],
      ),
    ],
    steps: [
      ...(one && first === 'ammonia'
        ? []
        : [
            ...(one ? ['Steady counts for more than the exact number.'] : []),
            'Corals open and growing a little outside it? Change nothing in a hurry.',
          ]),
      ...(ids.some(followsSalinity) ? ['Salinity first: the ions follow it.'] : []),
    ],
    isList: !one,
    dangers: ids.some((id) => id === 'ammonia' || id === 'nitrite') ? [POISON] : [],
    cautions: ['Ranges are common practice, not law: keepers differ.'],
    sources: ids.includes('salinity') ? ['practice', 'fm83', 'cs80'] : ['practice'],
    next: [action(say('checkup.checkMyReadings'), 'checkup', {}, ['readings'])],
  });
}
