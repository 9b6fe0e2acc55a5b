import { handling, hazard, LABEL_FIRST } from '../../core/care/hazards.ts';
import { hurtWays } from '../../core/care/house-cards/hurt.ts';
import { fits } from '../../core/care/meant-cards.ts';
import { primer } from '../../core/care/primers/cards.ts';
import { findCorals } from '../../core/corals/find.ts';
import { findCompound } from '../../core/dosing/compound.ts';
import { met, type Met } from '../../core/language/met.ts';
import type { Slots } from '../../core/language/slots.ts';
import type { Scanned } from '../../core/language/tokens.ts';
import { answer, type Answer } from '../answer.ts';
import { call } from '../called.ts';
import type { OwnContext } from '../command.ts';
import { SPINES } from '../../core/care/urgent/out-of-water.ts';
import { say } from '../../core/wording/say.ts';
import { cardAnswer } from '../primer/card-answer.ts';
import { urgentCommand } from '../urgent.ts';
import { hurtAction, isHurt } from '../urgent/hurt.ts';
import { cleaningCare, noCleaner } from './no-amount.ts';
import { otherHandling } from './handling-others.ts';
import { isGas } from './refused.ts';

/** What puts into the air or under the skin what lives on rock. */
const WORK: readonly Met[] = [
  'deeds.boils',
  'deeds.scrapes',
  'deeds.cleans',
  'deeds.soaks',
  'hardware.saw',
  'hardware.pan',
  'substances.hotWater',
  'poisons.bleach',
  'poisons.acid',
  'poisons.peroxide',
  'substances.carbonSource',
];
const HEAT: readonly Met[] = ['deeds.boils', 'hardware.pan', 'substances.hotWater'];
const ROCK: readonly Met[] = ['places.rock', 'substances.rockAndSand'];
const MAINS: readonly Met[] = [
  'hardware.plug',
  'hardware.powerStrip',
  'hardware.extensionLead',
  'hardware.residual',
  'hardware.breaker',
  'hardware.cable',
  'hardware.voltage',
  'gear.heater',
];
const CAUSTIC: readonly Met[] = [
  'poisons.acid',
  'poisons.bleach',
  'poisons.peroxide',
  'substances.lye',
  'poisons.permanganate',
];
/** What to do after trouble in a tank. */
const HANDS = 'Wear gloves where you have a cut, and wash your hands and arms afterwards.';

/** Whether something is safe to handle, before anybody is hurt; undefined where nothing is known of it here. */
export function handlingAnswer(scanned: Scanned, slots: Slots, context: OwnContext): Answer | undefined {
  if (isGas(scanned)) return noCleaner(true);
  const isZoanthid =
    met(scanned, 'corals.zoanthid', 'corals.palythoa') || (slots.corals ?? []).some(holdsPoison);
  if ((isZoanthid && met(scanned, ...WORK)) || (met(scanned, ...ROCK) && met(scanned, ...HEAT)))
    return call(urgentCommand, { what: 'zoanthid rock' }, context);
  if (isZoanthid) return cardAnswer(primer('palytoxin'));
  return (
    ofSalt(slots) ??
    (met(scanned, ...CAUSTIC) ? cleaningCare : undefined) ??
    (met(scanned, ...MAINS) ? cardAnswer(primer('water and mains')) : undefined) ??
    otherHandling(scanned) ??
    ofAnimal(scanned)
  );
}

function holdsPoison(name: string): boolean {
  const found = findCorals(name);
  const entries = found.kind === 'one' ? [found.entry] : found.kind === 'several' ? found.entries : [];
  return entries.some((entry) => entry.hazard?.palytoxin === true);
}

/** What a powder can do to whoever handles it. */
function ofSalt({ salts = [] }: Slots): Answer | undefined {
  const forms = salts.flatMap((salt) => findCompound(salt) ?? []);
  const ids = [...new Set(forms.map((form) => form.hazard))];
  if (ids.length === 0) return undefined;
  const all = ids.map(handling);
  const [worst, ...dangers] = [...new Set(all.flatMap((each) => each.dangers))];
  const cautions = [...new Set(all.flatMap((each) => each.cautions))];
  const sources = [...new Set(ids.map((id) => hazard(id).basis))];
  return answer({
    headline: worst ?? LABEL_FIRST,
    read: [`handling ${salts.join(' and ')}`],
    dangers,
    cautions: cautions.filter((text) => worst !== undefined || text !== LABEL_FIRST),
    sources,
  });
}

/** What stings or pricks, with the first aid a tap away. */
function ofAnimal(scanned: Scanned): Answer | undefined {
  const card = hurtWays['spine or sting'].find((way) => way.if !== undefined && fits(way, scanned))?.card;
  if (card === undefined || !isHurt(card)) return undefined;
  return answer({
    headline: card === 'fish spine' ? SPINES : HANDS,
    sources: ['practice'],
    next: [{ ...hurtAction(card), label: say('triage.ifItHasHappened') }],
  });
}
