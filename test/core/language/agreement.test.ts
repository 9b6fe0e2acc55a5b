import { describe, expect, it } from 'vitest';
import { agreement as agreementOf } from '../../../core/language/agreement.ts';
import type { Kind } from '../../../core/language/kinds.ts';
import type { Slots } from '../../../core/language/slots.ts';
import type { ParameterId } from '../../../core/water/parameter.ts';

function reads(...of: readonly ParameterId[]): Slots {
  return {
    levels: of.map((id) => ({ of: id, part: 'now', text: '40', value: 40 })),
    ...(of[0] && { of: of[0] }),
  };
}

function agreement(kind: Kind, slots: Slots, isNamed = true): number {
  return agreementOf(kind, slots, isNamed ? (slots.levels ?? []).map(({ of }) => of) : []);
}

function warm(text: string): Slots {
  return { levels: [{ of: 'temperature', part: 'now', text, value: Number.parseFloat(text) }] };
}

describe('what was said against a kind', () => {
  it('makes an emergency less likely where only levels were told that are none', () => {
    expect(agreement('urgent-water', reads('nitrate'))).toBeLessThan(1);
    expect(agreement('urgent-water', reads('calcium', 'magnesium'))).toBeLessThan(1);
    expect(agreement('urgent-water', reads('nitrate', 'ammonia'))).toBe(1);
    expect(agreement('urgent-water', reads('nitrate'), false)).toBe(1);
    expect(agreement('urgent-water', {})).toBe(1);
  });

  it('makes one less likely where the tank is as warm as it should be', () => {
    expect(agreement('urgent-water', warm('25.5'), false)).toBeLessThan(1);
    expect(agreement('urgent-water', warm('78 f'), false)).toBeLessThan(1);
    expect(agreement('urgent-water', warm('29 c'), false)).toBe(1);
    expect(agreement('urgent-water', warm('17'), false)).toBe(1);
  });

  it('is against a dose of what no salt raises, and a salinity that was not told', () => {
    expect(agreement('dose-amount', reads('ammonia'))).toBeLessThan(0.5);
    expect(agreement('dose-amount', reads('alkalinity'))).toBe(1);
    expect(agreement('salinity-adjust', reads('nitrate'))).toBeLessThan(0.5);
    expect(agreement('salinity-adjust', reads('salinity'))).toBe(1);
  });
});
