import { significant } from '../../quantity/format.ts';
import { gravityOf, salinityPacePpt, salinityPaceWords } from '../../water/salinity-pace.ts';
import type { Recogniser, Verdict } from '../claim.ts';
import { numbersIn } from '../rule-text.ts';

const A_DAY = String.raw`\s*(?:a|per|each|every|in (?:a|1)|\/)\s*(?:1 )?(?:day|24 ?h)`;
const STEP = String.raw`(?<![\d.])(0?\.00\d+)\s*(?:sg|specific gravity|points?)?(?: of (?:sg|salinity))?`;
const PPT = String.raw`(?<![\d.])(\d+(?:\.\d+)?)\s*(?:ppt|psu)(?: of salinity)?`;

/** "max 0.001 SG a day", "never change salinity more than 1 ppt per day": a pace of salinity. */
export const salinityPace: Recogniser = ({ text }) => {
  const gravity = numbersIn(text, new RegExp(STEP + A_DAY))?.[0];
  const ppt = gravity === undefined ? numbersIn(text, new RegExp(PPT + A_DAY))?.[0] : undefined;
  const [scale, claimed] = gravity === undefined ? (['ppt', ppt] as const) : (['SG', gravity] as const);
  if (claimed === undefined || !(claimed > 0)) return undefined;
  if (/\b(?:evaporat\w*|los(?:e|es|ing)|drops?|rises?|climbs?|falls?)\b/.test(text)) return undefined;
  const claimedPpt = scale === 'SG' ? claimed / gravityOf(1) : claimed;
  return {
    kind: 'pace of salinity',
    rule: `salinity is moved at most ${significant(claimed, 3)} ${scale} a day`,
    verdict: verdictOf(claimedPpt, /\b(?:rais\w+|increas\w+|up)\b/.test(text)),
    figure: `common practice is at most ${salinityPaceWords.down} a day downward and ${salinityPaceWords.up} upward; nothing published fixes it, and slower is never wrong`,
    working: [
      `usual pace: ${salinityPacePpt.down} ppt a day downward, ${salinityPacePpt.up} upward; near 35 ppt, 1 ppt is ${gravityOf(1).toFixed(5)}`,
    ],
    steps: ['Check the instrument on a 35 ppt standard before you move the tank at all.'],
    sources: ['practice'],
  };
};

/** Half to all of the usual pace is what is done; slower is gentler than it need be. Upward half of it. */
function verdictOf(claimedPpt: number, isRaised: boolean): Verdict {
  const { up, down } = salinityPacePpt;
  const ofUsual = claimedPpt / down;
  if (isRaised && claimedPpt > 1.02 * up) return claimedPpt > 1.35 * up ? 'wrong' : 'roughly right';
  if (ofUsual > 1.35) return 'wrong';
  return ofUsual > 1.02 || ofUsual < 0.45 ? 'roughly right' : 'right';
}
