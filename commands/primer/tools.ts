import type { PrimerId } from '../../core/care/primers/primer.ts';
import { say } from '../../core/wording/say.ts';
import type { NextAction } from '../answer.ts';
import { action } from '../calls.ts';

/** The sums a card leads to, with numbers that show how they are asked. */
const tools = (): Partial<Record<PrimerId, readonly NextAction[]>> => ({
  PAR: [
    action(say('primer.sumDaysLight'), 'light hours', { reading: '200 PAR' }),
    action(say('primer.sumLux'), 'light lux', { reading: '9000 lux', lamp: 'led' }),
  ],
  acclimation: [action(say('primer.planRamp'), 'light ramp', { now: '100 PAR', goal: '150 PAR' })],
  'alkalinity and calcium': [
    action(say('primer.sumAlkalinity'), 'dose amount', {
      of: 'alkalinity',
      now: '7.5 dKH',
      goal: '8.5 dKH',
      with: 'baking soda',
    }),
  ],
  magnesium: [
    action(say('primer.sumMagnesium'), 'dose amount', {
      of: 'magnesium',
      now: '1200',
      goal: '1300',
      with: 'mgcl2 6h2o',
    }),
  ],
  nutrients: [
    action(say('primer.sumNitrate'), 'waterchange goal', {
      of: 'nitrate',
      now: '40',
      goal: '10',
      share: '20 %',
    }),
  ],
  limewater: [action(say('primer.sumLimewater'), 'dose limewater', { amount: '5 L' })],
  salinity: [
    action(say('primer.checkStandard'), 'salinity check', { reading: '1.026', standard: '1.028' }),
    action(say('primer.sumScales'), 'salinity convert', { reading: '1.025' }),
  ],
  'mixing salt water': [action(say('primer.sumMix'), 'salinity mix', { volume: '40 L', goal: '35 ppt' })],
  'top-off': [
    action(say('primer.sumLower'), 'salinity adjust', { now: '1.027', goal: '1.026', volume: '100 L' }),
  ],
  'water changes': [
    action(say('primer.sumNitrateByShare'), 'waterchange goal', {
      of: 'nitrate',
      now: '40',
      goal: '10',
      share: '20 %',
    }),
    action(say('primer.sumDrip'), 'waterchange drip', { share: '30 %' }),
  ],
  units: [action(say('primer.sumDkh'), 'convert', { amount: '8 dKH' })],
  'test kits': [action(say('primer.sumPpm'), 'convert', { amount: '180 ppm', of: 'alkalinity' })],
});

export function toolsOf(id: PrimerId): readonly NextAction[] {
  return tools()[id] ?? [];
}
