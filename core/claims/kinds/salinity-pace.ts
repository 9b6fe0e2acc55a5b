import { significant } from '../../quantity/format.ts';
import { gravityOf, salinityPacePpt, salinityPaceWords } from '../../water/salinity-pace.ts';
import type { Judge, Verdict } from '../claim.ts';
import { has, is } from '../stated.ts';
import { isLimit } from './habits.ts';

/** Most a step of specific gravity is. */
const MOST_STEP = 0.01;

/** "max 0.001 SG a day", "never change salinity more than 1 ppt per day": a pace of salinity. */
export const salinityPace: Judge = (stated) => {
  const said = stated.amounts.find(({ everyDays }) => everyDays === 1);
  if (said === undefined || !(said.value > 0)) return undefined;
  const isStep = said.value < MOST_STEP && (is(said, 'bare') || is(said, 'gravity'));
  const isSalinity =
    is(said, 'salinity') || (isStep && (is(said, 'gravity') || stated.parameters.includes('salinity')));
  const isTold = has(stated, 'events.wentDown', 'events.wentUp', 'deeds.topsOff') && !isLimit(stated);
  if (!isSalinity || isTold) return undefined;
  const [scale, claimed] = [isStep ? ('SG' as const) : ('ppt' as const), said.value];
  const claimedPpt = scale === 'SG' ? claimed / gravityOf(1) : claimed;
  return {
    kind: 'pace of salinity',
    rule: `salinity is moved at most ${significant(claimed, 3)} ${scale} a day`,
    verdict: verdictOf(claimedPpt, has(stated, 'manner.rise', 'sums.riseBy') && !has(stated, 'parts.change')),
    figure: `usual is at most ${salinityPaceWords.down} a day downward, ${salinityPaceWords.up} upward`,
    besides: 'common practice: nothing published fixes it, and slower is never wrong',
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
