import type { UrgentId } from '../urgent/cards.ts';
import { MAINS, ZOA, type Way, type Ways } from './way.ts';

const MEDICINE = [
  'poisons.copperTreatment',
  'poisons.antibiotic',
  'poisons.antiprotozoal',
  'poisons.dewormer',
  'poisons.formalin',
  'poisons.algaecide',
  'poisons.painkiller',
] as const;

const CLEANER = ['poisons.bleach', 'poisons.soap', 'poisons.glassCleaner'] as const;

/** A heater that burst is that first, whatever the water reads. */
const BURST_HEATER: Way<UrgentId> = {
  card: 'burst heater',
  if: ['gear.heater'],
  and: ['events.bursts'],
};

/** Emergencies of a tank. */
export const urgentWays: Ways<'urgent-water', UrgentId> = {
  'power cut': [
    {
      card: 'mains fault',
      if: MAINS,
      unless: ['hardware.outage', 'events.stops', 'looks.weird', 'looks.dead', 'lives.gasps', 'lives.dies'],
    },
    { card: 'power cut' },
  ],
  'oxygen loss': [{ card: 'oxygen loss' }],
  'fire or sparks': [
    {
      card: 'mains fault',
      if: MAINS,
      unless: ['events.burnsUp', 'events.smells', 'poisons.smoke', 'lives.melts', 'looks.black'],
    },
    { card: 'fire or sparks' },
  ],
  flood: [
    {
      card: 'mains fault',
      if: MAINS,
      unless: ['events.floods', 'events.leaks', 'events.bursts', 'events.breaks', 'places.floor'],
    },
    { card: 'flood' },
  ],
  overheating: [BURST_HEATER, { card: 'overheating' }],
  'cold water': [BURST_HEATER, { card: 'cold water' }],
  ammonia: [{ card: 'ammonia' }],
  overdose: [
    { card: 'copper or medicine', if: ['poisons.copper', ...MEDICINE] },
    { card: 'bleach or spray', if: CLEANER },
    { card: 'overdose' },
  ],
  'limewater ran away': [{ card: 'overdose' }],
  'salinity crash': [
    {
      card: 'untreated tap water',
      if: ['substances.tapWater'],
      and: ['poisons.chlorine', 'substances.detoxifier'],
    },
    { card: 'salinity crash' },
  ],
  'burst heater': [
    { card: 'copper or medicine', if: MEDICINE },
    {
      card: 'metal in the water',
      if: ['poisons.coin', 'poisons.battery', 'poisons.magnet', 'poisons.rust', 'hardware.scraper'],
      unless: ['gear.heater', 'gear.returnPump', 'gear.flowPump', 'gear.pumpPart', 'events.bursts'],
    },
    { card: 'burst heater' },
  ],
  'bleach or spray': [
    {
      card: 'zoanthid rock',
      if: ZOA,
      and: ['deeds.boils', 'deeds.scrapes', 'hardware.saw', 'poisons.peroxide'],
    },
    {
      card: 'untreated tap water',
      if: ['substances.tapWater', 'substances.detoxifier'],
      unless: ['poisons.bleach', 'poisons.soap', 'poisons.glassCleaner'],
    },
    { card: 'copper or medicine', if: ['poisons.copper', ...MEDICINE] },
    { card: 'bleach or spray' },
  ],
  'shredded anemone': [{ card: 'shredded anemone' }],
  'out of the water': [{ card: 'out of the water' }],
};
