import { describe, expect, it } from 'vitest';
import { ask } from '../../ask.ts';
import type { Answer } from '../../../commands/answer.ts';
import { urgentCards, type UrgentId } from '../../../core/care/urgent/cards.ts';
import { hurtCards, type HurtId } from '../../../core/care/hurt/cards.ts';
import { symptomCards, type SymptomId } from '../../../core/care/symptoms/cards.ts';
import { medicineDoses } from '../../core/care/medicine.ts';
import { rendered } from '../coral/rendered.ts';
import { textOf } from '../text.ts';

const told = (question: string): Answer => ask(question, { nowMs: 0 });

/** Sentences as members type them in a hurry. */
const urgent: readonly (readonly [string, UrgentId])[] = [
  ['power just went out help', 'power cut'],
  ['no electricity since midnight what now, 55 gal', 'power cut'],
  ['lost power 4 hrs ago fish look ok', 'power cut'],
  ['whole street has a power outage!!', 'power cut'],
  ['heater stuck on tank is at 31c what do i do', 'overheating'],
  ['water is 88F!! heat wave here, 120 litres', 'overheating'],
  ['tank is at 31 c, help', 'overheating'],
  ['heater died overnight, water 18c, what do i do', 'cold water'],
  ['woke up to 17c tank is freezing cold', 'cold water'],
  ['ammonia spike!! fish at bottom', 'ammonia'],
  ['ammonia 1 ppm help fish dying, 60 gal', 'ammonia'],
  ['overdosed alk to 14 dkh by accident 100 gal', 'overdose'],
  ['doser got stuck and dumped all the kalk in', 'overdose'],
  ['i dumped the whole bottle of calcium in', 'overdose'],
  ['added way too much soda ash, kh 15', 'overdose'],
  ['ato stuck on all night, salinity 1.015 what now', 'salinity crash'],
  ['salinity crashed to 1.016, 55 gal', 'salinity crash'],
  ['tank is leaking all over the floor', 'flood'],
  ['water all over the floor and near the power strip', 'flood'],
  ['sump flooded the living room', 'flood'],
  ['seam burst', 'flood'],
  ['all my fish are gasping', 'oxygen loss'],
  ['clownfish gasping at the surface', 'oxygen loss'],
  ['heater exploded', 'burst heater'],
  ['found a rusty screw in the sump', 'burst heater'],
  ['kid sprayed air freshener near the tank', 'bleach or spray'],
  ['bleach spilled into the sump', 'bleach or spray'],
  ['soap got in the water', 'bleach or spray'],
];

/** The same of people: what happened decides what comes first. */
const people: readonly (readonly [string, HurtId])[] = [
  ['my lips are numb after fragging zoas', 'palytoxin breathed'],
  ['i have fever and cough since scrubbing rock', 'palytoxin breathed'],
  ['got a tingle when i touched the water', 'electric shock'],
  ['my wife got stung by the anemone', 'anemone or coral sting'],
  ['tastes like metal after boiling rocks', 'palytoxin breathed'],
  ['lime dust in my eyes', 'in the eye'],
  ['power is out and my son got shocked by the tank', 'electric shock'],
  ['overdosed kalk and got some in my eyes', 'in the eye'],
  ['heater burst, i felt a shock', 'electric shock'],
  ['how much copper for 40 gal, i swallowed some', 'swallowed'],
  ['remind me every day: lime in my eye', 'in the eye'],
  ['my zoas are closed and i have a metallic taste', 'palytoxin breathed'],
];

describe('an emergency', () => {
  it.each(urgent)('%s', (question, id) => {
    const given = told(question);
    expect(given.headline).toBe(urgentCards[id].first);
    expect(rendered(given).issues).toEqual([]);
    expect(medicineDoses(textOf(given))).toEqual([]);
  });

  it.each([
    ['no electricity since midnight what now, 55 gal', /208\.2 L/],
    ['heater stuck on tank is at 31c what do i do', /31 °C/],
    ['water is 88F!! heat wave here, 120 litres', /31\.1 °C/],
    ['tank is at 31 c, help', /31 to 28 °C in no less than 3 hours/],
    ['heater died overnight, water 18c, what do i do', /18 to 22 °C in no less than 4 hours/],
    ['ammonia 1 ppm help fish dying, 60 gal', /113\.6 L/],
    ['overdosed alk to 14 dkh by accident 100 gal', /12\.8 dKH/],
    ['added way too much soda ash, kh 15', /15 dKH/],
    ['ato stuck on all night, salinity 1.015 what now', /days, at most 0\.66 ppt a day/],
    ['salinity crashed to 1.016, 55 gal', /21 days/],
  ])('takes the numbers along: %s', (question, pattern) => expect(textOf(told(question))).toMatch(pattern));

  it('leaves fresh water that ran in to its own sum where both salinities are said', () =>
    expect(told('my ato got stuck and kept adding, salinity 1.024 instead of 1.025').headline).toMatch(
      /^Leave it/,
    ));
});

