import { met } from '../../core/language/met.ts';
import type { Scanned } from '../../core/language/tokens.ts';
import { answer, type Answer } from '../answer.ts';

/** Somebody may be about to harm themselves: people who can help, and nothing of tanks. */
export const despair = answer({
  headline:
    'You matter more than any tank. Please call your emergency number or a crisis line now, or somebody you trust.',
  steps: [
    'In danger this minute? Call the emergency number and stay on the line.',
    'Do not stay alone with it: go to somebody, or ask them to come.',
  ],
  tone: 'urgent',
  cautions: ['I am only a program for aquariums and cannot help with this. People can, and they want to.'],
});

/** The answer that comes before every other, where the words of a message may mean that. */
export function despairAnswer(scanned: Scanned): Answer | undefined {
  return met(scanned, 'despair.selfHarm') ? despair : undefined;
}
