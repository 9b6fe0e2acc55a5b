import type { Primer } from './primer.ts';
import { paceWords } from '../../water/pace-words.ts';

/** Numbers: gravities and conductivities from fm83 at 25 °C; shares from the mass balance; the rest common practice. */
export const waterCards: readonly Primer[] = [
  {
    id: 'salinity',
    names: [
      'refractometer',
      'hydrometer',
      'salinity instruments',
      'specific gravity',
      'conductivity',
      'sg',
      'ppt',
    ],
    headline:
      'Aim for 35 ppt and check the instrument before you change the water: every other reading hangs on this one.',
    points: [
      ['35 ppt', 'is 1.0264 at 25 °C and 53 mS/cm'],
      ['Refractometer', 'set it with a 35 ppt fluid for refractometers, not with pure water'],
      ['Swing arm', 'off by up to 0.005 either way; bubbles and crust make it worse'],
      ['Probe', 'corrects for temperature or not: find out which'],
      ['Glass hydrometer', 'good, in still water at its own temperature'],
    ],
    steps: [
      'Rinse, calibrate, measure twice.',
      `Lower it by ${paceWords('salinity').down}.`,
      `Raise it by ${paceWords('salinity').up}.`,
    ],
    see: ['mixing salt water', 'top-off', 'test kits'],
    sources: ['fm83', 'cs80', 'practice'],
  },
  {
    id: 'mixing salt water',
    names: ['salt mix', 'mix salt', 'mixing salt', 'making salt water', 'new salt water'],
    headline: 'Weigh the salt, mix it in a bin of its own, measure, correct: cups are not a measure.',
    points: [
      [
        'How much',
        '36 to 39 g of mix from the bag in a litre for 35 ppt (common practice); its label comes first',
      ],
      ['Too low', 'about 1 g a litre more for each ppt'],
      ['Too high', '3 % more fresh water takes off 1 ppt'],
    ],
    steps: [
      'Fresh (RO) water first, then salt, with a pump, never in the tank.',
      'Wait until it is clear and as warm as the tank.',
      'Measure with a checked instrument.',
      'Test alkalinity of a new bag once.',
    ],
    see: ['salinity', 'water changes', 'net volume'],
    sources: ['fm83', 'practice'],
  },
  {
    id: 'top-off',
    names: ['top off', 'topoff', 'ato', 'evaporation', 'auto top off'],
    headline: 'Only water evaporates, the salt stays: replace it with fresh (RO) water, little and often.',
    points: [
      ['Left alone', '5 % evaporated turns 35 ppt into 37'],
      ['Automatic', 'a small reservoir is the best safety: it can only add what it holds'],
      ['Sensor stuck', 'the common flood; two sensors of different kinds are safer'],
      ['Salt water', 'goes in only where salt water came out: spills, skimmate, changes'],
    ],
    steps: [
      'Note your litres a day: they change with season and lids.',
      'If too much went in, switch it off and let it evaporate. Add no salt.',
    ],
    see: ['salinity', 'limewater', 'water and mains'],
    sources: ['mixing', 'practice'],
  },
  {
    id: 'water changes',
    names: ['water change', 'wc', 'changing water'],
    headline:
      'A water change takes out its own share and no more: four of 20 % replace 59 % of the water, not 80.',
    points: [
      ['One large', 'does more than several small; small ones are gentler'],
      ['Where it ends', 'a weekly rise divided by the weekly share: 5 mg/L and 10 % end at 50'],
      ['Bit by bit', '30 % dripped through replaces 26 %'],
      ['Also brings', 'calcium, alkalinity and trace elements'],
    ],
    steps: [
      'Match salinity and temperature first; compare alkalinity.',
      'Switch off heater and pumps that fall dry.',
      'Take out detritus with the water, pour in slowly.',
    ],
    see: ['mixing salt water', 'nutrients', 'net volume'],
    sources: ['mixing', 'practice'],
  },
  {
    id: 'net volume',
    names: ['volume', 'water volume', 'displacement', 'how much water'],
    headline: 'Dose for the water really in the system, not for the size printed on the glass.',
    points: [
      ['Why', 'a 50 that holds 38 gets 32 % too much of every dose'],
      ['Rock', 'a kilogram pushes aside about 0.4 L (common practice)'],
      ['Sand', 'about 60 % of its bed is grain (common practice)'],
      ['Sump', 'counts as high as the water stands in it, running'],
    ],
    steps: [
      'Best: count the litres when you next fill it.',
      'Or dose a small weighed amount, test before and after, and work back.',
      'Write it down and use it everywhere.',
    ],
    see: ['alkalinity and calcium', 'mixing salt water', 'units'],
    sources: ['mixing', 'geometry', 'practice'],
  },
  {
    id: 'units',
    names: ['ppm', 'meq', 'unit', 'conversions', 'conversion', 'gallons'],
    headline: 'Say the unit with every number: the same water is 8 dKH, 2.85 meq/L or 143 ppm.',
    points: [
      ['Alkalinity', '1 meq/L is 2.8 dKH or 50 ppm as CaCO3'],
      ['ppm', 'on a kit it means mg/L'],
      ['Nitrate', 'nitrogen x 4.43'],
      ['Phosphate', 'phosphorus x 3.07; 1000 ppb are 1 ppm'],
      ['Gallons', 'US 3.785 L, imperial 4.546 L'],
      ['Salinity', '35 ppt is 1.0264 at 25 °C'],
      ['Spoons', 'no unit: weigh powders'],
    ],
    steps: ['Look on the kit which form it shows before you compare.'],
    see: ['test kits', 'alkalinity and calcium', 'salinity'],
    sources: ['dkh', 'iupac21', 'si19', 'fm83'],
  },
];
