import { clean } from '../quantity/clean.ts';
import { parameter, parameterIds } from '../water/parameter.ts';

/** Words that may stand around readings without reporting anything. */
const NEUTRAL = new Set(
  (
    'a an the my our your is are was am be at of on in and or with for to from it its this these those that they here there ' +
    'i we you me have has had got get hi hello hey all guys folks everyone please pls plz thanks thank thx ty ' +
    'tank tanks reef system aquarium water display nano mixed sps lps soft softies saltwater marine ' +
    'param params parameters parameter number numbers reading readings reads read value values level levels result results ' +
    'test tests tested testing kit kits today now currently current just morning evening tonight yesterday last week weekly ' +
    'daily day days month months old year years new monday tuesday wednesday thursday friday saturday sunday ' +
    'what how do does you think thoughts look looks looking ok okay good fine great alright right normal range safe check ' +
    'checked about around roughly approx approximately so any anything need dose everything seem seems yes ' +
    'temp degrees degree gal gals gallon gallons g l litre litres liter liters ppm ppb ppt psu dkh meq sg f c mg ml alk kh ' +
    'carbonate hardness measured came out as up date log logged note noted save record write down readout hows'
  ).split(' '),
);
/** Names of readings as a whole, with their digits: "no3", "specific gravity". */
const NAMES = new RegExp(
  String.raw`(?<![a-z0-9])(?:${parameterIds
    .flatMap((id) => parameter(id).names)
    .sort((a, b) => b.length - a.length)
    .map((name) => name.replaceAll('.', String.raw`\.`))
    .join('|')})(?![a-z])`,
  'g',
);

/** Most words that are said back. */
const TOLD = 6;

/**
 * The words of a text beside its numbers that are neither the name of a reading nor merely neutral; undefined where there
 * are none. Nothing may be called fine while something was said that nobody looked at.
 */
export function saidBeside(text: string): string | undefined {
  const words = (
    clean(text)
      .replace(NAMES, ' ')
      .match(/[a-z][a-z'’]*/g) ?? []
  ).filter((word) => word.length > 1 && !NEUTRAL.has(word));
  return words.length === 0 ? undefined : words.slice(0, TOLD).join(' ');
}