const seen: readonly (readonly [string, SymptomId])[] = [
  ['my acro is bleaching', 'pale all over'],
  ['torch lost its color, all white but flesh still on', 'pale all over'],
  ['my acro is bleaching from the base', 'base recedes'],
  ['acro going white overnight skin peeling', 'flesh peels'],
  ['torch has brown jelly', 'brown jelly'],
  ['zoas wont open for a week', 'zoanthids shut'],
  ['zoas melting one by one', 'zoanthids shut'],
  ['euphyllia heads bailing out', 'polyps float'],
  ['my leather is shedding', 'waxy leather'],
  ['corals all closed up today', 'polyps closed'],
  ['new duncan stays shut, alk 5.1 dkh', 'polyps closed'],
  ['everything looks bad all corals closed', 'many at once'],
  ['hammer shriveled up', 'shrunken'],
  ['white tips on my birdsnest', 'white tips'],
  ['flatworms everywhere', 'flatworms'],
  ['aiptasia all over the rock', 'glass anemones'],
  ['brown dust on sand, month old tank', 'brown dust'],
  ['cyano all over my sand', 'red slime'],
  ['brown snotty strings with bubbles, snails dying', 'brown strings'],
  ['snails are dying and brown slime on rocks', 'brown strings'],
  ['hair algae taking over', 'green hair'],
  ['bryopsis on my frag plugs', 'feather algae'],
  ['water went cloudy after dosing', 'cloudy'],
  ['tang breathing fast', 'fish gasping'],
  ['clownfish has white spots', 'fish spots'],
  ['ammonia detected in my 2 year old tank', 'ammonia seen'],
  ['alk consumption suddenly dropped', 'alkalinity use'],
  ['my bta keeps moving around and its mouth is open', 'anemone off'],
  ['frag turned brown since i got it', 'turns brown'],
];

describe('something seen', () => {
  it.each(seen)('%s', (question, id) => {
    const given = told(question);
    expect(given.headline).toBe(symptomCards[id].first);
    expect(given.read[0]).toBe(`your question as /triage seen:${id}`);
    const { issues, text } = rendered(given);
    expect(issues).toEqual([]);
    for (const caution of given.cautions) expect(text.replaceAll(/[\\​]/g, '')).toContain(caution);
    expect(medicineDoses(textOf(given))).toEqual([]);
  });

  it('judges readings said along with it, and lets them speak', () => {
    const given = told('my torch is shut and corals wont open, salinity 30 ppt');
    expect(given.facts[0]?.value).toMatch(/you said: salinity 30 ppt/);
    expect(given.facts.some(({ label, verdict }) => label === 'salinity' && verdict === 'low')).toBe(true);
  });

  it('offers the next thing the words can mean', () => {
    const labels = told('clownfish breathing fast with white spots').next.map(({ label }) => label);
    expect(labels).toContain(`Or rather: ${symptomCards['fish spots'].label}`);
  });
});

const CARDS = [...Object.values(urgentCards), ...Object.values(symptomCards)].map(
  ({ first }): string => first,
);

describe('what is no trouble', () => {
  it.each([
    'how do i raise my heater to 26',
    'power of my pump',
    'is a torch a hardy coral',
    'what size heater for a 50 gal',
    'is 28c too hot for a torch',
    'my anemone swallowed a snail',
    'do corals bleach from too much light',
    'best magnet cleaner for my tank',
    'can i use bleach to clean my sump',
    'how to prevent a flood',
    'spray bar or wavemaker',
    'my torch got shocked by the new light',
    'cleaner shrimp in my tank molted',
    'what par for acros',
    'black sand or white sand',
    'fish are happy and corals open',
    'hypo treatment at 1.009',
    'raise salinity from 1.020 to 1.025 in 60 gal',
    'how much bleach to clean a pump',
    'flood light for the fuge',
    'paint the back of my tank black',
    'i feel sick of algae',
    'just got a clownfish and a bta, is a powerhead a problem',
    'remind me to check the heater every sunday',
    'nitrate 80, 55g, 20% a week, how many to 10',
    'temp is 84',
    'raise alk 7.2 to 8.4 in 75 gal with soda ash',
    'i overshot my alk, test reads 14 dkh, 75 gal system, my mix is 8. how big a water change gets me to 9',
  ])('%s', (question) => expect(CARDS).not.toContain(told(question).headline));

  it('an algae blackout is no power cut', () =>
    expect(told('blackout for dinos, 3 days?').headline).not.toBe(urgentCards['power cut'].first));
});

describe('people before everything', () => {
  it.each(people)('%s', (question, id) => {
    const given = told(question);
    expect(given.headline).toBe(hurtCards[id].first);
    expect(rendered(given).issues).toEqual([]);
    expect(medicineDoses(textOf(given))).toEqual([]);
  });
});
