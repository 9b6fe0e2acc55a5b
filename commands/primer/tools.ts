import type { PrimerId } from '../../core/care/primers/primer.ts';
import type { NextAction } from '../answer.ts';
import { action } from '../calls.ts';

/** The sums a card leads to, with numbers that show how they are asked. */
const tools: Partial<Record<PrimerId, readonly NextAction[]>> = {
  PAR: [
    action('Sum: the day’s light of 200 PAR', 'light hours', { reading: '200 PAR' }),
    action('Sum: 9000 lux in PAR', 'light lux', { reading: '9000 lux', lamp: 'led' }),
  ],
  acclimation: [action('Plan: 100 to 150 PAR', 'light ramp', { now: '100 PAR', goal: '150 PAR' })],
  'alkalinity and calcium': [
    action('Sum: 7.5 to 8.5 dKH', 'dose amount', {
      of: 'alkalinity',
      now: '7.5 dKH',
      goal: '8.5 dKH',
      with: 'baking soda',
    }),
  ],
  magnesium: [
    action('Sum: 1200 to 1300 mg/L', 'dose amount', {
      of: 'magnesium',
      now: '1200',
      goal: '1300',
      with: 'mgcl2 6h2o',
    }),
  ],
  nutrients: [
    action('Sum: nitrate 40 to 10', 'waterchange goal', {
      of: 'nitrate',
      now: '40',
      goal: '10',
      share: '20 %',
    }),
  ],
  limewater: [action('Sum: a batch of 5 L', 'dose limewater', { amount: '5 L' })],
  salinity: [
    action('Check: fluid of 35 ppt reads 1.028', 'salinity check', { reading: '1.026', standard: '1.028' }),
    action('Sum: 1.025 on every scale', 'salinity convert', { reading: '1.025' }),
  ],
  'mixing salt water': [action('Sum: 40 L at 35 ppt', 'salinity mix', { volume: '40 L', goal: '35 ppt' })],
  'top-off': [
    action('Sum: 1.027 down to 1.026', 'salinity adjust', { now: '1.027', goal: '1.026', volume: '100 L' }),
  ],
  'water changes': [
    action('Sum: nitrate 40 to 10 by 20 %', 'waterchange goal', {
      of: 'nitrate',
      now: '40',
      goal: '10',
      share: '20 %',
    }),
    action('Sum: 30 % bit by bit', 'waterchange drip', { share: '30 %' }),
  ],
  units: [action('Sum: 8 dKH in other units', 'convert', { amount: '8 dKH' })],
  'test kits': [action('Sum: 180 ppm alkalinity', 'convert', { amount: '180 ppm', of: 'alkalinity' })],
};

export function toolsOf(id: PrimerId): readonly NextAction[] {
  return tools[id] ?? [];
}
