import { readIn } from '../../corals/basis-words.ts';
import type { UrgentCard } from './card.ts';
import { limitsOf } from '../../water/limits.ts';
import { paceWords } from '../../water/pace-words.ts';

const urgentS = { low: NaN, high: NaN, ...limitsOf('salinity').urgent };

/** What ammonia did to young clownfish, mg/L as nitrogen of NH3. */
export const AMMONIA_HARM = `ammonia: half of young clownfish died in 96 h at 0.75 mg/L NH3-N, gill damage at 0.57 (${readIn('Medeiros2014')})`;

/** A number of the water that hurts today. Common practice, no source, unless said. */
export const ammonia: UrgentCard = {
  label: 'Ammonia',
  first: 'Stop feeding, move the surface strongly, and test again with a fresh sample.',
  steps: [
    'Find and take out anything dead or rotting: count the fish, look behind the rock and in the sump.',
    'Confirmed: change a quarter to a half of the water today, matched in salinity and temperature.',
    'Add filter media from a healthy tank, if a keeper you trust has some.',
    'A product that binds ammonia can bridge a day: by its own label. Some kits then read ammonia that is bound.',
    'Test every day until it reads none for several days.',
    'Then the cause: a death, too many new animals, food, a filter washed too hard, or a tank that has not cycled.',
  ],
  never: [
    'Do not raise pH: that turns more of it into the form that burns gills.',
    'Do not add animals, and do not wash the filter or the sand.',
  ],
  stop: 'Fish in distress, or more than 0.5 mg/L in all with fish in: ask a vet who knows fish today. I name no medicine.',
  published: [AMMONIA_HARM],
  sources: ['practice', 'mixing'],
};

export const overdose: UrgentCard = {
  label: 'Too much dosed',
  first:
    'Stop everything that adds it, the doser and limewater in the top-off too, and test again with a fresh sample.',
  steps: [
    'Unplug the doser and the top-off with dry hands.',
    'Strong movement at the surface and an open window: air brings a high pH down.',
    'Read pH. Is the water milky? Then some of it is falling out: leave the flow on, change filter floss often.',
    'Animals suffer: change a quarter of the water, matched and tested, never a huge part. Else let it be used up.',
    'Test again in the evening and tomorrow. Start dosing again, lower, only when it is back where you keep it.',
    'Then the cause: a doser that ran on, a siphon, a unit or decimal read wrongly, somebody dosing twice.',
  ],
  never: [
    'No acid, vinegar or carbon dioxide into the tank to push it down.',
    'No calcium to match alkalinity, nor the other way round: the water goes milky.',
  ],
  stop: 'A pH that stays above 8.5 with air, milky water with fish gasping, or corals losing flesh: ask experienced keepers now.',
  sources: ['practice', 'mixing'],
};

/** What is dosed and is no salt of alkalinity, calcium or magnesium: iodine, iron, amino acids, a carbon source, bacteria, food. */
export const otherOverdose: UrgentCard = {
  label: 'Too much of something else',
  first:
    'Stop whatever still adds it, take out what has not dissolved, and watch the animals: how they breathe, whether corals shut.',
  steps: [
    'Read the label: what is in it, what it says of too much, whom to call if a person touched or swallowed it.',
    'Strong movement at the surface and an air stone: whatever feeds bacteria uses up oxygen, most of all at night.',
    'Skim wet, fresh activated carbon: it takes out iodine and much that is organic, little of metals and salts.',
    'Change a quarter of the water now, salinity and temperature matched, and tomorrow; more if animals suffer.',
    'Feed nothing today. After food, bacteria or amino acids test ammonia today and on the next two days.',
    'Start again with the dose of the label only when all has looked well for a week.',
  ],
  never: [
    'Add nothing against it unless its label says so.',
    'Not one huge change: a swing as large the other way.',
  ],
  stop: 'Fish gasping (/urgent what:oxygen loss), or animals dying after the first change: ask experienced keepers now. How poisonous it was is not known.',
  sources: ['practice', 'mixing'],
};

export const salinityCrash: UrgentCard = {
  label: 'Salinity far off',
  first:
    'Top-off off, then measure again with an instrument checked in 35 ppt fluid: change nothing on one reading.',
  steps: [
    'Water above its mark: fresh water ran in. Only a little off: leave the top-off off and let it evaporate.',
    `Far too low: raise it with swaps of stronger salt water, ${paceWords('salinity').up}.`,
    'Far too high: swap tank water for fresh (RO) water as warm as the tank, poured slowly into strong flow.',
    'Keep temperature the same, the surface moving, and feed little.',
    'Leave calcium, magnesium and alkalinity alone until salinity is right: they move with it.',
    'Find out why: a top-off that ran on or ran dry, a leak refilled with fresh water, a wrong mix, the instrument.',
  ],
  never: [
    'No dry salt into the tank, and no bucket of fresh water at once.',
    'Do not believe the first reading: swing arms and refractometers drift.',
  ],
  stop: `At ${urgentS.low} ppt and less or ${urgentS.high} and more, or animals dying: ask experienced keepers at once. How fast it may then go back is not known.`,
  published: [`reefs occur from 28.7 to 40.4 (${readIn('Guan2015')})`],
  sources: ['practice', 'mixing'],
};
