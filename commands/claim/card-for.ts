import type { PrimerId } from '../../core/care/primers/primer.ts';

/** The card that explains what a kind of rule is about. */
export const cards: Readonly<Record<string, PrimerId>> = {
  'dose and rise': 'alkalinity and calcium',
  'dose by volume': 'alkalinity and calcium',
  'strength of two salts': 'alkalinity and calcium',
  'calcium with alkalinity': 'alkalinity and calcium',
  'pH of a salt': 'pH',
  'lime by volume': 'limewater',
  'strength of limewater': 'limewater',
  'gravity and ppt': 'salinity',
  'conductivity and ppt': 'salinity',
  'step of gravity': 'salinity',
  'salt per litre': 'mixing salt water',
  'cups of salt': 'mixing salt water',
  'weight of water': 'net volume',
  'salt water as top-off': 'top-off',
  'sum of water changes': 'water changes',
  'continuous and batch': 'water changes',
  'what a change takes out': 'water changes',
  'where a routine settles': 'water changes',
  'lux as PAR': 'PAR',
  'daily light': 'PAR',
  'same light in other hours': 'PAR',
  'watts by volume': 'PAR',
  'nitrate to phosphate': 'nutrients',
  'food as nitrate': 'feeding',
  'magnesium to calcium': 'magnesium',
  'factor between units': 'units',
  'two units': 'units',
  'ppm and mg/L': 'units',
  turnover: 'flow',
  'share of rock': 'net volume',
  'rock by volume': 'net volume',
};

export function cardFor(kind: string): PrimerId | undefined {
  return cards[kind];
}
