import { readSalinity } from '../../core/water/salinity-reading.ts';
import { readLogged } from '../../core/log/value.ts';
import type { Answer, Fact } from '../answer.ts';
import { readWater, type Water } from '../waterchange/pour.ts';

/** The numbers a member or their tank gives for an emergency, as text. */
export interface UrgentInput {
  readonly of?: string | undefined;
  readonly now?: string | undefined;
  readonly goal?: string | undefined;
  readonly fresh?: string | undefined;
  readonly volume?: string | undefined;
  readonly temperature?: string | undefined;
  readonly salinity?: string | undefined;
}

/** The part of the answer that is worked out for this tank. */
export type Numbers = Pick<Answer, 'read' | 'facts' | 'working' | 'sources'> & {
  /** Options that would say more. */
  readonly missing: readonly (keyof UrgentInput)[];
};

export const nothing: Numbers = { read: [], facts: [], working: [], sources: [], missing: [] };

/** Several parts in one, in order. */
export function together(...parts: readonly Numbers[]): Numbers {
  return {
    read: [...new Set(parts.flatMap(({ read }) => read))],
    facts: parts.flatMap(({ facts }) => facts),
    working: parts.flatMap(({ working }) => working),
    sources: parts.flatMap(({ sources }) => sources),
    missing: [...new Set(parts.flatMap(({ missing }) => missing))],
  };
}

export interface KnownWater extends Water {
  readonly missing: Numbers['missing'];
}

/** The system's water; per 100 L where it was not said. */
export function waterOf({ volume }: UrgentInput): KnownWater {
  return { ...readWater(volume), missing: volume === undefined ? ['volume'] : [] };
}

/** A reading in its own unit with the notes on how it was taken; undefined where there is none. */
export function temperatureOf({ temperature }: UrgentInput) {
  return temperature === undefined ? undefined : readLogged('temperature', temperature, 'temperature');
}

export function salinityOf({ salinity }: UrgentInput) {
  return salinity === undefined ? undefined : readSalinity(salinity, { field: 'salinity' });
}

export function fact(label: string, value: string): Fact {
  return { label, value };
}
