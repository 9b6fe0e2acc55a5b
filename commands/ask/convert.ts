import { Problem } from '../../core/problem.ts';
import { parameter } from '../../core/water/parameter.ts';
import type { Answer } from '../answer.ts';
import type { OwnContext } from '../command.ts';
import { convertCommand } from '../convert.ts';
import { call } from './call.ts';
import { definitionOf } from '../../core/quantity/unit.ts';
import type { Heard } from '../../core/words/hear.ts';
import { is, type Mention } from '../../core/words/mention.ts';
import { says, type Intent } from './intent.ts';

const BOX =
  /\d+(?:\.\d+)?\s*(?:cm|mm|in|inch|inches|"|ft)?\s*(?:x|by)\s*\d+(?:\.\d+)?\s*(?:cm|mm|in|inch|inches|"|ft)?\s*(?:x|by)\s*\d+(?:\.\d+)?\s*(?:cm|mm|inches|inch|in|"|ft)/;

/** "how many gallons is 30x18x20 inches", "8.5 dkh in meq", "10 gallons to litres". */
export const convertIntent: Intent = (heard, context) => {
  const box = BOX.exec(heard.text)?.[0];
  if (box !== undefined) return call(convertCommand, { amount: box }, context);
  const turned = unitsFirst(heard.text) ?? bareOf(heard);
  if (turned !== undefined) return attempt(turned, context);
  const [only, more] = heard.mentions.filter(({ kinds }) => !kinds.includes('bare'));
  if (only === undefined || more !== undefined) return undefined;
  if (!says(heard, 'convert') && !namesUnit(heard, only) && !asksNothingElse(heard, only)) return undefined;
  const [named] = heard.parameters;
  return attempt(
    { amount: only.text, of: named === undefined ? undefined : parameter(named).label },
    context,
  );
};

const ALK = String.raw`(?:dkh|kh|meq(?:\/l)?|ppm(?: caco3)?)`;
const UNITS = String.raw`(?:${ALK}|mg\/l|ppb(?: (?:p|po4))?|gal(?:lon)?s?|lit(?:er|re)s?|l|ml|oz|f|c|fahrenheit|celsius|inch(?:es)?|in|cm|lbs?|kg|g|grams?|ppt|sg|ms\/cm)`;
const UNITS_FIRST = new RegExp(
  String.raw`^(?:can (?:you|u) |pls |please |what is |whats )?(?:convert )?(${UNITS}) (?:to|in|into|2) ${UNITS}\s*[?:=,]?\s*(?:for |of )?(\d+(?:\.\d+)?|\.\d+)\s*\??$`,
);

/** "dkh to ppm 9", "convert f to c 78": the number behind both units belongs to the first. */
function unitsFirst(text: string): { amount: string; of: string | undefined } | undefined {
  const [, unit, number] = UNITS_FIRST.exec(text.trim()) ?? [];
  if (unit === undefined || number === undefined) return undefined;
  const of = new RegExp(`^${ALK}$`).test(unit) ? parameter('alkalinity').label : undefined;
  return { amount: `${number} ${unit}`, of };
}

/** "po4 .08 in ppb": the one number, without a unit, of a parameter whose other unit is asked. */
function bareOf(heard: Heard): { amount: string; of: string } | undefined {
  const [only, more] = heard.said;
  const alone = heard.mentions.length === 1 && more === undefined;
  if (!alone || only === undefined || only.role !== 'plain') return undefined;
  const { kind, unit, label } = parameter(only.parameter);
  const { mention } = only;
  if (kind === 'concentration' || /\b(?:in|to) (?:mg\/l|mgl)\b/.test(heard.text)) return undefined;
  if (kind !== 'alkalinity' && /\b(?:in|to) ppm\b/.test(heard.text)) return undefined;
  if (!is(mention, 'bare') || !namesUnit(heard, { ...mention, kinds: [kind] })) return undefined;
  return { amount: `${mention.text} ${unit}`, of: label };
}

/** "in litres", "to meq/l", "how many gallons": another unit of the same kind. */
function namesUnit({ text }: Heard, mention: Mention): boolean {
  const rest = `${text.slice(0, mention.start)} | ${text.slice(mention.end)}`;
  const names = mention.kinds
    .flatMap((kind) => (kind === 'bare' ? [] : [definitionOf(kind).units]))
    .filter((units) => units.length > 1)
    .flat()
    .flatMap(({ symbol, names: others }) => [symbol.toLowerCase(), ...others])
    .filter((name) => name !== '')
    .map((name) => name.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&'));
  const unit = new RegExp(
    String.raw`(?:\b(?:in|to|into|as|how many|how much)|= ?\??) (?:${names.join('|')})(?![a-z0-9])`,
  );
  return unit.test(rest);
}

/** "whats 8.5 dkh", "how much is 75 gal?". */
function asksNothingElse({ text }: Heard, { start, end }: Mention): boolean {
  const rest = `${text.slice(0, start)} ${text.slice(end)}`;
  return (
    /\b(?:how much is|what'?s|what is|equals?)\b/.test(rest) &&
    !/[a-z]{2}/.test(
      rest.replaceAll(
        /\b(?:how|much|is|what|what's|whats|equals?|to|in|of|alk|alkalinity|kh|please|pls)\b/g,
        ' ',
      ),
    )
  );
}

/** A value that cannot be converted is no reason to fail: another reading of the sentence may fit. */
function attempt(input: { amount: string; of: string | undefined }, context: OwnContext): Answer | undefined {
  try {
    return call(convertCommand, input, context);
  } catch (error) {
    if (error instanceof Problem) return undefined;
    throw error;
  }
}
