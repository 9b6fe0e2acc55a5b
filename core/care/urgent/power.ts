import type { UrgentCard } from './card.ts';

/** No power, no oxygen, fire, or water where mains are. All of it common practice, no source. */
export const fireOrSparks: UrgentCard = {
  label: 'Fire, smoke or sparks',
  first:
    'People first: if anything burns or smokes, everybody out and call the fire service. Breaker off only if the way there is safe.',
  steps: [
    'Sparks, a hot plug, a burning smell, no flames: breaker off from a dry place before you touch plug or water.',
    'Breaker out of reach or the panel wet: keep everybody away and call an electrician or the fire service.',
    'Power off and no smoke: unplug with dry hands. What was wet, scorched or melted is never plugged in again.',
    'Smoke breathed in, a burn or a shock: medical help (/urgent what:person hurt).',
    'A battery air pump or scooping by hand keeps the tank until an electrician has been (/urgent what:power cut).',
    'Soot, plastic or powder in the water: fresh carbon, a large matched change (/urgent what:bleach or spray).',
  ],
  never: [
    'No water on anything electric that burns.',
    'Do not go back in for animals, and do not plug it in again to try it.',
  ],
  stop: 'Flames, smoke that goes on, or a breaker that trips again: fire service or electrician. The tank waits.',
  sources: ['practice'],
};

export const powerCut: UrgentCard = {
  label: 'Power cut',
  first:
    'Oxygen first: from the minute it is off keep the surface moving, with a battery air pump or by hand every 15 to 30 minutes.',
  steps: [
    'With dry hands unplug heater, lamps and pumps at the wall: power comes back without warning.',
    'By hand: pour jugs of tank water back from above, or stir the surface, some minutes each time, at night too.',
    'No feeding. Two to three days without light do no harm.',
    'Keep the warmth: blankets round the sides, the top open. Above about 21 °C in the room there are hours.',
    'It gets cold: float closed bottles of warm water. Take out anything dead at once.',
    'Heavily stocked tanks and those full of Acropora fail first, within hours where the water stands still.',
    'A closed canister filter goes foul: shut it off, and rinse it before it runs again.',
    'When power is back: pumps first, then watch that skimmer and top-off do not overflow.',
    'Warm up slowly, test ammonia, lights at their usual hours.',
  ],
  ahead:
    'Not off yet: run a charged battery air pump for an hour, feed lightly the day before, show a helper the plugs.',
  never: [
    'Never run a generator, grill or stove indoors or near a window: the fumes kill people.',
    'Do not dose anything and do not change a lot of water while it is cold.',
  ],
  stop: 'Fish that gasp although the surface moves, or water that leaves 21 to 29 °C: ask here at once, and ask neighbours with power to take animals in.',
  sources: ['practice'],
};

export const oxygenLoss: UrgentCard = {
  label: 'Fish gasp (oxygen loss)',
  first: 'Move the surface now: air stone in, a pump aimed up at the surface, lid off.',
  steps: [
    'Before your hands go in, unplug what you will touch, with dry hands.',
    'Are the pumps running? Read the temperature: warm water holds less oxygen.',
    'Open a window, and stop sprays, paint or smoke in the room.',
    'Stop feeding, and stop dosing anything that bacteria eat (vinegar, sugar, alcohol).',
    'Test ammonia, and look for something dead.',
    'Change 20 to 30 % with matched, well aired water where ammonia or a poison is likely.',
    'Look closely: one fish or all? Fine dust or spots on the skin point to a parasite (/triage).',
  ],
  never: [
    'Do not put a medicine into a reef tank: many take oxygen or kill invertebrates.',
    'Do not move gasping fish about with a net unless the other tank is ready.',
  ],
  stop: 'Still gasping half an hour after air and movement: ask a vet who knows fish, or experienced keepers, now.',
  sources: ['practice'],
};

export const flood: UrgentCard = {
  label: 'Water on the floor, mains',
  first:
    'Stay out of the wet: switch the power off at the breaker, from a dry place, before you touch water or plugs.',
  steps: [
    'Breaker out of reach or the panel wet: keep everybody away and call an electrician or your emergency number.',
    'Stop the flow: a siphon ends when air gets into the hose, a running top-off when its supply is shut.',
    'A cracked tank: draw the water into clean tubs, and move animals into them with tank water and an air stone.',
    'Tell anyone living below.',
    'Anything electric that got wet stays off until somebody qualified has checked it.',
    'Replace what ran out with salt water of the same salinity and temperature, since salt left with it.',
    'Then find out why: a drilled air hole in the return line, a second stop on the top-off.',
    'Drip loops in every cable, and a ground-fault breaker before the tank.',
  ],
  never: [
    'Do not step into water near live sockets, and do not pull wet plugs.',
    'Do not replace lost tank water with fresh water.',
  ],
  stop: 'A tingle from the water or the tank: hands off, everybody away, breaker off, electrician.',
  sources: ['practice', 'mixing'],
};
