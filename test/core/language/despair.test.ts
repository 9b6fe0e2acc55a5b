import { describe, expect, it } from 'vitest';
import { met } from '../../../core/language/met.ts';
import { scan } from '../../../core/language/tokens.ts';

const isDespair = (text: string): boolean => met(scan(text), 'despair.selfHarm');

describe('words of somebody who may harm themselves', () => {
  it.each([
    'i want to kill myself',
    'I can’t go on like this',
    "i don't want to live anymore",
    'thinking about self-harm again',
    'everyone is better off without me',
    'tank crashed, i just want to end it all',
    'i wish i was dead',
    'whats the point of living',
    'suicidal tonight',
    'KMS lol',
  ])('%s', (text) => {
    expect(isDespair(text)).toBe(true);
  });

  it.each([
    'i cut myself on a frag',
    'my corals want to die on me',
    'the tank is dead',
    'will this kill my fish',
    'i burned myself',
    'end of life of a bulb',
    'how do i end the cycle',
  ])('none: %s', (text) => {
    expect(isDespair(text)).toBe(false);
  });
});
