import type { UrgentCard } from './card.ts';
import { BLEACH_GAS } from '../hazards.ts';

/** Something got into the water. Common practice, no source; how poisonous a given thing is, is mostly not known. */
export const burstHeater: UrgentCard = {
  label: 'Burst heater or pump',
  first:
    'Electricity first: pull every plug at the wall or switch off the breaker before anything of you touches the water.',
  steps: [
    'Take out all parts, glass and sand or powder that came out of it. Gloves: glass.',
    'Keep the return pump off, so that the sump does not reach the display; an air stone there for oxygen.',
    'Change a large part of the water as soon as new water is mixed and matched, and again the next day.',
    'Fresh activated carbon and a resin that binds metals, by their labels.',
    'Keep the tank warm by other means: another heater after a check, a warm room, closed bottles of warm water.',
    'Watch ammonia, pH and temperature for days.',
    'A laboratory can measure metals: send a sample kept from today.',
  ],
  never: [
    'Never reach in with the power on.',
    'Do not wait and see: soft corals and shrimps go first.',
    'Do not plug it in again to try it. A ground-fault breaker belongs before every tank.',
  ],
  stop: 'Any tingle: hands off and breaker off. Animals dying after the first change: ask experienced keepers today. How poisonous it was is not known.',
  sources: ['practice', 'mixing'],
};

export const bleachOrSpray: UrgentCard = {
  label: 'Bleach, cleaner or spray',
  first: 'Stop the source, open the windows, and get people out if it smells sharp or anyone coughs.',
  steps: [
    'Air pumps and skimmers suck in room air: draw it from outside, or switch them off; pumps move the surface.',
    'Fresh activated carbon at once, plenty of it, where the water flows through.',
    'Change a third of the water now, matched in salinity and temperature, and again tomorrow.',
    'Bleach or chlorine: a conditioner made for it, by its own label.',
    'Skim wet, and let the skimmer overflow into a bucket if it foams: soap and oils foam.',
    'Keep a bottle of the water and the label of what it was.',
    'Watch fish and shrimps for a day; take out anything dead.',
  ],
  never: [BLEACH_GAS, 'Do not add a second chemical to fight the first unless its label says so.'],
  stop: 'Coughing, burning eyes or dizziness in people: out, and /urgent what:person hurt. Fish gasping: /urgent what:oxygen loss.',
  sources: ['practice', 'mixing', 'ghs'],
};

export const shreddedAnemone: UrgentCard = {
  label: 'Anemone in a pump',
  first: 'Pull the plug of that pump, take out every piece, and run fresh carbon today.',
  steps: [
    'Pump off at the plug before your hand goes in; another pump or an air stone keeps oxygen up for the fish.',
    'Take out every piece with a net or hose, in the pump and the sump too.',
    'Fresh activated carbon now, and skim as wet as it will go.',
    'Change 20 to 30 % of the water soon, matched in salinity and temperature.',
    'Test ammonia today and on the next two days. Watch how the fish breathe.',
    'A part that still has foot and mouth may heal: a guarded box, gentle flow, no food until it is firm.',
    'Guard every intake with foam or mesh before the pump runs again.',
  ],
  never: [
    'Do not open a pump that is plugged in.',
    'Wear gloves: the bits still sting.',
    'Do not leave pieces to rot until morning.',
  ],
  stop: 'Fish gasping, or ammonia that can be read: /urgent what:ammonia. A limp, smelling remainder comes out.',
  sources: ['practice', 'mixing'],
};
